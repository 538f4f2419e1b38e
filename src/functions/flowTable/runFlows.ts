import { cutOff } from "../../core/network/network";
import { sectionArea } from "../../core/section/section";
import type { RunFlow } from "./flowNotes";
import type { Solved } from "./solveRuns";
import { itemAt } from "../../reference/itemAt";

/** What each run does; a discharge run carries the fan's air. */
export function runFlows(solved: Solved): RunFlow[] {
  const { runs, joining, order } = solved.network;
  const fed = new Array<boolean>(runs.length).fill(false);
  const cut = cutOff(solved.network);
  const isEnd = (index: number): boolean => itemAt(joining, index).length === 0;
  for (const index of order) {
    fed[index] =
      itemAt(runs, index).gate !== "shut" && (isEnd(index) || itemAt(joining, index).some((other) => fed[other]));
  }
  return runs.map(({ side, gate }, index) => {
    const end = side === "suction" && isEnd(index) && gate !== "shut";
    return flowOf(solved, { fed: itemAt(fed, index), end, beyondShut: itemAt(cut, index) }, index);
  });
}

/** What one run does, where it is known what its gates and those around it let through. */
export function flowOf(
  { network, solution }: Solved,
  { fed, end, beyondShut }: Pick<RunFlow, "fed" | "end" | "beyondShut">,
  index: number,
): RunFlow {
  const { side, diameter } = itemAt(network.runs, index);
  const airflow = side === "discharge" ? solution.fanAirflow : itemAt(solution.airflow, index);
  const velocity = airflow / sectionArea(diameter, null);
  return { airflow, leak: itemAt(solution.leak, index), velocity, fed, end, beyondShut };
}
