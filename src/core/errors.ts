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

/**
 * What an argument must be, and what came.
 *
 * @returns one clause without a full stop
 * @source house
 */
export const sentence = (argument: string, requirement: string, got: unknown): string =>
  `${argument} must be ${requirement}; got ${shown(got)}`;

const LONGEST_SHOWN = 40; // characters of a user's text that a sentence repeats

/**
 * A received value as a sentence shows it: never long, never markup, never "[object Object]".
 *
 * @returns the value in words, at most 40 characters of a text
 * @source house
 */
export function shown(value: unknown): string {
  if (typeof value === "number")
    return Number.isFinite(value) ? String(Number(value.toPrecision(7))) : "a number that is not finite";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value == null || value === "") return "a blank cell";
  if (typeof value === "object" && "inWords" in value) return String(value.inWords);
  if (typeof value !== "string") return "something that is neither number nor text";
  const text = value.trim();
  return `"${text.length > LONGEST_SHOWN ? text.slice(0, LONGEST_SHOWN) + "…" : text}"`;
}

/**
 * `above 0 in`, `from 0 to 1`, `at most 20 m`: the limits in words; of an open-ended pair only the side that the value breaks.
 *
 * @returns the words that follow "must be"
 * @source house
 */
export function limitsInWords(limits: Limits, unit: string, value: number): string {
  const { above, atLeast, below, atMost } = limits;
  const in_ = (words: string): string => (unit === "" ? words : `${words} ${unit}`);
  if (atLeast !== undefined && atMost !== undefined) return in_(`from ${rounded(atLeast)} to ${rounded(atMost)}`);
  const low =
    above !== undefined ? `above ${rounded(above)}` : atLeast !== undefined ? `at least ${rounded(atLeast)}` : null;
  const high =
    below !== undefined ? `below ${rounded(below)}` : atMost !== undefined ? `at most ${rounded(atMost)}` : null;
  if (low === null || high === null) return in_(low ?? high ?? "a number");
  const tooHigh = value > (below ?? atMost ?? Infinity) || value === below;
  return in_(Number.isFinite(value) ? (tooHigh ? high : low) : `${low} and ${high}`);
}

/** Throws unless the value is a finite number within the limits. Written so that NaN fails. */
export function requireWithin(argument: string, value: number, limits: Limits, unit: string): void {
  if (!isWithin(value, limits)) throw new DomainError(argument, value, limitsInWords(limits, unit, value), limits);
}

/**
 * Whether a number is one and within limits.
 *
 * @param value the number
 * @param limits in its unit
 * @returns false for what is not finite
 * @source house
 */
export const isWithin = (value: number, { above, atLeast, below, atMost }: Limits): boolean =>
  Number.isFinite(value) &&
  (above === undefined || value > above) &&
  (atLeast === undefined || value >= atLeast) &&
  (below === undefined || value < below) &&
  (atMost === undefined || value <= atMost);

const rounded = (bound: number): string => String(Number(bound.toPrecision(7)));
