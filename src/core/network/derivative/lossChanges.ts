import type { Surroundings } from "../designPass";
import { dischargeLoss } from "../dischargeLoss";
import type { Network, Run } from "../network";
import { runLoss, type RunLoss } from "../runLoss";
import { addSettledFriction, setFittings } from "../solve/losses";
import { AIRFLOW, DEVICE, EXPONENT, HOSE, LOSS, PIPE, SLOPE } from "../solve/rows";

/** A step so small that the square of it is below the last digits that a difference keeps. */
export const STEP = 1e-5;

/** The losses of one run at its airflow, and how they change with it and with what they come from. [Pa] */
export interface LossChanges {
  readonly byAirflow: number; // [Pa s/m3]
  readonly byPipe: number; // for a factor on all pipe, by the factor's logarithm; likewise the others
  readonly byHose: number;
  readonly byFittings: number;
  readonly byDevice: number;
  readonly byDiameter: number; // this and the next are worked out when they are asked for, which not every caller does
  readonly byDensity: number;
}

/**
 * How the loss of a suction run changes: its law's own derivative, and central differences of the law by diameter and density.
 *
 * @param rows of the network's elements, in which this is worked out
 * @param at where the run's row begins
 * @param run itself
 * @param airflow [m3/s] below 0 where the air runs backwards and the loss is against it; not 0
 * @param surroundings density and hose
 * @returns [Pa] by the logarithm of each factor, and [Pa s/m3] by airflow
 * @source house
 */
export function suctionLoss(
  rows: Float64Array,
  at: number,
  run: Run,
  airflow: number,
  { density, hoseRoughness }: Surroundings,
): LossChanges {
  const [flow, sign] = [Math.abs(airflow), Math.sign(airflow)];
  rows[at + AIRFLOW] = flow;
  setFittings(rows, at);
  const byFittings = rows[at + LOSS]!;
  const [byPipe, byHose] = [addSettledFriction(rows, at, PIPE), addSettledFriction(rows, at, HOSE)];
  const exponent = rows[at + EXPONENT]!;
  const byDevice = rows[at + DEVICE]! * flow ** exponent;
  return {
    byAirflow: rows[at + SLOPE]! + (exponent * byDevice) / flow,
    byPipe: sign * byPipe,
    byHose: sign * byHose,
    byFittings: sign * byFittings,
    byDevice: sign * byDevice,
    get byDiameter() {
      return sign * byFactor((factor) => totalOf(runLoss({ ...run, diameter: run.diameter * factor }, flow, hoseRoughness, density))); // prettier-ignore
    },
    get byDensity() {
      return sign * byFactor((factor) => totalOf(runLoss(run, flow, hoseRoughness, density * factor)));
    },
  };
}

/**
 * The same of a run after the fan. The exit is held against the fan's outlet, so a wider outlet changes what the exit costs.
 *
 * @param network with the run
 * @param index of the run
 * @param airflow [m3/s] above 0, the fan's
 * @param surroundings density and hose
 * @returns [Pa] as suctionLoss; by diameter all that the runs after the fan lose together
 * @source house
 */
export function afterFanLoss(
  network: Network,
  index: number,
  airflow: number,
  surroundings: Surroundings,
): LossChanges {
  const run = network.runs[index]!;
  const withRun = (one: Run): Network => ({
    ...network,
    runs: network.runs.map((other, place) => (place === index ? one : other)),
  });
  const total = (one: Run, flow = airflow, air = surroundings): number => totalOf(dischargeLoss(withRun(one), index, flow, air)); // prettier-ignore
  const all = dischargeLoss(network, index, airflow, surroundings);
  const bare = dischargeLoss(
    withRun({ ...run, hoseLength: 0, coefficient: 0, mitreCoefficient: 0, exitCoefficient: 0 }),
    ...([index, airflow, surroundings] as const),
  );
  return {
    byAirflow: byFactor((factor) => total(run, airflow * factor)) / airflow,
    byPipe: bare.friction,
    byHose: all.friction - bare.friction,
    byFittings: all.fittings - bare.fittings,
    byDevice: all.device,
    get byDiameter() {
      return byFactor((factor) => {
        const other = withRun({ ...run, diameter: run.diameter * factor });
        return network.discharge.reduce((sum, at) => sum + totalOf(dischargeLoss(other, at, airflow, surroundings)), 0);
      });
    },
    get byDensity() {
      return byFactor((factor) => total(run, airflow, { ...surroundings, density: surroundings.density * factor }));
    },
  };
}

const totalOf = ({ friction, fittings, device }: RunLoss): number => friction + fittings + device;

const byFactor = (of: (factor: number) => number): number => (of(Math.exp(STEP)) - of(Math.exp(-STEP))) / (2 * STEP);
