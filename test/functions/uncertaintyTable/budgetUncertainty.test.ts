import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { budgetuncertainty } from "../../../src/functions/systems/budgetuncertainty";
import { refusal } from "../../support/refusal";
import { relative } from "../../support/printed";
import { type Row, table } from "../../support/tables";

type Call = (...args: any[]) => (string | number)[][];
const [UNSURE, BUDGET] = [budgetuncertainty, budget] as unknown as [Call, Call];
const KINDS = ["fan pressure", "fan speed", "hose", "pipe", "fittings", "entry", "device", "leak", "diameter"];
const only = (kind: string, value: unknown): unknown[][] => KINDS.map((one) => [one, one === kind ? value : "none"]);
const said = (runs: readonly Row[], errors: unknown) => UNSURE(table(runs), errors, null, "SI")[1]!;

const END: Row = { Run: "saw", To: "fan", Diameter: 125, Airflow: 900, Hood: 0.9, K: 0.6, Gate: "open" };
const RUNS: readonly Row[] = [
  { ...END, To: "main", Flex: 2 },
  { Run: "planer", To: "main", Diameter: 125, Airflow: 1000, Hood: 1.4, Length: 6, Gate: "open", Leak: 80 },
  { Run: "main", To: "fan", Diameter: 180, Length: 8, K: 0.5, "Device loss": 300, "Device airflow": 1500 },
];

describe("BUDGETUNCERTAINTY", () => {
  // Of one pipe end with K alone the pressure asked for is (0.9 + 0.6) p_v and less by nothing else: its logarithm goes with 0.6 of an entry's.
  // A draw's factor e^(0.1 z): at the 97.5th and 2.5th of 100, z = ±1.96, half of 0.9 p_v (e^0.196 - e^-0.196) is 0.9 · 0.1973 p_v.
  test("by hand: an entry of a single pipe end, to the grain of its draws", () => {
    const velocity = 900 / 3600 / ((Math.PI / 4) * 0.125 ** 2);
    const pressure = 0.600692 * velocity ** 2;
    const [airflow, error, asked, off, from, share, words] = said([END], only("entry", 10));
    expect([airflow, error, from]).toEqual([expect.closeTo(900, 6), 0, "entry of saw"]);
    expect(share).toBeCloseTo(100, 9);
    expect(relative(Number(asked), 1.5 * pressure)).toBeLessThan(1e-4);
    expect(relative(Number(off), 0.9 * 0.1973 * pressure)).toBeLessThan(0.1);
    expect(words).toMatch(/^900 m³\/h at \d+ ± \d+ Pa$/);
  });

  test("has the fan's row of BUDGET, is nothing without errors, and wider with larger ones", () => {
    const fan = BUDGET(table(RUNS), null, "SI").at(-1)!;
    const [header] = BUDGET(table(RUNS), null, "SI");
    const at = (name: string) => Number(fan[header!.findIndex((one) => String(one).startsWith(name))]);
    const none = said(RUNS, KINDS.map((kind) => [kind, "none"])); // prettier-ignore
    expect([none[0], none[1], none[2], none[3], none[4], none[5]]).toEqual([
      at("Airflow"),
      0,
      at("Path loss"),
      0,
      "",
      "",
    ]);
    const [small, large] = [5, 10].map((percent) => Number(said(RUNS, only("device", percent))[3])) as [number, number];
    expect(large / small).toBeGreaterThan(1.9);
    expect(large / small).toBeLessThan(2.1);
    expect(Number(said(RUNS, only("leak", 2))[1])).toBeGreaterThan(0); // what a leak lets in the fan must move
    expect(said(RUNS, only("fan pressure", 10))[3]).toBe(0);
  });

  // Two alike paths whose entries alone are unsure: the larger governs. Of two standard normal z the larger exceeds 2.24 in 2.5 of 100 and falls
  // short of -1.00 in 2.5 of 100 (0.158²): a straight line through the one that governs would say ±1.96.
  test("of two paths that ask alike the larger one governs in each draw", () => {
    const two: readonly Row[] = [{ ...END, To: "main" }, { ...END, Run: "planer", To: "main" }, { Run: "main", To: "fan", Diameter: 200, K: 0.01 }]; // prettier-ignore
    const one = 0.9 * 0.600692 * (900 / 3600 / ((Math.PI / 4) * 0.125 ** 2)) ** 2;
    const half = (one * (Math.exp(0.224) - Math.exp(-0.1))) / 2;
    expect(relative(Number(said(two, only("entry", 10))[3]), half)).toBeLessThan(0.1);
  });

  test("refuses what BUDGET refuses", () => {
    const wrong = [{ ...END, Diameter: -1 }];
    expect(refusal(() => said(wrong, null)).message).toMatch(/^Diameter/);
    expect(refusal(() => said(RUNS, [["nonsense", 3]])).message).toMatch(/^what in row 1 of errors/);
  });
});
