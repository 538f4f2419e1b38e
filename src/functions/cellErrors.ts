import { DomainError, limitsInWords, type Limits, NoAnswerError, sentence } from "../core/errors";
import { OutsideCurveError } from "../core/fan/fanCurve";
import { fromSI, type Quantity, type Unit, type UnitSystem, unitOf } from "../reference/quantities";
import type { Cell } from "./cells";

/** What a failed call says, and as which error. */
export interface Failure {
  readonly kind: "invalidValue" | "notAvailable";
  readonly sentence: string;
}

/** How an argument that a sentence names was given: its quantity and the cell as typed. */
export interface Given {
  readonly quantity: Quantity | null;
  readonly cell: Cell;
}

/**
 * The core's refusal in the user's words: the sentence repeats what stood in the cell, in the unit it stood in.
 * Anything that is not a refusal is a bug and is passed on.
 */
export function failureOf(error: unknown, system: UnitSystem, given: (argument: string) => Given | undefined): Failure {
  if (error instanceof OutsideCurveError) return { kind: "notAvailable", sentence: beyondCurve(error, system) };
  if (error instanceof NoAnswerError) return { kind: "notAvailable", sentence: error.message };
  if (!(error instanceof DomainError)) throw error;
  const argument = given(error.argument);
  // A number inside a fitting's own text is refused under the name of an argument that was left out: keep what it says.
  const fromElsewhere = argument?.cell === null && error.value !== null && error.value !== undefined;
  if (argument === undefined || fromElsewhere) return { kind: "invalidValue", sentence: error.message };
  const { quantity, cell } = argument;
  const requirement =
    error.limits !== null && quantity !== null && typeof error.value === "number"
      ? limitsInUnit(error.limits, quantity, system, error.value)
      : error.requirement;
  return { kind: "invalidValue", sentence: sentence(error.argument, requirement, cell) };
}

function limitsInUnit(limits: Limits, quantity: Quantity, system: UnitSystem, value: number): string {
  const unit = unitOf(quantity, system);
  return limitsInWords(limitsIn(unit, limits), unit.label, fromSI(value, unit));
}

/** Limits in SI as limits in a unit. */
export const limitsIn = (unit: Unit, limits: Limits): Limits =>
  Object.fromEntries(Object.entries(limits).map(([side, bound]: [string, number]) => [side, fromSI(bound, unit)]));

/** A blank, an error or a wrong kind of cell, refused before the core sees it. */
export function refuseCell(argument: string, cell: Cell, requirement: string): never {
  throw new DomainError(argument, cell, requirement);
}

/** A cell of an answer: an item that is refused is the host's error, so that no sum passes over it. */
export type Answered = number | string | CustomFunctions.Error;

/** A failure as the host's error; only #VALUE! and #N/A keep their sentence. */
export function asError(failure: Failure): CustomFunctions.Error {
  const { Error: HostError, ErrorCode } = CustomFunctions;
  return new HostError(ErrorCode[failure.kind], failure.sentence);
}

/** Ends a call with a failure. */
export function raise(failure: Failure): never {
  throw asError(failure);
}

/** How far a fan curve reaches, and which way the answer lies. */
function beyondCurve({ from, to, airflow }: OutsideCurveError, system: UnitSystem): string {
  const unit = unitOf("airflow", system);
  const [low, high, asked] = [from, to, airflow].map(
    (value) => `${Number(fromSI(value, unit).toPrecision(6))} ${unit.label}`,
  );
  if (airflow === Infinity) return `the fan curve ends at ${high}, and this system would take more air`;
  if (airflow === 0) return `the fan curve starts at ${low}, and this system would take less air`;
  return `the fan curve reaches from ${low} to ${high}; asked for ${asked}`;
}

export const NOT_FINITE: Failure = { kind: "notAvailable", sentence: "no finite result for these inputs" };
