import type { FanCurve } from "../../fan/fanCurve";
import type { Surroundings } from "../designPass";
import type { Network, Run } from "../network";

/** A diameter that a run may take. */
export interface SizeChoice {
  readonly diameter: number; // [m]
  readonly cost: number; // of the whole run, in whatever it is paid
}

/** A set of open gates, with each run as it is in each of its sizes. */
export interface SizedScenario {
  readonly network: Network;
  readonly runs: readonly (readonly Run[])[]; // by run and choice
}

/** What one run must do in one scenario. */
export interface SizeNeed {
  readonly scenario: number;
  readonly run: number;
  readonly kind: "airflow" | "velocity" | "not faster"; // that enters at a hood; that keeps dust moving; that is not passed
  readonly wanted: number; // [m3/s] or [m/s]
}

/** The diameters that runs may take, and what each choice must do. Everything is SI. */
export interface SizeTask {
  readonly scenarios: readonly SizedScenario[]; // of the same runs
  readonly curve: FanCurve;
  readonly surroundings: Surroundings;
  readonly choices: readonly (readonly SizeChoice[])[]; // by run, the narrowest first; a single one where it stays
  readonly keeps: readonly boolean[]; // runs whose diameter stays, which no rule of width holds
  readonly needs: readonly SizeNeed[];
}

/**
 * How well a need is met by what the run has, in the same unit.
 *
 * @returns the share of what is wanted; of a velocity that is not to be passed, what may be by what is
 * @source house
 */
export const shareOf = ({ kind, wanted }: SizeNeed, value: number): number =>
  kind !== "not faster" ? value / wanted : value > 0 ? wanted / value : Infinity;

/** Which choice each run takes, by its place. */
export type Taken = readonly number[];

/**
 * Whether no run is narrower than one that joins it; runs that keep their diameter are let be.
 *
 * @returns true where the widths grow towards the fan
 * @source commonPractice
 */
export const growsToFan = ({ scenarios, choices, keeps }: SizeTask, taken: Taken): boolean =>
  scenarios[0]!.network.joins.every(
    (to, run) =>
      to < 0 || keeps[run]! || keeps[to]! || choices[run]![taken[run]!]!.diameter <= choices[to]![taken[to]!]!.diameter,
  );

/**
 * What all pipes together cost.
 *
 * @returns the sum, in whatever they are paid
 * @source house
 */
export const costOf = ({ choices }: SizeTask, taken: Taken): number =>
  choices.reduce((sum, ofRun, run) => sum + ofRun[taken[run]!]!.cost, 0);
