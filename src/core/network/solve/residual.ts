import { DISCHARGE_COEFFICIENT } from "../../leaks/openingLeak";
import { sectionArea } from "../../section/section";
import type { Surroundings } from "../designPass";
import { lossesAtJunctions } from "../junction/meeting";
import type { Network, Run } from "../network";
import { runLoss } from "../runLoss";
import { itemAt } from "../../../reference/itemAt";

/** The state that a solver claims. */
export interface State {
  readonly airflow: Float64Array; // [m3/s] per run, its own leak included
  readonly arriving: Float64Array; // [m3/s] without the own leak
  readonly leak: Float64Array; // [m3/s] at the upstream end
  readonly suction: Float64Array; // [Pa] at the upstream end
}

export interface Residual {
  readonly residual: number; // [-] largest misfit / largest pressure or airflow of the system
  readonly worst: number; // the run that has it
}

/**
 * By how much a state misses the equations of the network, each written out as it is defined and solved for nothing:
 * pressure along every run and through its junction, entry loss at every open end, every leak, and the airflow at every junction.
 *
 * @param network the tree
 * @param state what the solver claims
 * @param stillAt whether nothing can enter through a run, so that its airflow must be 0
 * @param suctionAtFan [Pa] what the fan holds at the last run's end
 * @param surroundings density, and what a run takes that names nothing else
 * @returns [-] the largest misfit as a share of the system's largest pressure or airflow, and the run that has it
 * @source house definition, the network
 */
export function residualOf(
  network: Network,
  state: State,
  stillAt: (index: number) => boolean,
  suctionAtFan: number,
  surroundings: Surroundings,
): Residual {
  const { runs, order, joins, joining, last } = network;
  const { airflow, arriving, leak, suction } = state;
  const { density, hoseRoughness, plainEnd } = surroundings;
  const velocityAtFan = itemAt(airflow, last) / sectionArea(itemAt(runs, last).diameter, null);
  // The static suction and the airflow at the fan; by size, since a state that is no answer may have either below nothing.
  const largestPressure = Math.abs(suctionAtFan) + 0.5 * density * velocityAtFan * velocityAtFan || 1;
  const largestAirflow = Math.abs(itemAt(airflow, last)) || 1;
  let [residual, worst] = [0, last];
  const atJunction = lossesAtJunctions(network, airflow, density);
  for (const index of order) {
    const run = itemAt(runs, index);
    if (stillAt(index)) continue;
    const losses = runLoss(run, Math.abs(itemAt(airflow, index)), hoseRoughness, density);
    const loss = (losses.friction + losses.fittings + losses.device) * Math.sign(itemAt(airflow, index));
    const downstream = itemAt(joins, index) < 0 ? suctionAtFan : itemAt(suction, itemAt(joins, index));
    const along = itemAt(suction, index) + loss + itemAt(atJunction, index) - downstream;
    const isEnd = itemAt(joining, index).length === 0 && run.gate !== "shut";
    const velocity = itemAt(arriving, index) / sectionArea(run.diameter, null);
    const entry = isEnd
      ? (run.hood ?? plainEnd) * 0.5 * density * velocity * Math.abs(velocity) - itemAt(suction, index)
      : 0;
    const joined =
      run.gate === "shut" ? 0 : itemAt(joining, index).reduce((sum, other) => sum + itemAt(airflow, other), 0);
    const adding = Math.abs(itemAt(airflow, index) - itemAt(arriving, index) - itemAt(leak, index));
    const mass = Math.max(adding, isEnd ? 0 : Math.abs(itemAt(arriving, index) - joined));
    const leaking = leakMisfit(run, itemAt(airflow, index), itemAt(leak, index), itemAt(suction, index), density);
    const pressures = Math.max(Math.abs(along), Math.abs(entry), Math.abs(leaking));
    const misfit = Math.max(pressures / largestPressure, mass / largestAirflow);
    if (Number.isNaN(misfit)) return { residual: NaN, worst: index };
    if (misfit > residual) [residual, worst] = [misfit, index];
  }
  return { residual, worst };
}

/** A leak's law as a pressure: rho/2 (L / (C_d A_l))^2 against the static suction P + p_v(Q) that drives it. [Pa] */
function leakMisfit(run: Run, airflow: number, leak: number, suction: number, density: number): number {
  if (run.leakArea === 0) return leak === 0 ? 0 : Infinity;
  const through = leak / (DISCHARGE_COEFFICIENT * run.leakArea);
  const velocity = airflow / sectionArea(run.diameter, null);
  return 0.5 * density * (through * Math.abs(through) - velocity * velocity) - suction;
}
