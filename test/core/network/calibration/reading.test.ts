import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { slopesOf, stateAt } from "../../../../src/core/network/calibration/model";
import { said, type Spot } from "../../../../src/core/network/calibration/reading";
import { solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../../src/core/network/tree";
import { inTestAir } from "../../../support/flows";
import { ALL, everySet, model, normals, spot, truly } from "../../../support/measuredShop";
import { AIR, makeRun } from "../../../support/runs";

const SPOTS: readonly Spot[] = [
  ...["saw", "north", "separator", "filter", "fan"].map((name) => spot(ALL, name, "airflow")),
  ...["planer", "trunk", "filter"].map((name) => spot(0, name, "velocity")),
  ...["router", "south", "separator", "fan"].map((name) => spot(3, name, "suction")),
  ...["separator", "filter"].map((name) => spot(2, name, "drop")),
];

describe("what a model says of a spot", () => {
  // The other side is the solver, run again with each factor a little larger and a little smaller.
  test("changes with each unknown as the central difference of SOLVE, away from the table too", () => {
    const of = model();
    const normal = normals(3);
    const at = Float64Array.from(of.unknowns, ({ deviation }) => 0.5 * deviation * normal());
    const rows = slopesOf(stateAt(of, at, everySet), SPOTS);
    const step = 1e-4;
    of.unknowns.forEach((_, place) => {
      const moved = (by: number): number[] => truly(of, at.map((value, index) => value + (index === place ? by : 0)), SPOTS); // prettier-ignore
      const [up, down] = [moved(step), moved(-step)];
      SPOTS.forEach((one, index) => {
        const difference = Math.log(up[index]! / down[index]!) / (2 * step);
        const slope = rows[index]![place]!;
        expect([one, of.unknowns[place], Math.abs(slope - difference) < 2e-6]).toEqual([one, of.unknowns[place], true]);
      });
    });
  });

  // A pipe end with K = 0.5 on a fan of 1300 Pa static whatever it moves, through a device that loses 300 Pa then: 1000 = 0.5 p_v, so
  // p_v = 2000 Pa, at 1.2 kg/m3 a velocity of sqrt(2 * 2000 / 1.2) m/s. Static suction is the loss up to there and p_v: 1000 + 2000
  // behind the entry, 1300 + 2000 at the fan's inlet.
  test("by hand: a pipe end on a fan of one pressure", () => {
    const run = makeRun("end", "fan", { hood: 0.5, gate: "open" });
    const velocity = Math.sqrt((2 * 2000) / 1.2);
    const airflow = (Math.PI / 400) * velocity;
    const withDevice = { ...run, device: { ratedLoss: 300, ratedAirflow: airflow, exponent: 1 } };
    const air = { ...AIR, density: 1.2 };
    const flat = fanCurve(inTestAir([0, 1300], [1, 1300]));
    const system = { network: buildNetwork([withDevice]), curve: flat, surroundings: air };
    const solution = solveNetwork(system.network, flat, air);
    const of = (what: Spot["what"], at = 0): number => said(system, solution, { set: 0, run: at, what });
    expect(of("velocity")).toBeCloseTo(velocity, 6);
    expect(of("airflow")).toBeCloseTo(airflow, 8);
    expect(of("suction")).toBeCloseTo(3000, 4);
    expect(of("drop")).toBeCloseTo(300, 4);
    expect(of("suction", -1)).toBeCloseTo(3300, 4);
  });
});
