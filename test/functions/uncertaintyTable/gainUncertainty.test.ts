import "../../support/customFunctions";
import { gains } from "../../../src/functions/systems/gains";
import { gainuncertainty } from "../../../src/functions/systems/gainuncertainty";
import { uncertainty } from "../../../src/functions/systems/uncertainty";
import { refusal } from "../../support/refusal";
import { byName, type Row, table } from "../../support/tables";

type Answer = (string | number)[][];
type Call = (...args: any[]) => Answer;
const [GAINS, UNSURE, UNCERTAINTY] = [gains, gainuncertainty, uncertainty] as unknown as [Call, Call, Call];

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
