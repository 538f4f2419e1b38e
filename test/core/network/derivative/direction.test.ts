import fc from "fast-check";
import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { changing, type System } from "../../../../src/core/network/derivative/changed";
import { type Direction, direction } from "../../../../src/core/network/derivative/direction";
import { type Input, inputsOf } from "../../../../src/core/network/derivative/inputs";
import { linearise } from "../../../../src/core/network/derivative/linearise";
import type { Run } from "../../../../src/core/network/network";
import { type Solution, solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../../src/core/network/tree";
import { FALLING, points } from "../../../support/flows";
import { AIR, makeRun } from "../../../support/runs";
import { seededTree } from "../../../support/seededTree";

const systemOf = (runs: readonly Run[], curve = fanCurve(FALLING)): System => ({
  network: buildNetwork(runs),
  curve,
  surroundings: AIR,
});
const solve = ({ network, curve, surroundings }: System): Solution => solveNetwork(network, curve, surroundings);
const allInputs = ({ network }: System): Input[] => [
  ...inputsOf(network, (run) => network.joining[run]!.length === 0 && network.runs[run]!.side === "suction"),
  { kind: "density", run: -1 },
];

/** The answers of a state that a direction tells the change of, in one list. */
const answersOf = (system: System, solution: Solution): number[][] => {
  const { runs } = system.network;
  const area = (index: number): number => (Math.PI / 4) * runs[index]!.diameter ** 2;
  const inDuct = Array.from(solution.airflow, (flow, index) => flow / area(index));
  const suction = Array.from(
    solution.suction,
    (one, index) => one + 0.5 * system.surroundings.density * inDuct[index]! ** 2,
  );
  const velocity = runs.map(({ side }, index) => (side === "discharge" ? solution.fanAirflow / area(index) : inDuct[index]!)); // prettier-ignore
  return [[...solution.airflow], [...solution.leak], suction, velocity, [solution.fanAirflow], [solution.fanPressure]];
};
const changesOf = (one: Direction): number[][] => [
  [...one.airflow],
  [...one.leak],
  [...one.staticSuction],
  [...one.velocity],
  [one.fanAirflow],
  [one.fanPressure],
];

/** The largest difference between a direction and the central difference of SOLVE itself, as a share of the largest answer of its kind. */
function worstOf(system: System): { worst: number; at: string } {
  const solution = solve(system);
  expect(solution.status).toBe("converged");
  const largest = answersOf(system, solution).map((list) => Math.max(...list.map(Math.abs)) || 1);
  const straight = linearise(system, solution);
  let [worst, at] = [0, ""];
  for (const input of allInputs(system)) {
    const step = 2e-4;
    const [up, down] = [step, -step].map((logarithm) => {
      const other = changing(system, [input])([logarithm]);
      return answersOf(other, solve(other));
    });
    changesOf(direction(straight, input)).forEach((list, kind) =>
      list.forEach((change, run) => {
        const difference = (up![kind]![run]! - down![kind]![run]!) / (2 * step);
        const off = Math.abs(change - difference) / largest[kind]!;
        if (!(off <= worst)) [worst, at] = [off, `${input.kind} ${input.run}: answer ${kind} of run ${run}`];
      }),
    );
  }
  return { worst, at };
}

describe("the derivative of a solved network", () => {
  // The other side is the solver, run again with each input a little larger and a little smaller.
  test.each(Array.from({ length: 24 }, (_, seed) => seed + 1))(
    "is the central difference of SOLVE: seeded tree %d",
    (seed) => {
      const { runs, curve } = seededTree(seed, 3 + (seed % 14), seed % 3 === 0 ? "K only" : "with friction", seed % 4 === 0 ? "plainly" : "by airflows"); // prettier-ignore
      const { worst, at } = worstOf(systemOf(runs, curve));
      expect([worst < 1e-6, worst, at]).toEqual([true, worst, at]);
    },
  );

  test("also with leaks at open hoods and junctions, runs beyond a shut gate, a filter, runs after the fan and a hump", () => {
    const runs = [
      makeRun("saw", "main", { hood: 0.5, length: 4, roughness: 1e-4, hoseLength: 1, leakArea: 1e-4, gate: "open" }),
      makeRun("planer", "main", { diameter: 0.125, hood: 1.1, coefficient: 0.6, hoseLength: 2, gate: "open", leakArea: 2e-5 }),
      makeRun("shut", "main", { hood: 0.4, gate: "shut", leakArea: 6e-4, length: 2, roughness: 1e-4 }),
      makeRun("tight", "main", { hood: 0.4, gate: "shut", length: 2 }),
      makeRun("cut", "shut branch", { hood: 0.4 }),
      makeRun("shut branch", "main", { gate: "shut", leakArea: 1e-4 }),
      makeRun("main", "fan", { diameter: 0.17, length: 6, roughness: 1.5e-4, leakArea: 3e-4, coefficient: 0.8 }),
      makeRun("filter", "outlet", { side: "discharge", diameter: 0.2, device: { ratedLoss: 250, ratedAirflow: 0.4, exponent: 1 } }),
      makeRun("outlet", "", { side: "discharge", diameter: 0.15, coefficient: 1.3, exitCoefficient: 1, length: 2, roughness: 1e-4 }),
    ]; // prettier-ignore
    const hump = fanCurve(points([0, 2000], [0.15, 2300], [0.45, 1500], [0.8, 0]));
    for (const curve of [fanCurve(FALLING), hump]) {
      const { worst, at } = worstOf(systemOf(runs, curve));
      expect([worst < 1e-6, worst, at]).toEqual([true, worst, at]);
    }
  });

  test("of a system with every end shut is the fan's shut-off pressure alone", () => {
    const system = systemOf([makeRun("main", "fan", { gate: "shut", hood: 0.5 })]);
    const one = direction(linearise(system, solve(system)), { kind: "fan pressure", run: -1 });
    expect(one.fanPressure).toBeCloseTo(solve(system).fanPressure, 9);
    expect([...one.airflow, one.fanAirflow]).toEqual([0, 0]);
  });

  // Everything is a K times a velocity pressure and the fan follows its laws: at s times the speed all airflows are s times as large, all pressures s².
  test("by the fan's speed, where all losses go with the square: every airflow moves by itself, every suction by twice itself", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 12 }), (seed, count) => {
        const { runs, curve } = seededTree(seed, count, "K only", "by airflows");
        const system = systemOf(runs, curve);
        const solution = solve(system);
        const one = direction(linearise(system, solution), { kind: "fan speed", run: -1 });
        const [flows, , suctions] = answersOf(system, solution);
        const largest = Math.max(...flows!);
        flows!.forEach((flow, run) => expect(Math.abs(one.airflow[run]! - flow) / largest).toBeLessThan(1e-7));
        const most = Math.max(...suctions!);
        suctions!.forEach((one_, run) =>
          expect(Math.abs(one.staticSuction[run]! - 2 * one_) / most).toBeLessThan(1e-7),
        );
      }),
      { numRuns: 40, examples: [[2538, 7]] }, // through a shut gate's leak there the air blows out
    );
  });

  test("keeps the air: what a run gains is what joins it gains, and its own leak", () => {
    const { runs, curve } = seededTree(7, 14, "with friction", "by airflows");
    const system = systemOf(runs, curve);
    const straight = linearise(system, solve(system));
    const { joining } = system.network;
    for (const input of allInputs(system)) {
      const one = direction(straight, input);
      joining.forEach((others, run) => {
        if (others.length === 0) return;
        const joined = others.reduce((sum, other) => sum + one.airflow[other]!, 0);
        expect(one.airflow[run]).toBeCloseTo(joined + one.leak[run]!, 12);
      });
    }
  });
});
