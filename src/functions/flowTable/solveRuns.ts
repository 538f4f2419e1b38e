import { NoAnswerError } from "../../core/errors";
import type { FanCurve } from "../../core/fan/fanCurve";
import type { Network, Run } from "../../core/network/network";
import { type Solution, solveNetwork, withOneRun } from "../../core/network/solve/solveNetwork";
import type { RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { itemAt } from "../../reference/itemAt";

/** A network and what flows in it. */
export interface Solved {
  readonly network: Network;
  readonly solution: Solution;
}

/** A table of runs with a fan, solved. */
export interface SolvedTable extends Solved {
  readonly table: RunsTable;
}

/** A fan and the air it works in, in SI. */
export interface Fan {
  readonly curve: FanCurve;
  readonly density: number; // [kg/m3]
}

/** Solves what flows in a table's runs; it fails as `solved` does, and where the runs make no tree. */
export const solveRuns = (table: RunsTable, fan: Fan): SolvedTable => ({ table, ...solved(table.network(), fan) });

/**
 * Solves what flows in a network.
 *
 * @throws NoAnswerError with the worst run's name where the solver does not converge
 * @throws OutsideCurveError where the fan's curve does not reach
 */
export function solved(network: Network, fan: Fan): Solved {
  return { network, solution: converged(network, solveNetwork(network, fan.curve, surroundings(fan.density))) };
}

/**
 * The same with one run changed, as often as it is asked; it fails as that does.
 *
 * @param now what flows as it is; null where that has no answer
 */
export function solvedWith(network: Network, fan: Fan, now: Solution | null): (index: number, run: Run) => Solved {
  const solve = withOneRun(network, fan.curve, surroundings(fan.density), now);
  return (index, run) => {
    const runs = [...network.runs];
    runs[index] = run;
    return { network: { ...network, runs }, solution: converged(network, solve(index, run)) };
  };
}

function converged({ runs }: Network, solution: Solution): Solution {
  if (solution.status === "converged") return solution;
  const worst = itemAt(runs, solution.worst).label;
  throw new NoAnswerError(`no convergence: after ${solution.iterations} sweeps the worst is ${worst}`);
}
