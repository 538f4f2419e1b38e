import "../../support/customFunctions";
import { calibrateduncertainty } from "../../../src/functions/systems/calibrateduncertainty";
import { uncertainty } from "../../../src/functions/systems/uncertainty";
import { byName, type Row, table } from "../../support/tables";

/*
 * A strong branch pushes the air of a weak one back: through the weak one's hood, or through the leak of its shut gate. How hard goes
 * by the entry of b; at one of 15.83 nothing drives that leak.
 */
const CURVE = [[0, 14], [400, 13.5], [800, 12], [1200, 9], [1600, 4], [1800, 0]]; // prettier-ignore
const ducts = (entryOfB: number, c: Row): Row[] => [
  { Run: "a", To: "m2", Diameter: 6, Length: 0.2, Fittings: "branch 90", Hood: 0.03 },
  { Run: "b", To: "m2", Diameter: 6, Length: 0.2, Hood: entryOfB },
  { Run: "c", To: "m", Diameter: 6, Length: 0.2, Fittings: "branch 30", ...c },
  { Run: "m", To: "m2", Diameter: 2, Length: 2, Fittings: "branch 30" },
  { Run: "m2", To: "fan", Diameter: 6, Length: 2 },
];
const told = (runs: readonly Row[]) =>
  byName((uncertainty as (...all: any[]) => (string | number)[][])(table(runs), CURVE));
const number = (cell: unknown): number => (typeof cell === "number" ? cell : NaN);
const TIMES = "Leak, times or over";

// 0.5 in2 pass 0.6 x 0.5 / 144 ft2 x 4005 fpm x sqrt(14) = 31.2 cfm at the fan's highest pressure, so no ± of such a leak is larger.
test.each([15.8, 15.83, 15.9, 16.4])("a leak that may as well blow out has a ± and no factor: entry %f", (entry) => {
  const { c, Fan } = told(ducts(entry, { Hood: 0.5, Gate: "shut", "Leak shut": 0.5 }));
  expect(Math.abs(number(c!.Leak))).toBeLessThan(2);
  expect(number(c!["Airflow, ±"])).toBeGreaterThan(1);
  expect(number(c!["Airflow, ±"])).toBeLessThan(31.2);
  expect(number(c!["Velocity, ±"])).toBeLessThan(31.2 / 0.19);
  expect(c!["Airflow in words"]).toMatch(/^-?\d+(\.\d)? ± \d+ cfm$/);
  expect([c![TIMES], Fan![TIMES]]).toEqual(["", ""]);
});

// Static suction behind a hood out of which air blows is (1 - K) p_v: about 0 at K 1, and its error is that of K.
test.each([0.999, 1.00001, 1.1, 2])("so has one behind a hood out of which air blows, with K %f", (K) => {
  const { c, Fan } = told(ducts(2, { Hood: K, Leak: 0.5 }));
  expect(number(c!.Airflow)).toBeLessThan(-20);
  expect([c![TIMES], Fan![TIMES]]).toEqual(["", ""]);
});

test("nor has it a factor once readings are counted", () => {
  const readings = [["At", "Velocity"], ["a", 6093], ["m2", 8249]]; // prettier-ignore
  const answer = (calibrateduncertainty as (...all: any[]) => (string | number)[][])(
    table(ducts(2, { Hood: 1.1, Leak: 0.5 })),
    CURVE,
    readings,
  );
  expect(number(byName(answer).c!.Leak)).toBeLessThan(0);
  expect(byName(answer).c![TIMES]).toBe("");
});

// Pushed back hard, with only the leak's area unsure: 2.5 times or over as a standard deviation, so 6.25 as two.
test("a leak that surely blows out is told by a factor, as one that draws in", () => {
  const only = [["leak", 2.5], ...["fan pressure", "fan speed", "hose", "pipe", "fittings", "entry", "diameter"].map((what) => [what, "none"])]; // prettier-ignore
  const runs = table(ducts(2, { Hood: 0.5, Gate: "shut", "Leak shut": 0.01 }));
  const { c } = byName((uncertainty as (...all: any[]) => (string | number)[][])(runs, CURVE, null, only));
  expect(number(c!.Leak)).toBeLessThan(0);
  expect(number(c![TIMES])).toBeCloseTo(6.25, 1);
  expect(c!["Airflow in words"]).toMatch(/^-0\.\d+ cfm, times or over 6\.[23]$/);
});
