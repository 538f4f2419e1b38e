import { velocityPressure } from "../air/velocityPressure";
import { meanVelocity, sectionArea } from "../section/section";
import type { Network } from "./network";
import { runLoss, type RunLoss } from "./runLoss";
import { itemAt } from "../../reference/itemAt";

/**
 * What a run after the fan costs against fan *static* pressure.
 *
 *     FSP = FTP - p_v,outlet,  so the last run's loss counts p_v,exit - p_v,outlet beside its friction and fittings
 *
 * The air leaves the last run with its velocity pressure, whether an exit is named there or not. A fan's static pressure
 * has been measured without the velocity pressure at the fan's own outlet, so an exit as wide as that outlet costs nothing
 * beyond it, a narrower one the difference, and a wider one gives the difference back. The outlet is as wide as the first
 * run after the fan. An exit named on a run before the last (into a filter's box) is a loss like any other.
 *
 * @param network the tree with its discharge runs
 * @param index of a discharge run
 * @param airflow [m3/s] at least 0
 * @param surroundings density and hose
 * @returns [Pa] each part; the exit's share stands among the fittings
 * @throws DomainError if a part is outside its range
 * @source amca210 definition of fan static pressure
 */
export function dischargeLoss(
  network: Network,
  index: number,
  airflow: number,
  { density, hoseRoughness }: { readonly density: number; readonly hoseRoughness: number },
): RunLoss {
  const run = itemAt(network.runs, index);
  const losses = runLoss(run, airflow, hoseRoughness, density);
  if (index !== network.exit) return losses;
  const outlet = itemAt(network.runs, network.outlet);
  const atOutlet = velocityPressure(meanVelocity(airflow, sectionArea(outlet.diameter, null)), density);
  const leaving = losses.velocityPressure - atOutlet;
  return { ...losses, fittings: losses.fittings - run.exitCoefficient * losses.velocityPressure + leaving };
}
