import { cutOff } from "../../core/network/network";
import { sectionArea } from "../../core/section/section";
import type { RunFlow } from "./flowNotes";
import type { Solved } from "./solveRuns";
import { itemAt } from "../../reference/itemAt";

/** What each run does; a discharge run carries the fan's air. */
export function runFlows({ network, solution }: Solved): RunFlow[] {
  const { runs, joining, order } = network;
  const fed = new Array<boolean>(runs.length).fill(false);
  const cut = cutOff(network);
  const isEnd = (index: number): boolean => itemAt(joining, index).length === 0;
  for (const index of order) {
    fed[index] =
      itemAt(runs, index).gate !== "shut" && (isEnd(index) || itemAt(joining, index).some((other) => fed[other]));
  }
  return runs.map((run, index) => {
    const airflow = run.side === "discharge" ? solution.fanAirflow : itemAt(solution.airflow, index);
    return {
      airflow,
      leak: itemAt(solution.leak, index),
      velocity: airflow / sectionArea(run.diameter, null),
      fed: itemAt(fed, index),
      end: run.side === "suction" && isEnd(index) && run.gate !== "shut",
      beyondShut: itemAt(cut, index),
    };
  });
}
