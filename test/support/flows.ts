import { type CurvePoint, fanCurve } from "../../src/core/fan/fanCurve";
import type { Network, Run } from "../../src/core/network/network";
import { type Solution, solveNetwork } from "../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../src/core/network/tree";
import { AIR } from "./runs";
import { trees } from "./trees";

/** What one run does in a solution. */
interface RunState {
  readonly airflow: number;
  readonly leak: number;
  readonly suction: number;
}

export interface Flows extends Solution {
  readonly network: Network;
  readonly of: (name: string) => RunState;
}

/** [m3/s, Pa] pairs as a curve's points. */
export const points = (...pairs: readonly (readonly [number, number])[]): CurvePoint[] =>
  pairs.map(([airflow, pressure]) => ({ airflow, pressure }));

/** A curve is given at standard density, 0.075 lb/ft3; this one is what a fan then has in the tests' own air. */
export const inTestAir = (...pairs: readonly (readonly [number, number])[]): CurvePoint[] => {
  const standard = (0.075 * 0.45359237) / 0.3048 ** 3; // kg/m3
  return points(...pairs).map(({ airflow, pressure }) => ({ airflow, pressure: (pressure * standard) / AIR.density }));
};

/** A falling fan of the tests, chosen by us: up to 0.8 m3/s, 2500 Pa at shut-off. */
export const FALLING = points([0, 2500], [0.2, 2400], [0.5, 1700], [0.8, 0]);

/** What flows in runs with a fan; runs are found again by name. */
export function flowsOf(runs: readonly Run[], curve: readonly CurvePoint[] = FALLING, air = AIR): Flows {
  const network = buildNetwork(runs);
  const solution = solveNetwork(network, fanCurve(curve), air);
  const of = (name: string): RunState => {
    const index = runs.findIndex((run) => run.name === name);
    const { airflow, leak, suction } = solution;
    return { airflow: airflow[index]!, leak: leak[index]!, suction: suction[index]! };
  };
  return { ...solution, network, of };
}

/** Random trees with entries that cost something: without, a hood's airflow hangs on the last digits of the suction. */
export const costlyTrees = trees.map((runs) =>
  runs.map((run) => ({ ...run, hood: run.hood === null ? null : Math.max(run.hood, 0.05) })),
);
