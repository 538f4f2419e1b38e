import { deviceAirFactor } from "../../devices/deviceLoss";
import { mitreInSlowAir } from "../../fittings/slowAir";
import { frictionFactor } from "../../friction/frictionFactor";
import { reynoldsOf } from "../../friction/reynoldsNumber";
import { DISCHARGE_COEFFICIENT } from "../../leaks/openingLeak";
import { sectionArea } from "../../section/section";
import type { Surroundings } from "../designPass";
import { lossesAtJunctions, type Meeting, meetingsOf } from "../junction/meeting";
import type { Network, Run } from "../network";

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

/** What a solver knows that has found the state. */
export interface Known {
  readonly meetings: readonly (Meeting | null)[];
  readonly pipes: { readonly root: Float64Array };
  readonly hoses: { readonly root: Float64Array };
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
 * @param known the network's junctions and about where each 1/sqrt(f) lies, where that is known already; it only saves time
 * @returns [-] the largest misfit as a share of the system's largest pressure or airflow, and the run that has it
 * @source house definition, the network
 */
export function residualOf(
  network: Network,
  state: State,
  stillAt: (index: number) => boolean,
  suctionAtFan: number,
  surroundings: Surroundings,
  known: Known | null = null,
): Residual {
  const { runs, order, joins, joining, last } = network;
  const { airflow, arriving, leak, suction } = state;
  const { density, hoseRoughness, plainEnd } = surroundings;
  const velocityAtFan = airflow[last]! / sectionArea(runs[last]!.diameter, null);
  // The static suction and the airflow at the fan; by size, since a state that is no answer may have either below nothing.
  const largestPressure = Math.abs(suctionAtFan) + 0.5 * density * velocityAtFan * velocityAtFan || 1;
  const largestAirflow = Math.abs(airflow[last]!) || 1;
  let [residual, worst] = [0, last];
  const atJunction = lossesAtJunctions(network, airflow, known?.meetings ?? meetingsOf(network, density));
  for (const index of order) {
    const run = runs[index]!;
    if (stillAt(index)) continue;
    const carried = airflow[index]!;
    const area = sectionArea(run.diameter, null);
    const loss =
      lossOf(run, area, Math.abs(carried), hoseRoughness, density, known?.pipes.root[index], known?.hoses.root[index]) *
      Math.sign(carried);
    const downstream = joins[index]! < 0 ? suctionAtFan : suction[joins[index]!]!;
    const along = suction[index]! + loss + atJunction[index]! - downstream;
    const isEnd = joining[index]!.length === 0 && run.gate !== "shut";
    const velocity = arriving[index]! / area;
    const entry = isEnd ? (run.hood ?? plainEnd) * 0.5 * density * velocity * Math.abs(velocity) - suction[index]! : 0;
    let joined = 0;
    if (run.gate !== "shut") for (const other of joining[index]!) joined += airflow[other]!;
    const adding = Math.abs(airflow[index]! - arriving[index]! - leak[index]!);
    const mass = Math.max(adding, isEnd ? 0 : Math.abs(arriving[index]! - joined));
    const leaking = leakMisfit(run, area, carried, leak[index]!, suction[index]!, density);
    const pressures = Math.max(Math.abs(along), Math.abs(entry), Math.abs(leaking));
    const misfit = Math.max(pressures / largestPressure, mass / largestAirflow);
    if (Number.isNaN(misfit)) return { residual: NaN, worst: index };
    if (misfit > residual) [residual, worst] = [misfit, index];
  }
  return { residual, worst };
}

/** What a run costs at an airflow: pipe and hose by Colebrook-White, fittings, mitres in their air, the device. [Pa] */
function lossOf(
  run: Run,
  area: number,
  airflow: number,
  hoseRoughness: number,
  density: number,
  pipeNear: number | undefined,
  hoseNear: number | undefined,
): number {
  if (airflow === 0) return 0;
  const { diameter, device } = run;
  const velocity = airflow / area;
  const reynolds = reynoldsOf(velocity, diameter, density);
  let k = run.coefficient;
  if (run.length > 0) k += (run.length / diameter) * frictionFactor(reynolds, run.roughness / diameter, pipeNear);
  if (run.hoseLength > 0) {
    const wall = run.hoseRoughness ?? hoseRoughness;
    k += ((run.hoseLength * run.hoseTimes) / diameter) * frictionFactor(reynolds, wall / diameter, hoseNear);
  }
  if (run.mitreCoefficient > 0) k += run.mitreCoefficient * (mitreInSlowAir(reynolds).times - 1);
  const along = k * 0.5 * density * velocity * velocity;
  if (device === null) return along;
  const { ratedLoss, ratedAirflow, exponent } = device;
  return along + deviceAirFactor(density, exponent) * ratedLoss * (airflow / ratedAirflow) ** exponent;
}

/** A leak's law as a pressure: rho/2 (L / (C_d A_l))^2 against the static suction P + p_v(Q) that drives it. [Pa] */
function leakMisfit(run: Run, area: number, airflow: number, leak: number, suction: number, density: number): number {
  if (run.leakArea === 0) return leak === 0 ? 0 : Infinity;
  const through = leak / (DISCHARGE_COEFFICIENT * run.leakArea);
  const velocity = airflow / area;
  return 0.5 * density * (through * Math.abs(through) - velocity * velocity) - suction;
}
