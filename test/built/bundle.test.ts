import { readFileSync } from "node:fs";
import path from "node:path";
import { FUNCTION_SCRIPTS } from "../../src/hosts/functionsFile";
import { laterNoteWords } from "../../src/reference/laterNoteWords";
import { unitOf } from "../../src/reference/quantities";
import { referenceTables } from "../../src/reference";
import "../support/customFunctions";
import { cellFunctions, type Declared, exampleArguments } from "../support/cellFunctions";
import { dist, HostError, loadBundle, readMetadata } from "./loadBundle";

// Arguments of the released functions, those in brackets optional. People's sheets hold them, so a line never changes; a
// function that is new gets its line with the release that brings it.
const released = `
  AREA diameter [height] [units]
  VELOCITY airflow diameter [height] [units]
  AIRFLOW velocity diameter [height] [units]
  DIAMETER airflow velocity [units]
  TRADESIZE diameter [rounding] [units]
  EQUIVDIAMETER width height [units]
  DENSITY [temperature] [altitude] [humidity] [units]
  VELOCITYPRESSURE velocity [density] [units]
  PITOTVELOCITY pressure [density] [units]
  FRICTION airflow diameter [material] [density] [units]
  RUNLOSS airflow diameter length [material] [density] [units]
  LOSSCOEFFICIENT fitting [shape] [angle] [units]
  FITTINGLOSS airflow diameter fitting [count] [density] [units]
  EQUIVLENGTH fitting airflow diameter [material] [density] [units]
  HOODSUCTION airflow diameter entry [density] [units]
  HOODAIRFLOW suction diameter entry [density] [units]
  DEVICELOSS airflow ratedloss ratedairflow [exponent]
  LEAK area suction [coefficient] [density] [units]
  LEAKAREA airflow suction [coefficient] [density] [units]
  LEAKAT airflow suction newsuction [exponent]
  GATELEAK condition diameter suction [density] [units]
  SEAMLEAK class surface pressure [units]
  CORRECTEDREADING reading areaentered areatrue
  TRAVERSEPOINTS diameter [points] [rule] [units]
  TRAVERSE readings [kind] [density] [units]
  AIRFLOWERROR velocity diameter [percent] [floor] [diametererror] [units]
  FANPRESSURE curve airflow [units]
  OPERATINGPOINT curve airflow pressure [fixed] [units]
  FANLAW curve speedratio [densityratio] [sizeratio]
  AIRPOWER airflow pressure [efficiency] [units]
  BUDGET runs [density] [units]
  SOLVE runs curve [open] [density] [units]
  SCENARIOS runs curve scenarios [density] [units]
  GAINS runs curve hood [open] [density] [units] [goal] [errors] [readings]
  CLAIM facts [units]
  REFERENCE table [key] [column]
  CONVERTUNIT value from to
  CAUTIONS [topic]
  ABOUT
  REYNOLDS airflow diameter [density] [units]
  DIFFERENCE before after [percent] [floor] [repeats] [meant]
  UNCERTAINTY runs curve [open] [errors] [density] [units]
  TOGETHER runs curve [most] [density] [units]
  SIZES runs curve scenarios [stock] [margin] [keep] [density] [units] [fastest]
  FANCURVE readings diameter [curve] [reach] [density] [units]
  JUNCTIONLOSS angle branchairflow mainairflow branchdiameter maindiameter [straightdiameter] [leg] [density] [units]
  BUDGETUNCERTAINTY runs [errors] [density] [units]
  CALIBRATE runs curve readings [errors] [density] [units]
  CALIBRATEDCURVE runs curve readings [errors] [density] [units]
  CALIBRATEDRUNS runs curve readings [errors] [density] [units]
  CALIBRATEDUNCERTAINTY runs curve readings [open] [errors] [density] [units]
  GAINUNCERTAINTY runs curve hood [open] [errors] [density] [units]
  LEAKGAINS runs curve gates before after suction [open] [density] [units]`
  .trim()
  .split(/\n\s*/);

// Result units that a description must name, where the answer is no single value or takes the unit of an argument.
const unitsOfTables: Readonly<Record<string, readonly string[]>> = {
  DEVICELOSS: ["in.w.g.", "Pa"],
  LEAKAT: ["cfm", "m³/h"],
  CORRECTEDREADING: ["cfm", "m³/h"],
  TRAVERSEPOINTS: ["inches", "mm"],
  TRAVERSE: ["fpm", "m/s"],
  OPERATINGPOINT: ["cfm", "in.w.g.", "m³/h", "Pa"],
  FANLAW: ["cfm", "m³/h"],
  BUDGET: ["cfm", "in.w.g.", "m³/h", "Pa"],
  SOLVE: ["cfm", "in.w.g.", "m³/h", "Pa"],
  SCENARIOS: ["cfm", "fpm", "m³/h", "m/s"],
  GAINS: ["cfm", "fpm", "m³/h", "m/s"],
  CLAIM: ["cfm", "in.w.g.", "m³/h", "Pa"],
};

/** "in" is a word of its own in every description. */
const inWords = (unit: string): string => (unit === "in" ? "inches" : unit);

const unitsOf = ({ name, takes }: Declared): readonly string[] =>
  unitsOfTables[name] ??
  (["IP", "SI"] as const)
    .map((system) => inWords(takes === undefined ? "" : unitOf(takes.gives, system).label))
    .filter((unit) => unit !== "");

const LONGEST_DESCRIPTION = 128; // characters that the host shows of a description
const LONGEST_PARAMETER_NAME = 64;
const sorted = (names: readonly string[]): string[] => [...names].sort();
const metadata = readMetadata();
const bundle = loadBundle();

describe("the functions in dist/ and functions.json", () => {
  test("need nothing but a CustomFunctions object and agree on the functions", () => {
    expect(sorted(bundle.ids)).toEqual(sorted(metadata.functions.map(({ id }) => id)));
  });

  test("hold the functions that the source declares", () => {
    expect(sorted(bundle.ids)).toEqual(sorted(cellFunctions.map(({ name }) => name)));
  });

  test("hold every released function with its arguments as they were", () => {
    const lines = metadata.functions.map(({ name, parameters }) =>
      [name, ...parameters.map((one) => (one.optional === true ? `[${one.name}]` : one.name))].join(" "),
    );
    // an argument that may be left out may come behind them
    expect(released.filter((one) => !lines.some((line) => line === one || line.startsWith(`${one} [`)))).toEqual([]);
  });

  test("carry no guide: that is for the pane and the help", () => {
    const code = FUNCTION_SCRIPTS.map((script) => readFileSync(path.join(dist, script), "utf8")).join("");
    for (const { name, guide, formula } of cellFunctions)
      expect([
        name,
        [guide.limits, ...(formula?.tex ?? [])].filter((words) => code.includes(JSON.stringify(words).slice(1, -1))),
      ]).toEqual([name, []]);
  });

  test("of another version in a later file are not taken: each build's files know each other by a name of their own", () => {
    const { ids } = loadBundle((script, code) =>
      script === "functions.js" ? code : code.replaceAll(/ductLedgerParts\w+/g, "ductLedgerPartsOther"),
    );
    expect(ids).toContain("BUDGET");
    for (const later of ["CALIBRATE", "REFERENCE"]) {
      expect(ids).not.toContain(later);
      expect(bundle.ids).toContain(later);
    }
  });

  test("show in REFERENCE every row of every table with its words, as the source has them", () => {
    for (const { name, rows } of referenceTables)
      expect([name, (bundle.call("REFERENCE", [[name]]) as unknown[][]).slice(1)]).toEqual([
        name,
        rows.map((row) => row.map((cell) => cell ?? "")),
      ]);
  });

  test("say the notes that come with functionsLater.js in no other file", () => {
    const said = (script: string): string[] => {
      const code = readFileSync(path.join(dist, script), "utf8");
      return Object.keys(laterNoteWords).filter((key) => code.includes(`"${key}"`)); // as a function asks for it
    };
    expect(said("functionsLater.js")).toEqual(expect.arrayContaining(["bleed", "sizesBest", "agrees"]));
    expect([...said("functions.js"), ...said("functionsTables.js")]).toEqual([]);
  });

  test("compute their examples as the source does, those of functions.js also alone: by nothing that was left out or comes later", () => {
    const first = loadBundle((script, code) => (script === "functions.js" ? code : ""));
    expect(first.ids).toEqual(expect.arrayContaining(["AREA", "BUDGET", "SOLVE", "LOSSCOEFFICIENT"]));
    for (const declared of cellFunctions) {
      const [{ name, call }, given] = [declared, exampleArguments(declared)];
      const answer = [name, call(...given)];
      expect([name, bundle.call(name, ...given)]).toEqual(answer);
      if (first.ids.includes(name)) expect([name, first.call(name, ...given)]).toEqual(answer);
    }
  });

  test("let error cells and formatted values through to the functions", () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
  });
});

describe.each(metadata.functions.map((entry) => [entry.id, entry] as const))(
  "%s",
  (id, { name, description, parameters }) => {
    test("is called what its id says", () => {
      expect(name).toBe(id);
      expect(id).toMatch(/^[A-Z]{3,64}$/);
    });

    test("and its arguments are described in one line of at most 128 characters", () => {
      for (const text of [description, ...parameters.map((one) => one.description)]) {
        expect(text).toMatch(/^\S[^\r\n]*\S$/);
        expect(text.length).toBeLessThanOrEqual(LONGEST_DESCRIPTION);
      }
      for (const parameter of parameters) expect(parameter.name.length).toBeLessThanOrEqual(LONGEST_PARAMETER_NAME);
    });

    const declared = cellFunctions.find((one) => one.name === id)!;

    test("names its result's unit in both systems, or has none", () => {
      for (const unit of unitsOf(declared)) {
        const words = description.split(/[\s,;()]+/);
        expect(unit.includes(" ") ? description : words.map((word) => word.replace(/:$/, ""))).toContain(unit);
      }
    });

    test("takes its arguments by the names and in the order of its signature", () => {
      const { takes } = declared;
      if (takes === undefined) return;
      const said = Object.entries(takes.takes).map(([argument, { needed }]) => ({ name: argument, optional: !needed }));
      if (takes.units) said.push({ name: "units", optional: true });
      const given = parameters.map((one) => ({ name: one.name, optional: one.optional === true }));
      expect(given.slice(-said.length)).toEqual(said);
      expect(given.length - said.length).toBe(given[0]!.name === "curve" ? 1 : 0);
    });

    test("asks for what it needs before what may be left out, and for units last", () => {
      const optional = parameters.map((parameter) => parameter.optional === true);
      expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
      const at = parameters.findIndex((parameter) => parameter.name === "units");
      const later = { GAINS: 3, SIZES: 1 }[id] ?? 0; // those came after units were released as last
      expect([-1, parameters.length - 1 - later]).toContain(at);
    });

    test("offers IP and SI while units is typed", () => {
      const parameter = parameters.find((one) => one.name === "units");
      const choices = metadata.enums
        ?.find((one) => one.id === parameter?.customEnumId)
        ?.values.map((value) => value.name);
      expect(parameter === undefined ? ["IP", "SI"] : choices).toEqual(["IP", "SI"]);
    });
  },
);

describe("the built functions compute what was worked by hand or printed", () => {
  const number = (answer: unknown): number => (answer as number[][])[0]![0]!;

  // By hand: π/4 (7/12)² = 0.26725
  test("a 7 in circle is 0.26725 ft2", () => {
    expect(number(bundle.call("AREA", [[7]]))).toBeCloseTo(0.26725, 5);
  });

  // By hand: 1000 / 0.267254 = 3741.8
  test("1000 cfm in a 7 in duct are 3741.8 fpm", () => {
    expect(number(bundle.call("VELOCITY", [[1000]], [[7]]))).toBeCloseTo(3741.8, 1);
  });

  // Standard air of ASHRAE and AMCA 210: dry, 70 F, at sea level, 0.075 lb/ft3 as printed.
  test("standard air weighs 0.075 lb/ft3", () => {
    expect(Math.abs(number(bundle.call("DENSITY")) - 0.075)).toBeLessThanOrEqual(0.0005);
  });

  test("a wrong value is the host's #VALUE! with one sentence", () => {
    let thrown: unknown;
    try {
      bundle.call("AREA", [[-4]]);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(HostError);
    expect(thrown).toEqual({ code: "#VALUE!", message: "diameter must be above 0 in; got -4" });
  });
});
