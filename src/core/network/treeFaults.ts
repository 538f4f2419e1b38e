import { DomainError } from "../errors";
import { type Named, unknownName } from "../naming/findNamed";
import type { Run } from "./network";
import { FAN } from "./openAir";

/**
 * A run that has the fan's name.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const isCalledFan = (label: string, name: string): DomainError =>
  new DomainError(`Run of ${label}`, name, `another word: "fan" is where the last run ends`);

/**
 * A name that a run before it has, too.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const hasNameOf = (label: string, name: string, before: string): DomainError =>
  new DomainError(`Run of ${label}`, name, `a name of its own: ${before} has it too`);

/**
 * A run that goes to none that is there; with the nearest names.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const leadsNowhere = ({ label, to }: Run, others: readonly Named[]): DomainError =>
  unknownName(`To of ${label}`, [...others, { key: FAN }], to, `the name of another run, or "fan" for the last one`);

/**
 * A run before the fan that goes to one after it.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const joinsAfterFan = ({ label, to }: Run): DomainError =>
  new DomainError(`To of ${label}`, to, `a suction run or "fan": that run is on the discharge side`);

/**
 * A run after the fan that goes neither into the open air nor to another such run.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const blowsNowhere = ({ label, to }: Run): DomainError =>
  new DomainError(`To of ${label}`, to, `blank, "outside" or another discharge run`);

/**
 * A table in which no run goes to the fan.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const noneAtFan = (): DomainError => new DomainError("To", null, `"fan" in one row: no run ends at the fan`);

/**
 * A second run that goes to the fan.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const bothAtFan = (first: string, second: string): DomainError =>
  new DomainError("To", FAN, `"fan" in one row only: ${first} and ${second} both end there, so let one join the other`);

/**
 * A hood that another run joins.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const joinsHood = ({ label }: Run, joining: string): DomainError =>
  new DomainError(`Hood of ${label}`, joining, "left blank: a hood is an open end, and another run joins this one");

/**
 * A run of a loop.
 *
 * @returns the refusal, for whoever throws it or keeps it
 * @source house
 */
export const runsInCircle = ({ label, to }: Run): DomainError =>
  new DomainError(`To of ${label}`, to, "a way to the fan: these runs join each other in a loop");
