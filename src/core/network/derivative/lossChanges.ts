import type { Surroundings } from "../designPass";
import { dischargeLoss } from "../dischargeLoss";
import type { Network, Run } from "../network";
import { runLoss, type RunLoss } from "../runLoss";

/** A step so small that the square of it is below the last digits that a difference keeps. */
export const STEP = 1e-5;

/** The losses of one run at its airflow, and how they change with it and with what they come from. [Pa] */
export interface LossChanges {
  readonly byAirflow: number; // [Pa s/m3]
  readonly byPipe: number; // for a factor on all pipe, by the factor's logarithm; likewise the others
  readonly byHose: number;
  readonly byFittings: number;
  readonly byDevice: number;
  readonly byDiameter: number;
  readonly byDensity: number;
}

/**
 * How the loss of a suction run changes. What is a plain factor is exact; the rest are central differences of the run's own law.
 *
 * @param run the run
 * @param airflow [m3/s] above 0
 * @param surroundings density and hose
 * @returns [Pa] by the logarithm of each factor, and [Pa s/m3] by airflow
 * @source house
 */
export const suctionLoss = (run: Run, airflow: number, { density, hoseRoughness }: Surroundings): LossChanges =>
  changesOf(run, airflow, density, (one, flow, air) => runLoss(one, flow, hoseRoughness, air));

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
  const changes = changesOf(run, airflow, surroundings.density, (one, flow, density) =>
    dischargeLoss(withRun(one), index, flow, { ...surroundings, density }),
  );
  return Object.defineProperty(changes, "byDiameter", {
    get: () =>
      byFactor((factor) => {
        const other = withRun({ ...run, diameter: run.diameter * factor });
        return network.discharge.reduce((sum, at) => sum + totalOf(dischargeLoss(other, at, airflow, surroundings)), 0);
      }),
  });
}

const totalOf = ({ friction, fittings, device }: RunLoss): number => friction + fittings + device;

const byFactor = (of: (factor: number) => number): number => (of(Math.exp(STEP)) - of(Math.exp(-STEP))) / (2 * STEP);

function changesOf(
  run: Run,
  airflow: number,
  density: number,
  lossOf: (run: Run, airflow: number, density: number) => RunLoss,
): LossChanges {
  const total = (one: Run, flow = airflow, air = density): number => totalOf(lossOf(one, flow, air));
  const all = lossOf(run, airflow, density);
  const bare = lossOf({ ...run, hoseLength: 0, coefficient: 0, mitreCoefficient: 0, exitCoefficient: 0 }, airflow, density); // prettier-ignore
  return {
    byAirflow: byFactor((factor) => total(run, airflow * factor)) / airflow,
    byPipe: bare.friction,
    byHose: all.friction - bare.friction,
    byFittings: all.fittings - bare.fittings,
    byDevice: all.device,
    // Not every caller asks for these two, and each solves its friction twice.
    get byDiameter() {
      return byFactor((factor) => total({ ...run, diameter: run.diameter * factor }));
    },
    get byDensity() {
      return byFactor((factor) => total(run, airflow, density * factor));
    },
  };
}
