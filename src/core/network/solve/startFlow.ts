import { sectionArea } from "../../section/section";
import type { Network } from "../network";
import { type Elements, JUNCTION, LEAK_ONLY, OPEN_END, runHead, STILL } from "./elements";
import { type Flow, newFlow } from "./sweep";

const SMALLEST_START = 1e-6; // [Pa] a suction from which Newton's method can grow

/**
 * A first state: the airflow shared over the open ends by their area, lone leaks at the suction given, suctions added up.
 *
 * @param airflow [m3/s] to be shared, above 0
 * @param suction [Pa] above 0
 */
export function startFlow(network: Network, elements: Elements, airflow: number, suction: number): Flow {
  const { runs, order, joining } = network;
  const flow = newFlow(runs.length);
  const openArea = order.reduce(
    (sum, index) => sum + (elements.kind[index] === OPEN_END ? sectionArea(runs[index]!.diameter, null) : 0),
    0,
  );
  const drive = Math.max(suction, SMALLEST_START);
  for (const index of order) {
    const kind = elements.kind[index]!;
    if (kind === STILL) continue;
    const resistance = elements.endResistance[index]!;
    if (kind === LEAK_ONLY) {
      flow.airflow[index] = Math.sqrt(drive / resistance);
      flow.suction[index] = drive;
    } else {
      let [arriving, deficit] = [(airflow * sectionArea(runs[index]!.diameter, null)) / (openArea || 1), 0];
      if (kind === JUNCTION) {
        const feeding = joining[index]!.filter((other) => elements.kind[other] !== STILL);
        arriving = feeding.reduce((sum, other) => sum + flow.airflow[other]!, 0);
        deficit = Math.max(...feeding.map((other) => flow.suction[other]! + flow.loss[other]!));
      } else deficit = resistance * arriving * arriving;
      const share = elements.leakShare[index]!;
      const root = Math.sqrt(arriving * arriving + elements.leakDrive[index]! * deficit);
      flow.arriving[index] = arriving;
      flow.airflow[index] = arriving + (share * share * arriving + share * root) / (1 - share * share);
      flow.suction[index] = Math.max(deficit, SMALLEST_START);
    }
    flow.loss[index] = runHead(elements, index, flow.airflow[index]!, flow.slope);
  }
  return flow;
}
