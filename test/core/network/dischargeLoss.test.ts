import fc from "fast-check";
import { flowsOf, inTestAir } from "../../support/flows";
import { budgetOf, makeRun } from "../../support/runs";
import { relative } from "../../support/printed";

/*
 * Air of 1.2 kg/m3. rho/(2 A^2): 100 mm 9726.83, 160 mm 1484.20, 200 mm 607.927 Pa s2/m6.
 * The saw's hood K 1 in 200 mm at 0.1 m3/s: P = 6.07927 Pa at the fan's inlet.
 */
const saw = makeRun("saw", "fan", { diameter: 0.2, hood: 1, wantedAirflow: 0.1 });
const after = (name: string, diameter: number, facts: object = {}) =>
  makeRun(name, "", { side: "discharge", diameter, ...facts });
const withExit = { coefficient: 1, exitCoefficient: 1 };
const near = (ours: number, byHand: number): void => expect(relative(ours, byHand)).toBeLessThan(1e-5);

describe("an exit against fan static pressure (FSP = FTP - velocity pressure at the fan's outlet)", () => {
  test("as wide as the fan's outlet costs nothing beyond it, named or not", () => {
    near(budgetOf([saw]).staticPressure, 6.07927);
    near(budgetOf([saw, after("stack", 0.2)]).staticPressure, 6.07927);
    near(budgetOf([saw, after("stack", 0.2, withExit)]).staticPressure, 6.07927);
  });

  // Outlet 200 mm, then 160 mm: 14.8420 - 6.07927 = 8.76273 Pa more.
  test("narrower than the fan's outlet costs the difference of the velocity pressures", () => {
    const runs = [saw, after("outlet", 0.2, { to: "stack" }), after("stack", 0.16, withExit)];
    near(budgetOf(runs).staticPressure, 6.07927 + 8.76273);
    near(budgetOf(runs).of("stack").cost!.fittings, 8.76273);
  });

  // Outlet 160 mm with a loss of K 2 of its own 14.8420 (29.6840), then 200 mm: 6.07927 - 14.8420 given back.
  test("wider than the fan's outlet gives the difference back, less what the widening costs", () => {
    const runs = [saw, after("outlet", 0.16, { to: "stack", coefficient: 2 }), after("stack", 0.2)];
    near(budgetOf(runs).staticPressure, 6.07927 + 29.684 - 8.76273);
  });

  test("into a box before the last run is a loss like any other, and a second exit of the last run too", () => {
    const boxed = [saw, after("pipe", 0.2, { to: "house", ...withExit }), after("house", 0.2, withExit)];
    near(budgetOf(boxed).staticPressure, 2 * 6.07927);
    near(budgetOf([saw, after("stack", 0.2, { coefficient: 2, exitCoefficient: 1 })]).staticPressure, 2 * 6.07927);
  });

  // The order of the rows does not matter, only who goes to whom.
  test("finds the fan's outlet and the end by the names in To", () => {
    const [outlet, stack] = [after("outlet", 0.2, { to: "stack" }), after("stack", 0.16)];
    const [one, other] = [budgetOf([saw, outlet, stack]), budgetOf([stack, saw, outlet])];
    expect(other.staticPressure).toBe(one.staticPressure);
  });

  // A fan whose straight line passes through the pressure asked for at 0.1 m3/s works there.
  test("is solved for as it is budgeted", () => {
    const runs = [saw, after("outlet", 0.2, { to: "stack" }), after("stack", 0.16, withExit)];
    const flows = flowsOf(runs, inTestAir([0, 2 * (6.07927 + 8.76273)], [0.2, 0]));
    near(flows.fanAirflow, 0.1);
    near(flows.fanPressure, 6.07927 + 8.76273);
  });

  test("named at the end of any system asks no more than the same system without it", () => {
    const size = fc.double({ min: 0.08, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(size, size, (first, last) => {
        const system = (facts: object) => budgetOf([saw, after("a", first, { to: "b" }), after("b", last, facts)]);
        const [named, left] = [system(withExit).staticPressure, system({}).staticPressure];
        expect(Math.abs(named - left)).toBeLessThanOrEqual(1e-9 * (Math.abs(left) + 1000));
      }),
    );
  });
});
