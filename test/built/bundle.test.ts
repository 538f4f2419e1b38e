import { HostError, loadBundle, readMetadata } from "./loadBundle";

// Result units that each description must name, inch-pound and SI. Ids never change once released.
const units: Record<string, readonly string[]> = {
  AREA: ["ft²", "m²"],
  VELOCITY: ["fpm", "m/s"],
  AIRFLOW: ["cfm", "m³/h"],
  DIAMETER: ["inches", "mm"],
  TRADESIZE: ["inches", "mm"],
  EQUIVDIAMETER: ["inches", "mm"],
  DENSITY: ["lb/ft³", "kg/m³"],
  VELOCITYPRESSURE: ["in.w.g.", "Pa"],
  PITOTVELOCITY: ["fpm", "m/s"],
  FRICTION: ["in.w.g. per 100 ft", "Pa per m"],
  RUNLOSS: ["in.w.g.", "Pa"],
  FITTINGLOSS: ["in.w.g.", "Pa"],
  EQUIVLENGTH: ["ft", "m"],
  HOODSUCTION: ["in.w.g.", "Pa"],
  HOODAIRFLOW: ["cfm", "m³/h"],
  DEVICELOSS: ["in.w.g.", "Pa"],
  LEAK: ["cfm", "m³/h"],
  LEAKAREA: ["in²", "mm²"],
  LEAKAT: ["cfm", "m³/h"],
  GATELEAK: ["cfm", "m³/h"],
  SEAMLEAK: ["cfm", "m³/h"],
  CORRECTEDREADING: ["cfm", "m³/h"],
  TRAVERSEPOINTS: ["inches", "mm"],
  TRAVERSE: ["fpm", "m/s"],
  AIRFLOWERROR: ["cfm", "m³/h"],
  FANPRESSURE: ["in.w.g.", "Pa"],
  OPERATINGPOINT: ["cfm", "in.w.g.", "m³/h", "Pa"],
  FANLAW: ["cfm", "m³/h"],
  AIRPOWER: ["hp", "kW"],
  BUDGET: ["cfm", "in.w.g.", "m³/h", "Pa"],
  SOLVE: ["cfm", "in.w.g.", "m³/h", "Pa"],
  SCENARIOS: ["cfm", "fpm", "m³/h", "m/s"],
  GAINS: ["cfm", "fpm", "m³/h", "m/s"],
  CLAIM: ["cfm", "in.w.g.", "m³/h", "Pa"],
};

// Pure numbers, texts and tables whose own cells carry the unit.
const unitless = ["LOSSCOEFFICIENT", "REFERENCE", "CONVERTUNIT", "CAUTIONS", "ABOUT"];

const LONGEST_DESCRIPTION = 128; // characters that the host shows of a description
const LONGEST_PARAMETER_NAME = 64;
const sorted = (names: readonly string[]): string[] => [...names].sort();
const metadata = readMetadata();
const bundle = loadBundle();
const released = [...Object.keys(units), ...unitless];

describe("dist/functions.js and dist/functions.json", () => {
  test("need nothing but a CustomFunctions object and agree on the functions", () => {
    expect(sorted(bundle.ids)).toEqual(sorted(metadata.functions.map(({ id }) => id)));
  });

  test("hold exactly the released functions", () => {
    expect(sorted(bundle.ids)).toEqual(sorted(released));
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

    test("names its result's unit in both systems, or has none", () => {
      for (const unit of unitless.includes(id) ? [] : units[id]!) {
        const words = description.split(/[\s,;()]+/);
        expect(unit.includes(" ") ? description : words.map((word) => word.replace(/:$/, ""))).toContain(unit);
      }
    });

    test("asks for what it needs before what may be left out, and for units last", () => {
      const optional = parameters.map((parameter) => parameter.optional === true);
      expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
      const at = parameters.findIndex((parameter) => parameter.name === "units");
      expect([-1, parameters.length - 1]).toContain(at);
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
