import { velocityPressure } from "../../air/velocityPressure";
import { sectionArea } from "../../section/section";
import type { System } from "../derivative/changed";
import type { Answer } from "../derivative/gradient";
import type { Input } from "../derivative/inputs";
import { dischargeLoss } from "../dischargeLoss";
import { runLoss } from "../runLoss";
import type { Solution } from "../solve/solveNetwork";

/** Where and what somebody can read while some gates are open. */
export interface Spot {
  readonly set: number; // which set of open gates
  readonly run: number; // -1: at the fan's inlet
  readonly what: "airflow" | "velocity" | "suction" | "drop";
}

/** What somebody read there. */
export interface Reading extends Spot {
  readonly value: number; // SI, above 0
  readonly deviation: number; // [-] standard deviation of its logarithm, the meter's lasting error apart
  readonly meter: number; // whose lasting error it shares; -1: nobody's
}

/**
 * What the model says of a spot.
 *
 *     airflow   in the duct, the run's own leak included
 *     velocity  the same over the duct's area
 *     suction   static, at the run's upstream end; of the fan: at its inlet, in the last run's duct
 *     drop      across the separator or filter in the run
 *
 * @param system a network on its fan
 * @param solution what flows in it
 * @param spot a run or the fan
 * @returns [m3/s, m/s or Pa]; 0 where no air moves
 * @source house definition
 */
export function said({ network, surroundings }: System, solution: Solution, { run, what }: Spot): number {
  const { last, discharge } = network;
  const { density } = surroundings;
  const own = network.runs[run < 0 ? last : run]!;
  const airflow = run < 0 || own.side === "discharge" ? solution.fanAirflow : solution.airflow[run]!;
  const velocity = airflow / sectionArea(own.diameter, null);
  if (what === "airflow") return airflow;
  if (what === "velocity") return velocity;
  if (what === "drop") return runLoss({ ...own, length: 0, hoseLength: 0 }, airflow, 0, density).device;
  const after = (index: number): number => {
    const { friction, fittings, device } = dischargeLoss(network, index, solution.fanAirflow, surroundings);
    return friction + fittings + device;
  };
  const deficit =
    run >= 0 ? solution.suction[run]! : solution.fanPressure - discharge.reduce((sum, index) => sum + after(index), 0);
  return deficit + velocityPressure(velocity, density);
}

/**
 * The same made straight at its state.
 *
 * @param system the network
 * @param solution its state
 * @param spot a run or the fan
 * @returns how it goes with what flows there
 * @source house definition, the derivative of `said`
 */
export function answerOf(system: System, solution: Solution, spot: Spot): Answer {
  const { network, surroundings } = system;
  const own = network.runs[spot.run < 0 ? network.last : spot.run]!;
  const run = own.side === "discharge" ? -1 : spot.run;
  const airflow = run < 0 ? solution.fanAirflow : solution.airflow[run]!;
  const area = sectionArea(own.diameter, null);
  switch (spot.what) {
    case "airflow":
      return { run, airflow: 1, suction: 0 };
    case "velocity":
      return { run, airflow: 1 / area, suction: 0 };
    case "drop":
      return { run, airflow: (said(system, solution, spot) * own.device!.exponent) / airflow, suction: 0 };
    case "suction": // p_v = density / 2 v^2, so it changes by density v dv
      return { run, airflow: (surroundings.density * airflow) / area ** 2, suction: run === spot.run ? 1 : 0 };
  }
}

/**
 * What an input does to it though nothing flows otherwise.
 *
 * @returns [-] by the logarithms of both
 * @source house
 */
export const ownChange = ({ run, what }: Spot, input: Input): number =>
  what === "drop" && input.kind === "device" && input.run === run ? 1 : 0;
