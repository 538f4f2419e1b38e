import "../../support/customFunctions";
import { calibrate } from "../../../src/functions/systems/calibrate";
import { calibratedcurve } from "../../../src/functions/systems/calibratedcurve";
import { calibratedruns } from "../../../src/functions/systems/calibratedruns";
import { solve } from "../../../src/functions/systems/solve";
import { relative } from "../../support/printed";
import { refusal } from "../../support/refusal";
import { byName, type Row, table } from "../../support/tables";

type Answer = (string | number)[][];
type Call = (...args: any[]) => Answer;
const [CALIBRATE, RUNS_OF, CURVE_OF, SOLVE] = [calibrate, calibratedruns, calibratedcurve, solve] as unknown as [
  Call,
  Call,
  Call,
  Call,
];

/** An invented shop in SI, with a hose text, a port, a mitreless list, leaks of every kind and a filter after the fan. */
const RUNS: readonly Row[] = [
  { Run: "saw", To: "main", "Diameter (mm)": 100, Hood: "flanged end", Fittings: "elbow 1.5; branch 30", Length: 4, Flex: 1.5, Gate: "open", Leak: 20, "Leak open": 40, "Leak shut": "shut seated", mine: "old" }, // prettier-ignore
  { Run: "planer", To: "main", "Diameter (mm)": 125, Fittings: "elbow 2", K: 0.3, Length: 6, Flex: "1,2 as it hangs", Gate: "open", "Leak shut": 60, "Port suction": 700, "Port airflow": 1000 }, // prettier-ignore
  { Run: "lathe", To: "main", "Diameter (mm)": 100, Hood: 0.5, Length: 3, Gate: "shut", "Leak shut": 30 },
  { Run: "main", To: "fan", "Diameter (mm)": 160, Length: 8, K: 0.5, Leak: 50, "Device loss": 300, "Device airflow": 1500 }, // prettier-ignore
  { Run: "filter", To: "outside", "Diameter (mm)": 200, Length: 2, "Device loss": 150, "Device airflow": 1500, "Device exponent": 1 }, // prettier-ignore
];
const CURVE = [["m³/h", "Pa"], [0, 2600], [900, 2300], [2000, 1500], [3000, 0]]; // prettier-ignore
const runs = table(RUNS);

/** Readings of the same shop whose fan gives about nine tenths of its pressure, and whose filter is dirty. */
const READINGS: readonly Row[] = [
  { Open: "saw", At: "saw", Airflow: 1010, Suction: null, Drop: null },
  { Open: "planer", At: "planer", Airflow: 1180 },
  { Open: "saw; planer", At: "saw", Airflow: 790 },
  { Open: "saw; planer", At: "planer", Airflow: 950 },
  { Open: "saw; planer", At: "fan", Suction: 1850 },
  { Open: "saw; planer", At: "filter", Drop: 210 },
  { Open: "saw", At: "saw", Suction: 1100 },
];

const read = (readings: readonly Row[], errors: unknown = null): Answer =>
  CALIBRATE(runs, CURVE, table(readings), errors, null, "SI");
const partOf = (answer: Answer, part: string): Record<string, string | number>[] => {
  const [header] = answer;
  return answer
    .filter(([name]) => name === part)
    .map((row) => Object.fromEntries(row.map((cell, index) => [String(header![index]), cell])));
};
const words = (answer: Answer, what: string): string =>
  String(partOf(answer, "in short").find((row) => row.What === what)!["In words"]);
const number = (cell: unknown): number => (typeof cell === "number" ? cell : NaN);

describe("CALIBRATE", () => {
  const answer = read(READINGS);

  test("first says in four rows what it comes to", () => {
    expect(partOf(answer, "in short").map(({ What }) => What)).toEqual(["fan", "readings", "next", "not told"]);
    expect(words(answer, "readings")).toBe("all readings agree: 7");
    expect(words(answer, "next")).toMatch(/^read next: \w+ at .+, .+ open; takes the ± at the hoods from /);
  });

  test("what it tells of the fan is what its own table tells: pressure and speed together", () => {
    const weak = read(READINGS.map((row) => (row.Suction === 1850 ? { ...row, Suction: 1750 } : row)), [["fan speed", 3], ["device", 5], ["meter", 1], ["model", 1]]); // prettier-ignore
    const [, percent, way, at] = /gives ([\d.]+) % (less|more) pressure than its curve at (\d+)/.exec(words(weak, "fan")) ?? []; // prettier-ignore
    const inputs = partOf(weak, "input");
    const after = (what: string): number => number(inputs.find((row) => row.What === what)!.After) / 100;
    const [speed, pressure] = [after("the fan's speed"), after("the fan's pressure")];
    // p = f s^2 P(Q / s), read from the curve by hand between its points in a straight line, hence to a hundredth or two
    const P = (q: number): number => (q < 900 ? 2600 - (300 / 900) * q : 2300 - (800 / 1100) * (q - 900));
    const q = Number(at);
    const ratio = (pressure * speed ** 2 * P(q / speed)) / P(q);
    expect(Math.abs(ratio - (way === "less" ? 1 - Number(percent) / 100 : 1 + Number(percent) / 100))).toBeLessThan(
      0.03,
    );
  });

  test("a reading stands with what the model says before and after, and every ± is smaller after", () => {
    const rows = partOf(answer, "reading");
    expect(rows.map(({ What, Read }) => [What, number(Read)])).toEqual([
      ["airflow at saw", expect.closeTo(1010, 6)],
      ["airflow at planer", expect.closeTo(1180, 6)],
      ["airflow at saw", expect.closeTo(790, 6)],
      ["airflow at planer", expect.closeTo(950, 6)],
      ["suction at fan", expect.closeTo(1850, 6)],
      ["drop at filter", expect.closeTo(210, 6)],
      ["suction at saw", expect.closeTo(1100, 6)],
    ]);
    const told = byName(SOLVE(runs, CURVE, "saw", null, "SI"));
    expect(rows[0]!.Before).toBe(told.saw!.Airflow);
    expect(rows[6]!.Before).toBe(told.saw!["Static suction"]);
    for (const row of [...rows, ...partOf(answer, "input")])
      expect(number(row["After, ±"]) / number(row.After)).toBeLessThanOrEqual(number(row["Before, ±"]) / number(row.Before) + 1e-9); // prettier-ignore
  });

  // What CALIBRATEDRUNS and CALIBRATEDCURVE hand back goes through SOLVE, which knows nothing of readings.
  test("SOLVE finds in the calibrated tables what CALIBRATE says of its readings", () => {
    const given = [runs, CURVE, table(READINGS), null, null, "SI"];
    const [table_, curve] = [RUNS_OF(...given), CURVE_OF(...given)];
    const rows = partOf(answer, "reading");
    const flow = (open: string): ReturnType<typeof byName> => byName(SOLVE(table_, curve, open, null, "SI"));
    const [saw, planer, both] = [flow("saw"), flow("planer"), flow("saw; planer")];
    const found = [saw.saw!.Airflow, planer.planer!.Airflow, both.saw!.Airflow, both.planer!.Airflow];
    found.forEach((value, index) => expect(relative(number(value), number(rows[index]!.After))).toBeLessThan(1e-6));
    expect(relative(number(saw.saw!["Static suction"]), number(rows[6]!.After))).toBeLessThan(1e-6);
    expect(table_[0]!.slice(0, runs[0]!.length)).toEqual(runs[0]);
    expect(table_[1]![runs[0]!.indexOf("mine")]).toBe("old");
    expect(table_[2]![runs[0]!.indexOf("Flex")]).toMatch(/^[\d.]+ as it hangs$/);
  });

  // A plain branch stands in the list's sum; where its run joins, the other runs' losses hang on its being a branch.
  test("a run whose list costs less than typed keeps its plain branch, or says that no table has words for it", () => {
    const given = (fittings: string): unknown[] => {
      const shop = RUNS.map((row) => (row.Run === "planer" ? { ...row, Fittings: fittings, K: null } : row));
      const readings = table([{ Open: "saw; planer", At: "planer", Airflow: 1010 }, { Open: "saw; planer", At: "fan", Suction: 1690 }]); // prettier-ignore
      const sure = ["fan pressure", "fan speed", "hose", "pipe", "entry", "device", "leak", "meter"].map((kind) => [kind, "none"]); // prettier-ignore
      return [table(shop), CURVE, readings, [...sure, ["fittings", 100], ["model", 1]], null, "SI"];
    };
    const long = given("branch 45 plain; elbow 2; elbow 2; 0.4");
    const found = RUNS_OF(...long);
    expect(found[2]![found[0]!.indexOf("Fittings")]).toMatch(/^branch 45 plain; 0?\.\d+$/);
    const flow = byName(SOLVE(found, CURVE_OF(...long), "saw; planer", null, "SI"));
    const [planer] = partOf(CALIBRATE(...long), "reading");
    expect(relative(number(flow.planer!.Airflow), number(planer!.After))).toBeLessThan(1e-6);
    const alone = given("branch 90 plain");
    expect(refusal(() => RUNS_OF(...alone))).toEqual({
      code: "#N/A",
      message: 'by these readings the fittings of planer cost less than its "branch 90 plain" alone, for which no table has words: leave plain away there', // prettier-ignore
    });
  });

  test("tells the same in I-P", () => {
    const by: Record<string, number> = { "Diameter (mm)": 25.4, Length: 0.3048, Flex: 0.3048, Leak: 645.16, "Leak open": 645.16, "Leak shut": 645.16, "Port suction": 248.84, "Port airflow": 1.69901082, "Device loss": 248.84, "Device airflow": 1.69901082, Airflow: 1.69901082, Suction: 248.84, Drop: 248.84 }; // prettier-ignore
    const inIP = (row: Row): Row =>
      Object.fromEntries(Object.entries(row).map(([key, value]) => {
        const factor = by[key];
        if (key === "Diameter (mm)") return ["Diameter (in)", Number(value) / 25.4];
        if (key === "Flex" && typeof value === "string") return [key, `${1.2 / 0.3048} as it hangs`];
        return [key, typeof value === "number" && factor !== undefined ? value / factor : value];
      })); // prettier-ignore
    const curve = CURVE.map((row, index) => (index === 0 ? ["cfm", "in.w.g."] : [Number(row[0]) / 1.69901082, Number(row[1]) / 248.84])); // prettier-ignore
    const inches = CALIBRATE(table(RUNS.map(inIP)), curve, table(READINGS.map(inIP)));
    const [one, other] = [partOf(answer, "input"), partOf(inches, "input")];
    expect(other.map(({ What }) => What)).toEqual(one.map(({ What }) => What));
    one.forEach(({ After }, index) => expect(relative(number(other[index]!.After), number(After))).toBeLessThan(1e-5));
  });

  test("without readings nothing moves, and it says what to read first", () => {
    const none = read([{ At: "", Airflow: null }]);
    expect(words(none, "readings")).toBe("nothing is read yet");
    expect(words(none, "next")).toMatch(/^read next: /);
    for (const { Before, After } of partOf(none, "input")) expect(After).toBe(Before);
    const given = [runs, CURVE, table([{ At: "", Airflow: null }]), null, null, "SI"];
    expect(RUNS_OF(...given)).toEqual(runs.map((row) => row.map((cell) => cell ?? "")));
    expect(CURVE_OF(...given)).toEqual(CURVE);
  });

  test("what is certain stays", () => {
    const kinds = ["fan pressure", "fan speed", "hose", "pipe", "fittings", "entry", "device", "leak", "meter"];
    const certain = read(READINGS, kinds.map((kind) => [kind, "none"])); // prettier-ignore
    expect(partOf(certain, "input")).toEqual([]);
    for (const row of partOf(certain, "reading")) expect(row.After).toBe(row.Before);
  });

  test("a decimal place of the area is found and asked about, and no other reading is accused", () => {
    const wrong = READINGS.map((row, index) => (index === 3 ? { ...row, Airflow: 9500 } : row));
    const found = read(wrong);
    const rows = partOf(found, "reading");
    expect(rows.filter((row) => !String(row["In words"]).startsWith("agrees"))).toEqual([rows[3]]);
    expect(rows[3]!["In words"]).toMatch(
      /^left out: (9\.\d|1\d) times what all others say; a decimal place of the area\?$/,
    );
    expect(words(found, "readings")).toBe(
      "1 of 7 readings fit no plausible system and are left out: airflow at planer (row 5)",
    );
    expect(partOf(found, "input")).toEqual(partOf(read(READINGS.filter((_, index) => index !== 3)), "input"));
  });

  test("too little air behind a hood may be a blocked duct, unless a suction was read there", () => {
    const wrong = READINGS.map((row, index) => (index === 1 || index === 3 ? { ...row, Airflow: Number(row.Airflow) / 2.6 } : row)); // prettier-ignore
    const blocked = "or the duct there is blocked: read the suction behind the hood";
    expect(partOf(read(wrong), "reading")[1]!["In words"]).toContain(blocked);
    const withSuction = [...wrong, { Open: "planer", At: "planer", Suction: 1900 }];
    expect(JSON.stringify(read(withSuction))).not.toContain(blocked);
  });

  test("takes a velocity for an airflow, an area that was typed, repeats, a meter, and leaves out what says no", () => {
    const area = (Math.PI / 4) * 0.1 ** 2;
    const one = read([{ Open: "saw", At: "saw", Airflow: 1010, Times: 4, "±": 6 }]);
    const inputs = (answer_: Answer): unknown => partOf(answer_, "input").map(({ After }) => expect.closeTo(number(After), 6)); // prettier-ignore
    const same: Row[][] = [
      [{ Open: "SAW", At: "Saw", Velocity: 1010 / 3600 / area, "±": 3 }],
      [{ Open: "saw", At: "saw", Airflow: 2020, Area: 2 * area, "±": 3 }],
      [{ Open: "saw", At: "saw", Airflow: 1010, "±": 3, Meter: "", Use: "Yes" }, { Open: "saw", At: "saw", Airflow: 400, "±": null, Meter: null, Use: "no" }], // prettier-ignore
    ];
    for (const rows of same) expect(partOf(read(rows), "input").map(({ After }) => After)).toEqual(inputs(one));
    const named = partOf(
      read([
        { ...READINGS[0], Meter: "vane" },
        { ...READINGS[4], Meter: "gauge" },
      ]),
      "input",
    );
    expect(named.map(({ What }) => What)).toEqual(
      expect.arrayContaining(["airflow meter vane", "pressure meter gauge"]),
    );
    const both = partOf(read([{ Open: "saw", At: "saw", Airflow: 1010, Suction: 1500, Meter: "combined" }]), "input");
    expect(both.flatMap(({ What }) => (String(What).endsWith(" combined") ? [What] : []))).toEqual([
      "airflow meter combined",
      "pressure meter combined",
    ]);
  });
});

describe("a row of readings that cannot be used says why, and the others count", () => {
  test.each<[string, Row]>([
    ['Open in row 3 of readings must be names of runs in the table (nearest: "saw", "main", "planer"); got "swa"', { Open: "swa", At: "saw", Airflow: 3 }], // prettier-ignore
    ['At in row 3 of readings must be the name of a run, or "fan" (nearest: "planer", "planer tight", "fan"); got "plane"', { At: "plane", Airflow: 3 }], // prettier-ignore
    ['At in row 3 of readings must be the name of a run, or "fan"; got a blank cell', { Airflow: 3 }],
    ["Airflow in row 3 of readings must be above 0 m³/h; got -3", { At: "saw", Airflow: -3 }],
    ['Airflow in row 3 of readings must be a number (m³/h); got "some"', { At: "saw", Airflow: "some" }],
    ["± in row 3 of readings must be from 0.1 to 100; got 101", { At: "saw", Airflow: 900, "±": 101 }],
    ["± in row 3 of readings must be from 0.1 to 100; got 0.03", { At: "saw", Airflow: 900, "±": 0.03 }], // 3 % typed with its sign
    ["Times in row 3 of readings must be from 1 to 100; got 0.5", { At: "saw", Airflow: 900, Times: 0.5 }],
    ['Use in row 3 of readings must be "no" for a row that is left aside, or blank; got "skip"', { At: "saw", Airflow: 900, Use: "skip" }], // prettier-ignore
    ['Use in row 3 of readings must be "no" for a row that is left aside, or blank; got 2', { At: "saw", Airflow: 900, Use: 2 }], // prettier-ignore
    ["Velocity in row 3 of readings must be read in a run that the table has, not at the fan; got 3", { At: "fan", Velocity: 3 }], // prettier-ignore
    ["Drop in row 3 of readings must be read across a separator or filter: that run has no device loss; got 3", { At: "saw", Drop: 3 }], // prettier-ignore
    ["Suction in row 3 of readings must be read before the fan: that run stands after it; got 3", { At: "filter", Suction: 3 }], // prettier-ignore
    ["airflow in row 3 of readings stands where no air moves while these gates are open", { Open: "saw", At: "planer tight", Airflow: 3 }], // prettier-ignore
  ])("%s", (sentence, row) => {
    const tight: Row = { Run: "planer tight", To: "main", "Diameter (mm)": 100, Gate: "shut" };
    const answer = CALIBRATE(table([...RUNS, tight]), CURVE, table([READINGS[0]!, row]), null, null, "SI");
    const rows = partOf(answer, "reading");
    expect(rows[1]!["In words"]).toBe(sentence);
    expect(rows[0]!["In words"]).toMatch(/^agrees/);
    expect(words(answer, "readings")).toBe("all readings agree: 1; 1 cannot be used: see their words");
    const { code, message } = refusal(() => RUNS_OF(table([...RUNS, tight]), CURVE, table([READINGS[0]!, row]), null, null, "SI")); // prettier-ignore
    expect([code, message]).toEqual(["#N/A", sentence]);
  });
});

describe("CALIBRATE refuses", () => {
  const call = (readings: unknown) => (): unknown => CALIBRATE(runs, CURVE, readings, null, null, "SI");

  test.each<[string, unknown]>([
    ['readings must be a table whose first row has the headers At and one of Airflow, Velocity, Suction, Drop; got "Where"', [["Where", "Airflow"], ["saw", 900]]], // prettier-ignore
    ["readings must be a table whose first row has the headers At and one of Airflow, Velocity, Suction, Drop; got a blank cell", null], // prettier-ignore
    ['readings must be headed by each column once, not twice; got "Airflow"', [["At", "Airflow", "airflow (cfm)"], ["saw", 3, 4]]], // prettier-ignore
    ["readings must be at most 60 readings; got 61", [["At", "Airflow"], ...Array.from({ length: 61 }, () => ["saw", 900])]], // prettier-ignore
  ])("%s", (message, readings) => {
    expect(refusal(call(readings))).toEqual({ code: "#VALUE!", message });
  });

  test("more air than the fan's curve has points for is said, and has no calibrated table", () => {
    const short = CURVE.slice(0, 3).concat([[1250, 2100]]); // with the saw alone the fan moves about 1100
    const much = table([{ Open: "saw", At: "saw", Airflow: 1300, "±": 1 }]);
    const loose = [["fan pressure", "none"], ["fan speed", "none"], ["meter", "none"], ["entry", 100], ["fittings", 100], ["device", 100], ["hose", 100], ["model", 1]]; // prettier-ignore
    expect(words(CALIBRATE(runs, short, much, loose, null, "SI"), "fan")).toContain("type more of its points");
    expect(refusal(() => CURVE_OF(runs, short, much, loose, null, "SI"))).toEqual({
      code: "#N/A",
      message: "these readings ask for more air than the fan's curve has points for: type more of its points",
    });
  });
});
