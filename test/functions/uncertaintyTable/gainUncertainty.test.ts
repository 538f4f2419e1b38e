import "../../support/customFunctions";
import { calibratedcurve } from "../../../src/functions/systems/calibratedcurve";
import { calibratedruns } from "../../../src/functions/systems/calibratedruns";
import { gains } from "../../../src/functions/systems/gains";
import { gainuncertainty } from "../../../src/functions/systems/gainuncertainty";
import { solve } from "../../../src/functions/systems/solve";
import { uncertainty } from "../../../src/functions/systems/uncertainty";
import { refusal } from "../../support/refusal";
import { byName, type Row, table } from "../../support/tables";

type Answer = (string | number)[][];
type Call = (...args: any[]) => Answer;
const [GAINS, UNSURE, UNCERTAINTY, SOLVE, RUNS_OF, CURVE_OF] = [gains, gainuncertainty, uncertainty, solve, calibratedruns, calibratedcurve] as unknown as [Call, Call, Call, Call, Call, Call]; // prettier-ignore

const CURVE = [["m³/h", "Pa"], [0, 2600], [900, 2300], [2000, 1500], [3000, 0]]; // prettier-ignore
const RUNS: readonly Row[] = [
  { Run: "saw", To: "main", Diameter: 100, Hood: 0.9, Length: 4, Flex: 1.5, K: 0.6, Gate: "open" },
  { Run: "planer", To: "main", Diameter: 125, Hood: 1.4, Length: 6, Flex: 1, K: 0.4, Gate: "open" },
  { Run: "lathe", To: "main", Diameter: 100, Hood: 0.5, Length: 3, Gate: "shut", Leak: 600 },
  { Run: "main", To: "fan", Diameter: 160, Length: 8, K: 0.5, Leak: 300, "Device loss": 300, "Device airflow": 1500 },
];
const KINDS = ["fan pressure", "fan speed", "hose", "pipe", "fittings", "entry", "device", "leak", "diameter"];

/** All errors none but one. */
const only = (kind: string, value: unknown): unknown[][] => KINDS.map((one) => [one, one === kind ? value : "none"]);
const rows = (errors: unknown, runs = RUNS, curve: unknown = CURVE): Map<string, (string | number)[]> =>
  new Map(UNSURE(table(runs), curve, "saw", null, errors, null, "SI").slice(1).map((row) => [`${row[0]}: ${row[1]}`, row])); // prettier-ignore
const gained = (runs: readonly Row[], curve: unknown): Map<string, number> =>
  new Map(GAINS(table(runs), curve, "saw", null, null, "SI").slice(1).map((row) => [`${row[0]}: ${row[1]}`, Number(row[2])])); // prettier-ignore
const timesIn = (column: string, run: string | null, factor: number): Row[] =>
  RUNS.map((row) => (row[column] === undefined || (run !== null && row.Run !== run) ? row : { ...row, [column]: Number(row[column]) * factor })); // prettier-ignore

describe("GAINUNCERTAINTY", () => {
  test("has the rows of GAINS, in their order", () => {
    const answer = UNSURE(table(RUNS), CURVE, "saw", null, null, null, "SI");
    const plain = GAINS(table(RUNS), CURVE, "saw", null, null, "SI");
    expect(answer.map((row) => row.slice(0, 3))).toEqual(plain.map((row) => row.slice(0, 3)));
    expect(answer[0]).toEqual(["Run", "Change", "Airflow gained (m³/h)", "Gained, ± (m³/h)", "Of a leak, times or over", "Mostly unsure by", "In words"]); // prettier-ignore
  });

  // One input is unsure: ± is 2 u times the change of the gain by the logarithm of its factor, found by GAINS with the table typed anew.
  test.each<[string, (factor: number) => [readonly Row[], unknown]]>([
    ["fan pressure", (f) => [RUNS, CURVE.map((row, at) => (at === 0 ? row : [row[0], Number(row[1]) * f]))]],
    [
      "fan speed",
      (f) => [RUNS, CURVE.map((row, at) => (at === 0 ? row : [Number(row[0]) * f, Number(row[1]) * f * f]))],
    ],
    ["hose", (f) => [timesIn("Flex", null, f), CURVE]],
    ["device", (f) => [timesIn("Device loss", null, f), CURVE]],
  ])("with %s alone unsure a gain's ± is the change that GAINS finds", (kind, typed) => {
    const step = 1e-3;
    const [up, down] = [gained(...typed(Math.exp(step))), gained(...typed(Math.exp(-step)))];
    let compared = 0;
    for (const [key, row] of rows(only(kind, 10))) {
      // GAINS turns hose into pipe of the same length, which the typed table would lengthen too
      if (key.includes("hose replaced") && kind === "hose") continue;
      const error = 2 * 0.1 * Math.abs((up.get(key)! - down.get(key)!) / (2 * step));
      expect(Math.abs(Number(row[3]) - error)).toBeLessThan(1e-4 * error + 1e-5);
      compared++;
    }
    expect(compared).toBeGreaterThan(4);
  });

  test("a sealed leak's gain is told as times or over, by its own leak", () => {
    const step = 1e-3;
    const leak = (f: number): number => gained(timesIn("Leak", "main", f), CURVE).get("main: leak sealed")!;
    const slope = (leak(Math.exp(step)) - leak(Math.exp(-step))) / (2 * step);
    // the lathe's leak is unsure as well: its part is found in the same way
    const other = (f: number): number => gained(timesIn("Leak", "lathe", f), CURVE).get("main: leak sealed")!;
    const part = (other(Math.exp(step)) - other(Math.exp(-step))) / (2 * step);
    const row = rows(only("leak", 2)).get("main: leak sealed")!;
    const deviation = Math.log(2) * Math.hypot(slope, part);
    expect(row[3]).toBe("");
    expect(Number(row[4]) / Math.exp((2 * deviation) / Number(row[2]))).toBeCloseTo(1, 3);
    expect(row[5]).toBe("leak of main");
    expect(row[6]).toMatch(/^\d+(\.\d+)? m³\/h, times or over \d/);
  });

  test("a gain is far surer than the airflow it is a part of, since both share their errors", () => {
    const saw = byName(UNCERTAINTY(table(RUNS), CURVE, null, null, null, "SI")).saw!;
    const larger = [...rows(null)].find(([key]) => key.startsWith("saw: one size larger"))![1];
    expect(Number(larger[3])).toBeLessThan(Number(saw["Airflow, ±"]) / 2);
    expect(larger[6]).toMatch(/^\d+ ± \d+ m³\/h$/);
  });

  test("errors that are none leave none, and other errors give another answer at once", () => {
    const none = rows(KINDS.map((kind) => [kind, "none"]));
    for (const row of none.values()) expect([row[3], row[4], row[5]]).toEqual([0, "", ""]);
    const [small, large] = [rows(only("hose", 10)), rows(only("hose", 20))];
    for (const [key, row] of small) expect(Number(large.get(key)![3])).toBeCloseTo(2 * Number(row[3]), 9);
  });

  test("refuses a hood that is none, as GAINS does", () => {
    expect(refusal(() => UNSURE(table(RUNS), CURVE, "main", null, null, null, "SI"))).toEqual(
      refusal(() => GAINS(table(RUNS), CURVE, "main", null, null, "SI")),
    );
  });
});

/** The rows of GAINS by run and change: what is gained, and its ± as written. */
type Sure = Map<string, { readonly gained: number; readonly sure: string }>;
const sure = (runs: unknown, goal: string, errors: unknown, readings: unknown = null, curve: unknown = CURVE): Sure =>
  new Map(GAINS(runs, curve, "saw", null, null, "SI", goal, errors, readings).slice(1).map((row) => [`${row[0]}: ${row[1]}`, { gained: Number(row[2]), sure: String(row[3]) }])); // prettier-ignore

/** Half of the last digit of a number as it is written. */
const halfDigit = (written: string): number => {
  const decimals = /\.(\d+)/.exec(written)?.[1]?.length;
  return decimals === undefined ? 0.5 * 10 ** /0*$/.exec(written)![0].length : 0.5 * 10 ** -decimals;
};
function expectWritten(words: string, gained: number, error: number): void {
  const [, value, off] = /^([+-]?[\d.]+) ± ([\d.]+)$/.exec(words)!;
  expect(Math.abs(Number(off) - error)).toBeLessThanOrEqual(halfDigit(off!) * 1.001 + 1e-3 * error);
  expect(Math.abs(Number(value) - gained)).toBeLessThanOrEqual(halfDigit(off!) * 1.001);
  if (Number(value) !== 0) expect(words.startsWith(gained < 0 ? "-" : "+")).toBe(true);
}

describe("GAINS that is told how far inputs may be off", () => {
  // too much air in a wide duct that carries no dust: narrower pipe takes air away
  const WIDE = RUNS.map((row) => (row.Run === "saw" ? { ...row, Diameter: 160, Airflow: 300 } : row));

  test.each(["air", "work"])("answers as without them, goal %s, with one column more", (goal) => {
    for (const runs of [RUNS, WIDE]) {
      const plain = GAINS(table(runs), CURVE, "saw", null, null, "SI", goal);
      const more = GAINS(table(runs), CURVE, "saw", null, null, "SI", goal, [["hose", 40]]);
      expect(more.map((row) => row.filter((_, at) => at !== 3))).toEqual(plain);
      expect(more[0]![3]).toBe("Gained, ± (m³/h)");
    }
    expect(GAINS(table(RUNS), CURVE, "saw", null, null, "SI", goal, [[""]], 0)[0]).toHaveLength(5);
  });

  test("writes what GAINUNCERTAINTY says, of a sealed leak from and to", () => {
    let leaks = 0;
    for (const [key, row] of rows(null)) {
      const { gained, sure: words } = sure(table(RUNS), "air", [["hose", 40]]).get(key)!;
      if (typeof row[3] === "number") expectWritten(words, gained, row[3]);
      else {
        const [, from, to] = /^\+?([\d.]+) to \+([\d.]+)$/.exec(words)!;
        for (const [written, value] of [[from!, gained / Number(row[4])], [to!, gained * Number(row[4])]] as const) // prettier-ignore
          expect(Math.abs(Number(written) - value)).toBeLessThanOrEqual(Math.max(0.5 * 10 ** Math.floor(Math.log10(value)), 0.1)); // prettier-ignore
        leaks++;
      }
    }
    expect(leaks).toBe(2);
  });

  test("writes of air that is lost, and with nothing unsure the gain alone", () => {
    const step = 1e-3;
    const scaled = (f: number): unknown => CURVE.map((row, at) => (at === 0 ? row : [row[0], Number(row[1]) * f]));
    const told = sure(table(WIDE), "work", only("fan pressure", 10));
    const [up, down] = [Math.exp(step), Math.exp(-step)].map((f) => sure(table(WIDE), "work", null, null, scaled(f)));
    const slope = (key: string): number => (up!.get(key)!.gained - down!.get(key)!.gained) / (2 * step);
    const [narrower] = [...told].filter(([key]) => key.startsWith("saw: narrower"));
    expect(narrower![1].gained).toBeLessThan(0);
    for (const [key, { gained, sure: words }] of told) expectWritten(words, gained, 0.2 * Math.abs(slope(key)));
    for (const { sure: words } of sure(table(WIDE), "work", only("hose", "none")).values())
      expect(words).toMatch(/^[+-]?[\d.]+$/);
  });

  test("refuses errors and readings that cannot be read, each in its own words", () => {
    expect(refusal(() => sure(table(RUNS), "air", [["hose"], ["pipe"]]))).toEqual(refusal(() => UNSURE(table(RUNS), CURVE, "saw", null, [["hose"], ["pipe"]], null, "SI"))); // prettier-ignore
    const nowhere = table([{ Open: "all", At: "nowhere", Suction: 5 }]);
    expect(refusal(() => sure(table(RUNS), "air", null, nowhere)).message).toMatch(/^At in row 2 of readings must be the name of a run/); // prettier-ignore
  });
});

describe("GAINS that is told what was read", () => {
  const SHORT = RUNS.map((row) => (row.Run === "saw" ? { ...row, Airflow: 1500 } : row)); // so that there is much to try
  const NOTHING = table([{ Open: null, At: null, Velocity: null }]);
  const SURE_MODEL = [["diameter", "none"], ["model", "none"]]; // prettier-ignore

  test("with nothing read gives the ± of the errors alone, but for the model and the diameters", () => {
    const [read, plain] = [sure(table(SHORT), "work", SURE_MODEL, NOTHING), sure(table(SHORT), "work", SURE_MODEL)];
    expect(plain.size).toBeGreaterThan(6);
    expect([...read.keys()]).toEqual([...plain.keys()]);
    for (const [key, { sure: words }] of plain) expect([key, read.get(key)!.sure]).toEqual([key, words]);
  });

  // A leak is another one with its gate shut than with it open, so that both count, each for itself.
  test("takes a leak that only the change brings as unsure as the errors say", () => {
    const leaky = SHORT.map((row) => (row.Run === "planer" ? { ...row, "Leak open": 300, "Leak shut": 900 } : row));
    const errors = [...only("leak", 2), ["model", "none"]];
    const step = 1e-3;
    const change = "planer: gate there shut";
    const by = (run: string, column: string, x: number): number =>
      sure(table(leaky.map((row) => (row.Run === run ? { ...row, [column]: Number(row[column]) * Math.exp(x) } : row))), "air", null).get(change)!.gained; // prettier-ignore
    const slopes = ([["main", "Leak"], ["lathe", "Leak"], ["planer", "Leak open"], ["planer", "Leak shut"]] as const).map(([run, column]) => (by(run, column, step) - by(run, column, -step)) / (2 * step)); // prettier-ignore
    expect(slopes.every((slope) => slope !== 0)).toBe(true);
    const { gained, sure: words } = sure(table(leaky), "air", errors, NOTHING).get(change)!;
    expectWritten(words, gained, 2 * Math.log(2) * Math.hypot(...slopes));
  });

  test("gives the gains of the calibrated ducts and fan, the model's own error in each ±", () => {
    const readings = table([{ Open: "saw; planer", At: "saw", Velocity: 24 }, { Open: "planer", At: "planer", Airflow: 1150 }]); // prettier-ignore
    const given = [table(SHORT), CURVE, readings, null, null, "SI"];
    const plain = sure(RUNS_OF(...given), "work", null, null, CURVE_OF(...given));
    const told = sure(table(SHORT), "work", null, readings);
    expect([...told.keys()]).toEqual([...plain.keys()]);
    expect(told.size).toBeGreaterThan(6);
    for (const [key, { gained }] of plain) if (!key.includes("hose")) expect([key, told.get(key)!.gained]).toEqual([key, gained]); // prettier-ignore
    const modelAlone = sure(
      table(SHORT),
      "work",
      [...KINDS, "meter"].map((kind) => [kind, "none"]),
      NOTHING,
    );
    // 2 x 3/4 x 4 %
    for (const { gained, sure: words } of modelAlone.values()) expectWritten(words, gained, 0.06 * Math.abs(gained));
  });

  // The saw's 4 m of pipe and 1.5 m of hose become 5.5 m of pipe by the tape, whatever its hose was found to cost; all by SOLVE.
  test("puts as much pipe in the place of a hose as there is hose, not the length that its loss would need", () => {
    const readings = table([{ Open: "saw; planer", At: "saw", Velocity: 18 }]);
    const given = [table(SHORT), CURVE, readings, only("hose", 40), null, "SI"];
    const [told, curve] = [RUNS_OF(...given), CURVE_OF(...given)];
    const [flex, length] = ["Flex", "Length"].map((column) => told[0]!.indexOf(column)) as [number, number];
    const inSaw = (column: number, value: string | number): void => void (told[1]![column] = value);
    expect(told[1]![flex]).toBeGreaterThan(2); // it costs far more than its book says
    const atSaw = (): number => Number(byName(SOLVE(told, curve, null, null, "SI")).saw!.Airflow);
    const before = atSaw();
    inSaw(flex, "");
    inSaw(length, 5.5);
    const { gained } = sure(table(SHORT), "air", only("hose", 40), readings).get("saw: hose replaced by smooth pipe")!;
    expect(gained).toBeCloseTo(atSaw() - before, 6);
  });

  // The fan's pressure alone unsure by 10 %, the saw's airflow read once to 4 %: with s its change by the logarithm of that
  // factor, 1/u² = 1/0.1² + (s / 0.04)² is left, all by SOLVE and GAINS with the curve typed anew.
  test("leaves of the fan's pressure what one reading of an airflow leaves", () => {
    const errors = [...only("fan pressure", 10), ["model", "none"], ["meter", "none"]];
    const asIs = SOLVE(table(RUNS), CURVE, null, null, "SI").find(([run]) => run === "saw")!;
    const readings = table([{ Open: "saw; planer", At: "saw", Airflow: Number(asIs[1]), "±": 4 }]);
    const step = 1e-3;
    const [up, down] = [step, -step].map((x) => CURVE.map((row, at) => (at === 0 ? row : [row[0], Number(row[1]) * Math.exp(x)]))); // prettier-ignore
    const air = (curve: unknown): number => Number(SOLVE(table(RUNS), curve, null, null, "SI").find(([run]) => run === "saw")![1]); // prettier-ignore
    const s = Math.log(air(up) / air(down)) / (2 * step);
    const u = 1 / Math.hypot(1 / 0.1, s / 0.04);
    expect(u).toBeLessThan(0.08); // the reading says something
    const [more, less] = [up, down].map((curve) => sure(table(RUNS), "air", null, null, curve));
    const told = sure(table(RUNS), "air", errors, readings);
    expect(told.size).toBeGreaterThan(4);
    for (const [key, { gained, sure: words }] of told)
      expectWritten(words, gained, 2 * u * Math.abs(more!.get(key)!.gained - less!.get(key)!.gained) / (2 * step)); // prettier-ignore
  });
});
