import { velocityPressure } from "../../core/air/velocityPressure";
import { itemAt } from "../../reference/itemAt";
import type { RunFlow } from "./flowNotes";
import type { Solved } from "./solveRuns";

/** Static suction at a run's upstream end, where a tap behind the hood and the run's own leak feel it; null where nothing tells it. [Pa] */
export function staticSuction(
  { network, solution }: Solved,
  flow: RunFlow,
  index: number,
  density: number,
): number | null {
  if (itemAt(network.runs, index).side === "discharge" || flow.beyondShut) return null;
  return itemAt(solution.suction, index) + velocityPressure(Math.abs(flow.velocity), density);
}
