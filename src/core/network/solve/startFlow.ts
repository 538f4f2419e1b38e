import { sectionArea } from "../../section/section";
import type { Network } from "../network";
import { type Elements, JUNCTION, LEAK_ONLY, OPEN_END, STILL } from "./elements";
import { type Flow, newFlow } from "./sweep";
import { itemAt } from "../../../reference/itemAt";

/**
 * A first state: the airflow shared over the open ends by their area, and every leak at the suction given.
 *
 * @param network the tree
 * @param elements its runs as columns
 * @param airflow [m3/s] to be shared, above 0
 * @param suction [Pa] above 0
 * @returns the flow of every run, suctions not set yet
 * @source house
 */
export function startFlow(network: Network, elements: Elements, airflow: number, suction: number): Flow {
  const { runs, order, joining } = network;
  const flow = newFlow(runs.length);
  const openArea = order.reduce(
    (sum, index) => sum + (elements.kind[index] === OPEN_END ? sectionArea(itemAt(runs, index).diameter, null) : 0),
    0,
  );
  for (const index of order) {
    const kind = itemAt(elements.kind, index);
    if (kind === STILL) continue;
    if (kind === OPEN_END)
      flow.arriving[index] = (airflow * sectionArea(itemAt(runs, index).diameter, null)) / openArea;
    if (kind === JUNCTION)
      flow.arriving[index] = itemAt(joining, index).reduce((sum, other) => sum + itemAt(flow.airflow, other), 0);
    if (kind === LEAK_ONLY) flow.leak[index] = Math.sqrt(suction / itemAt(elements.endResistance, index));
    else
      flow.leak[index] =
        Math.sqrt(suction / itemAt(elements.velocityResistance, index)) * itemAt(elements.leakShare, index);
    flow.airflow[index] = itemAt(flow.arriving, index) + flow.leak[index];
  }
  return flow;
}
