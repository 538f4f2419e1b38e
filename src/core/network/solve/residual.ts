import { deviceAirFactor } from "../../devices/deviceLoss";
import { mitreInSlowAir } from "../../fittings/slowAir";
import { TURBULENT_START } from "../../friction/flowRegime";
import { frictionFactor, ROUGHEST, TO_DECIMAL } from "../../friction/frictionFactor";
import { reynoldsOf } from "../../friction/reynoldsNumber";
import { DISCHARGE_COEFFICIENT } from "../../leaks/openingLeak";
import type { Surroundings } from "../designPass";
import { lossesAtJunctions, type Meeting } from "../junction/meeting";
import type { Network, Run } from "../network";
import { HOSE, PIPE, ROOT } from "./rows";

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
  readonly rows: Float64Array;
  readonly starts: Int32Array; // by run: where its row begins
  readonly losses: Float64Array; // by run; worked in
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
 * @param known the network's junctions, and about where each 1/sqrt(f) lies, which only saves time
 * @returns [-] the largest misfit as a share of the system's largest pressure or airflow, and the run that has it
 * @source house definition, the network
 */
export function residualOf(
  network: Network,
  state: State,
  stillAt: (index: number) => boolean,
  suctionAtFan: number,
  surroundings: Surroundings,
  known: Known,
): Residual {
  const { runs, joins, joining, last } = network;
  const { airflow, arriving, leak, suction } = state;
  const { density, plainEnd } = surroundings;
  const velocityAtFan = airflow[last]! / areaOf(runs[last]!);
  // The static suction and the airflow at the fan; by size, since a state that is no answer may have either below nothing.
  const largestPressure = Math.abs(suctionAtFan) + 0.5 * density * velocityAtFan * velocityAtFan || 1;
  const largestAirflow = Math.abs(airflow[last]!) || 1;
  let residual = 0;
  let worst = last;
  // By run: what it takes from the suction along it, then its loss alone.
  const along = lossesAtJunctions(network, airflow, known.meetings, known.losses);
  for (let index = 0; index < runs.length; index++) {
    const run = runs[index]!;
    if (run.side === "discharge" || stillAt(index)) continue;
    addLoss(along, index, run, airflow, surroundings, known);
    const area = areaOf(run);
    const drawn = (joins[index]! < 0 ? suctionAtFan : suction[joins[index]!]!) - suction[index]!;
    const missed = along[index]! - drawn;
    const before = joining[index]!;
    const isOpen = run.gate !== "shut";
    const isEnd = before.length === 0 && isOpen;
    const velocity = arriving[index]! / area;
    const entry = isEnd ? (run.hood ?? plainEnd) * 0.5 * density * velocity * Math.abs(velocity) - suction[index]! : 0;
    let joined = 0;
    if (isOpen) for (let one = 0; one < before.length; one++) joined += airflow[before[one]!]!;
    const adding = Math.abs(airflow[index]! - arriving[index]! - leak[index]!);
    const mass = Math.max(adding, isEnd ? 0 : Math.abs(arriving[index]! - joined));
    const leaking = leakMisfit(run, index, state, density);
    const pressures = Math.max(Math.abs(missed), Math.abs(entry), Math.abs(leaking));
    const misfit = Math.max(pressures / largestPressure, mass / largestAirflow);
    if (Number.isNaN(misfit)) return { residual: NaN, worst: index };
    if (misfit <= residual) continue;
    residual = misfit;
    worst = index;
  }
  return { residual, worst };
}

const areaOf = ({ diameter }: Run): number => (Math.PI / 4) * diameter * diameter; // [m2]

/** What a run costs at an airflow, with its sign: pipe and hose by Colebrook-White, fittings, mitres in their air, the device. [Pa] */
function addLoss(
  losses: Float64Array,
  index: number,
  run: Run,
  airflows: Float64Array,
  { density, hoseRoughness }: Surroundings,
  { rows, starts }: Known,
): void {
  const carried = airflows[index]!;
  if (carried === 0) return;
  const { diameter, length, hoseLength, mitreCoefficient, device } = run;
  const airflow = Math.abs(carried);
  const velocity = airflow / areaOf(run);
  const reynolds = reynoldsOf(velocity, diameter, density);
  const at = starts[index]!;
  let coefficient = run.coefficient;
  if (length > 0)
    coefficient += (length / diameter) * factorNear(rows[at + PIPE + ROOT]!, reynolds, run.roughness / diameter);
  if (hoseLength > 0) {
    const roughness = (run.hoseRoughness ?? hoseRoughness) / diameter;
    coefficient += ((hoseLength * run.hoseTimes) / diameter) * factorNear(rows[at + HOSE + ROOT]!, reynolds, roughness);
  }
  if (mitreCoefficient > 0) coefficient += mitreCoefficient * (mitreInSlowAir(reynolds).times - 1);
  let loss = coefficient * (0.5 * density * velocity * velocity);
  if (device !== null)
    loss +=
      deviceAirFactor(density, device.exponent) * device.ratedLoss * (airflow / device.ratedAirflow) ** device.exponent;
  losses[index]! += carried < 0 ? -loss : loss;
}

const CLOSE = 1e-6; // of a number near 7: a step of Newton's leaves an error of its square

/** The friction factor: from a root that all but meets Colebrook-White by one step, else found from there. */
function factorNear(near: number, reynolds: number, relativeRoughness: number): number {
  if (reynolds >= TURBULENT_START && relativeRoughness <= ROUGHEST) {
    const b = 2.51 / reynolds;
    const inside = relativeRoughness / 3.7 + b * near;
    const missed = near + TO_DECIMAL * Math.log(inside);
    const root = near - missed * (inside / (inside + TO_DECIMAL * b));
    if (Math.abs(missed) < CLOSE) return 1 / (root * root);
  }
  return frictionFactor(reynolds, relativeRoughness, near);
}

/** A leak's law as a pressure: rho/2 (L / (C_d A_l))^2 against the static suction P + p_v(Q) that drives it. [Pa] */
function leakMisfit(run: Run, index: number, { airflow, leak, suction }: State, density: number): number {
  if (run.leakArea === 0) return leak[index] === 0 ? 0 : Infinity;
  const through = leak[index]! / (DISCHARGE_COEFFICIENT * run.leakArea);
  const velocity = airflow[index]! / areaOf(run);
  return 0.5 * density * (through * Math.abs(through) - velocity * velocity) - suction[index]!;
}
