/** Limits of an argument, in the same unit as its value. */
export interface Limits {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
}

/**
 * The one class the core throws. `limits` lets the cells repeat the sentence in the user's own unit;
 * `requirement` alone stands where the demand is not a range.
 */
export class DomainError extends Error {
  constructor(
    readonly argument: string,
    readonly value: unknown,
    readonly requirement: string,
    readonly limits: Limits | null = null,
  ) {
    super(sentence(argument, requirement, value));
    this.name = "DomainError";
  }
}

/** No answer exists or none was found for arguments that are each in order (curve left, not converged, not finite). */
export class NoAnswerError extends Error {
  constructor(message: string) {
    super(message);
    this.name = "NoAnswerError";
  }
}

export const sentence = (argument: string, requirement: string, got: unknown): string =>
  `${argument} must be ${requirement}; got ${shown(got)}`;

const LONGEST_SHOWN = 40; // characters of a user's text that a sentence repeats

/** A received value as a sentence shows it: never long, never markup, never "[object Object]". */
export function shown(value: unknown): string {
  if (typeof value === "number") return Number.isFinite(value) ? String(Number(value.toPrecision(7))) : "a number that is not finite";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value == null || value === "") return "a blank cell";
  if (typeof value !== "string") return "something that is neither number nor text";
  const text = value.trim();
  return `"${text.length > LONGEST_SHOWN ? text.slice(0, LONGEST_SHOWN) + "…" : text}"`;
}

/** `above 0 in`, `from 0 to 1`, `at least 0 ft`: the limits in words. */
export function limitsInWords(limits: Limits, unit: string): string {
  const of = (bound: number): string => String(Number(bound.toPrecision(7)));
  const tail = unit === "" ? "" : ` ${unit}`;
  const { above, atLeast, below, atMost } = limits;
  if (atLeast !== undefined && atMost !== undefined) return `from ${of(atLeast)} to ${of(atMost)}${tail}`;
  const parts: string[] = [];
  if (above !== undefined) parts.push(`above ${of(above)}`);
  if (atLeast !== undefined) parts.push(`at least ${of(atLeast)}`);
  if (below !== undefined) parts.push(`below ${of(below)}`);
  if (atMost !== undefined) parts.push(`at most ${of(atMost)}`);
  return parts.join(" and ") + tail;
}

/** Throws unless the value is a finite number within the limits. Written so that NaN fails. */
export function requireWithin(argument: string, value: number, limits: Limits, unit: string): void {
  const { above, atLeast, below, atMost } = limits;
  const within =
    Number.isFinite(value) &&
    (above === undefined || value > above) &&
    (atLeast === undefined || value >= atLeast) &&
    (below === undefined || value < below) &&
    (atMost === undefined || value <= atMost);
  if (!within) throw new DomainError(argument, value, limitsInWords(limits, unit), limits);
}
