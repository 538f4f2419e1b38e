import { cutOff, type Network } from "../../core/network/network";
import { sectionArea } from "../../core/section/section";
import type { RunFlow } from "./flowNotes";
import type { Solved } from "./solveRuns";
import { itemAt } from "../../reference/itemAt";

/** What the gates of a network let through, by run. */
export interface Passing {
  readonly fed: readonly boolean[]; // an open hood or pipe end lets air into it
  readonly cut: readonly boolean[]; // a shut gate stands between it and the fan
}

/** What each run does; a discharge run carries the fan's air. */
export function runFlows(solved: Solved): RunFlow[] {
  const passing = passingOf(solved.network);
  return solved.network.runs.map((_, index) => flowOf(solved, passing, index));
}

export function passingOf(network: Network): Passing {
  const fed = new Array<boolean>(network.runs.length).fill(false);
  for (const index of network.order) {
    const isOpen = itemAt(network.runs, index).gate !== "shut";
    fed[index] = isOpen && (isEnd(network, index) || itemAt(network.joining, index).some((other) => fed[other]));
  }
  return { fed, cut: cutOff(network) };
}

/** What one run does, where it is known what the gates let through. */
export function flowOf({ network, solution }: Solved, { fed, cut }: Passing, index: number): RunFlow {
  const { side, diameter, gate } = itemAt(network.runs, index);
  const airflow = side === "discharge" ? solution.fanAirflow : itemAt(solution.airflow, index);
  return {
    airflow,
    leak: itemAt(solution.leak, index),
    velocity: airflow / sectionArea(diameter, null),
    fed: itemAt(fed, index),
    end: side === "suction" && isEnd(network, index) && gate !== "shut",
    beyondShut: itemAt(cut, index),
  };
}

const isEnd = ({ joining }: Network, index: number): boolean => itemAt(joining, index).length === 0;
