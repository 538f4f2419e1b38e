import { velocityPressure } from "../../air/velocityPressure";
import { sectionArea } from "../../section/section";
import type { System } from "../derivative/changed";
import type { Direction } from "../derivative/direction";
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
 * How that changes with the logarithm of an input's factor.
 *
 * @param system the network in whose state the direction was found
 * @param solution its state
 * @param spot a run or the fan
 * @param input what changes
 * @param direction what it does to all that flows
 * @returns [m3/s, m/s or Pa]
 * @source house definition, the derivative of `said`
 */
export function saidChange(system: System, solution: Solution, spot: Spot, input: Input, direction: Direction): number {
  const { network, surroundings } = system;
  const { run, what } = spot;
  const own = network.runs[run < 0 ? network.last : run]!;
  const byFan = run < 0 || own.side === "discharge";
  const change = byFan ? direction.fanAirflow : direction.airflow[run]!;
  if (what === "airflow") return change;
  if (what === "velocity") return change / sectionArea(own.diameter, null);
  const airflow = byFan ? solution.fanAirflow : solution.airflow[run]!;
  if (what === "drop") {
    const itself = input.kind === "device" && input.run === run ? 1 : 0;
    return said(system, solution, spot) * (itself + (own.device!.exponent * change) / airflow);
  }
  if (run >= 0) return direction.staticSuction[run]!;
  return direction.inletSuction + velocityPressureChange(airflow, change, own.diameter, surroundings.density);
}

/** p_v = density / 2 v^2, so it changes by density v dv. */
const velocityPressureChange = (airflow: number, change: number, diameter: number, density: number): number =>
  (density * airflow * change) / sectionArea(diameter, null) ** 2;
