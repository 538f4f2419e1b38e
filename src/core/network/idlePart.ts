import { DISCHARGE_COEFFICIENT, openingLeak } from "../leaks/openingLeak";
import type { Network } from "./network";
import { itemAt } from "../../reference/itemAt";

/** Airflow of one run in a part of the tree that only leaks: what enters at its own end, and all it carries. [m3/s] */
export interface IdleRun {
  readonly index: number;
  readonly leak: number;
  readonly airflow: number;
}

/**
 * The part of a tree above a junction in which no open hood asks for air: each leak is taken at the junction's suction,
 * the part's own losses neglected. A shut gate lets nothing in but its own leak, so what lies beyond it is still.
 *
 * @param network the tree
 * @param root the run that joins the junction
 * @param suction [Pa] P at the junction
 * @param density [kg/m3]
 * @returns every run of the part, those beyond a shut gate with no airflow
 * @source house definition, design pass
 */
export function idlePart(network: Network, root: number, suction: number, density: number): IdleRun[] {
  const visited: { index: number; still: boolean; parent: number }[] = [{ index: root, still: false, parent: -1 }];
  for (let next = 0; next < visited.length; next++) {
    const { index, still } = itemAt(visited, next);
    const beyond = still || itemAt(network.runs, index).gate === "shut";
    for (const other of itemAt(network.joining, index)) visited.push({ index: other, still: beyond, parent: next });
  }
  const leaks = visited.map(({ index, still }) =>
    still ? 0 : openingLeak(itemAt(network.runs, index).leakArea, suction, DISCHARGE_COEFFICIENT, density),
  );
  const airflows = [...leaks];
  for (let place = visited.length - 1; place > 0; place--)
    airflows[itemAt(visited, place).parent]! += itemAt(airflows, place);
  return visited.map(({ index }, place) => ({ index, leak: itemAt(leaks, place), airflow: itemAt(airflows, place) }));
}
