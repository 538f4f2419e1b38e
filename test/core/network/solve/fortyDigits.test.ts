import { solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../../src/core/network/tree";
import { farFrom, fortyDigits } from "../../../support/fortyDigits";
import { AIR } from "../../../support/runs";
import { seededTree } from "../../../support/seededTree";

const NEAR = 1e-12; // of the largest airflow, leak or suction: the last digits of sums over a hundred runs miss by more than one

const trees = [1, 2, 50].flatMap((seed) =>
  ([10, 40] as const).flatMap((count) =>
    (["K only", "with friction"] as const).map((losses) => ({ seed, count, losses })),
  ),
);

describe("solveNetwork gives what flows to twelve digits, held against the same equations in forty", () => {
  test.each(trees)("$count runs, $losses, seed $seed", ({ seed, count, losses }) => {
    const { runs, curve } = seededTree(seed, count, losses);
    const solution = solveNetwork(buildNetwork(runs), curve, AIR);
    expect(farFrom(fortyDigits(runs, curve.points, solution), solution)).toBeLessThan(NEAR);
  });

  test("the forty digits themselves hang on where they begin by less than a double shows", () => {
    const { runs, curve } = seededTree(1, 40, "with friction");
    const solution = solveNetwork(buildNetwork(runs), curve, AIR);
    const exact = fortyDigits(runs, curve.points, solution);
    const off = { ...solution, airflow: solution.airflow.map((value) => value * 1.01) };
    expect(farFrom(exact, off)).toBeGreaterThan(0.009);
    expect(farFrom(fortyDigits(runs, curve.points, off), solution)).toBeLessThan(NEAR);
  });
});
