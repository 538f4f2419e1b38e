import { NoAnswerError } from "../../core/errors";
import type { FanCurve } from "../../core/fan/fanCurve";
import type { Network } from "../../core/network/network";
import { type Solution, solveNetwork } from "../../core/network/solve/solveNetwork";
import { buildNetwork } from "../../core/network/tree";
import type { UnitSystem } from "../../reference/quantities";
import type { Matrix } from "../cells";
import { readRuns, type RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";

/** A table of runs with a fan, solved. */
export interface SolvedTable {
  readonly table: RunsTable;
  readonly network: Network;
  readonly solution: Solution;
}

/** A fan and the air it works in, in SI. */
export interface Fan {
  readonly curve: FanCurve;
  readonly density: number; // [kg/m3]
}

/**
 * Reads a table and solves what flows in it.
 *
 * @throws NoAnswerError with the worst run's name where the solver does not converge
 * @throws OutsideCurveError where the fan's curve does not reach
 */
export function solveRuns(runs: Matrix, fan: Fan, system: UnitSystem): SolvedTable {
  const table = readRuns(runs, system);
  const network = buildNetwork(table.runs.map(({ run }) => run));
  const solution = solveNetwork(network, fan.curve, surroundings(fan.density));
  if (solution.status !== "converged") {
    const worst = network.runs[solution.worst]!.label;
    throw new NoAnswerError(`no convergence: after ${solution.iterations} sweeps the worst is ${worst}`);
  }
  return { table, network, solution };
}
