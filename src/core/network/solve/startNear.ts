import { type Elements, LEAK_ONLY, OPEN_END, STILL } from "./elements";
import { type Flow, newFlow } from "./sweep";

/**
 * A first state: what flows in a network of the same runs that is nearly this one. It only saves sweeps; the answer is the same.
 *
 * @param elements the runs as columns
 * @param places where each run stands in the columns of what flows there
 * @param near what flows in the other network
 * @param flow where it is written; a new one when left out
 * @returns the flow of every run, suctions not set yet; null where a run would begin at rest and does not stay so
 * @source house
 */
export function startNear(
  elements: Elements,
  places: readonly number[],
  near: Pick<Flow, "airflow" | "leak">,
  flow = newFlow(elements.kind.length),
): Flow | null {
  const { order, kind, leakShare } = elements;
  for (const index of order) {
    flow.airflow[index] = flow.arriving[index] = flow.leak[index] = 0;
    flow.leakBy.offset[index] = flow.leakBy.rate[index] = 0; // the sweeps set it only where there is a leak
    if (kind[index] === STILL) continue;
    const [airflow, leak] = [near.airflow[places[index]!]!, near.leak[places[index]!]!];
    if (leakShare[index]! > 0) flow.leak[index] = leak;
    if (kind[index] !== LEAK_ONLY) flow.arriving[index] = airflow - leak;
    flow.airflow[index] = flow.arriving[index] + flow.leak[index];
    const begins = flow.airflow[index] > 0 && (kind[index] !== OPEN_END || flow.arriving[index] > 0);
    if (!begins || (leakShare[index]! > 0 && !(leak > 0))) return null;
  }
  return flow;
}
