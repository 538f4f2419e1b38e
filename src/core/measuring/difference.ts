import { LEAST_PERCENT } from "../../reference/leastPercent";
import { DomainError, type Limits, requireWithin } from "../errors";
import { readingsNeeded, scatterLimit, type Sides, studentT } from "./chance";

/** What the change was meant to be. */
export type Meant = "either" | "less" | "more";

/** How far one reading strays from the next, as a standard deviation: the root of the sum of the squares of both. */
export interface Repeatability {
  readonly percent: number; // [%] of the reading
  readonly floor: number; // in the unit of the readings, whatever they are
}

export const REPEAT_PERCENT: Limits = { atLeast: LEAST_PERCENT, atMost: 100 }; // or 0

/** Readings that differ by less than this share of themselves are the same number, rounded. */
export const SAME_READING = 1e-12;

/** What the readings say; the four last give no verdict. */
export type DifferenceSays =
  "more" | "less" | "too small" | "no change" | "other way" | "single" | "alike" | "scattered";

export interface Difference {
  readonly before: number; // means
  readonly after: number;
  readonly change: number;
  readonly limit: number | null; // what chance alone makes of no change once in 20 times; null where nothing tells it
  readonly needed: number | null; // readings on each side that would show such a change, where these are too few
  readonly says: DifferenceSays;
}

/**
 * Whether a change between two sets of readings is more than chance: Student's t test of two means with one standard deviation.
 *
 *     |m2 - m1| > t(v) s sqrt(1/n1 + 1/n2),  s^2 = (S1 + S2 + k^2 S3) / v,  v = n1 + n2 - 2 + n3 - 1
 *
 * S the sums of squares of the deviations from the own mean, S3 and n3 of further readings at one spot, k >= 1 how much larger than
 * theirs the larger mean is: readings stray more as they grow, and are not taken to stray less as they fall. A known
 * repeatability stands in place of s, with the normal deviate in place of t. What a meter's lasting error and a wrong area do to
 * both sides alike drops out, so an instrument's data sheet has no part in this.
 *
 * For readings of one meter at one spot, taken anew each time, with the same gates open. Not for two meters or two places, and not
 * for one reading that is written down twice.
 *
 * @param before readings, at least one
 * @param after readings, at least one, in the same unit
 * @param known repeatability of one reading, where it is known; null otherwise
 * @param repeats two or more further readings of one thing at one spot; empty for none
 * @param meant "either" tests both ways, "less" or "more" one
 * @returns the change and what it is worth; a verdict only where the scatter is known or shown
 * @throws DomainError if readings are missing, or percent or floor are out of their range
 * @source nistHandbook two-sample t test for equal means
 */
export function difference(
  before: readonly number[],
  after: readonly number[],
  known: Repeatability | null,
  repeats: readonly number[],
  meant: Meant,
): Difference {
  if (before.length === 0) throw new DomainError("before", null, "at least one reading");
  if (after.length === 0) throw new DomainError("after", null, "at least one reading");
  const [one, other] = [seriesOf(before), seriesOf(after)];
  const means = { before: one.mean, after: other.mean, change: other.mean - one.mean };
  const sides: Sides = meant === "either" ? 2 : 1;
  const scatter = known === null ? shownScatter(one, other, repeats) : knownScatter(one, other, known);
  if (typeof scatter === "string") return { ...means, limit: null, needed: null, says: scatter };
  const limit = studentT(scatter.degrees, sides) * scatter.ofDifference;
  const isRounding = Math.abs(means.change) <= SAME_READING * Math.max(Math.abs(one.mean), Math.abs(other.mean));
  const says = isRounding ? "no change" : verdict(means.change, limit, meant);
  const needed = says === "too small" ? readingsNeeded(Math.abs(means.change) / scatter.ofOne, sides) : null;
  return { ...means, limit, needed, says };
}

interface Series {
  readonly count: number;
  readonly mean: number;
  readonly squares: number; // of the deviations from the mean
}

function seriesOf(readings: readonly number[]): Series {
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  return { count: readings.length, mean, squares };
}

interface Scatter {
  readonly degrees: number;
  readonly ofOne: number; // standard deviation of one reading
  readonly ofDifference: number; // and of the difference of the two means
}

/** Scatter as the readings themselves show it. */
function shownScatter(one: Series, other: Series, repeats: readonly number[]): Scatter | "single" | "alike" {
  if (repeats.length === 1) throw new DomainError("repeats", "one reading", "at least two readings");
  const further = repeats.length === 0 ? { count: 1, mean: 1, squares: 0 } : seriesOf(repeats);
  if (further.mean === 0) throw new DomainError("repeats", 0, "readings whose mean is not 0");
  const degrees = one.count + other.count - 2 + further.count - 1;
  if (degrees === 0) return "single";
  const largest = Math.max(Math.abs(one.mean), Math.abs(other.mean));
  const growth = Math.max(1, largest / Math.abs(further.mean));
  const ofOne = Math.sqrt((one.squares + other.squares + growth ** 2 * further.squares) / degrees);
  if (ofOne <= SAME_READING * largest) return "alike";
  return { degrees, ofOne, ofDifference: ofOne * Math.sqrt(1 / one.count + 1 / other.count) };
}

/** Scatter as it is known beforehand, unless the readings contradict it. */
function knownScatter(one: Series, other: Series, { percent, floor }: Repeatability): Scatter | "alike" | "scattered" {
  if (percent !== 0) requireWithin("percent", percent, REPEAT_PERCENT, "%");
  requireWithin("floor", floor, { atLeast: 0 }, "");
  const varianceAt = ({ mean }: Series): number => ((percent / 100) * mean) ** 2 + floor ** 2;
  const [first, second] = [varianceAt(one), varianceAt(other)];
  const degrees = one.count + other.count - 2;
  if (degrees > 0) {
    const limit = scatterLimit(degrees);
    if (one.squares * second + other.squares * first > limit * first * second) return "scattered";
  }
  if (first + second === 0) return "alike";
  return {
    degrees: Infinity,
    ofOne: Math.sqrt((first + second) / 2),
    ofDifference: Math.sqrt(first / one.count + second / other.count),
  };
}

function verdict(change: number, limit: number, meant: Meant): DifferenceSays {
  const way = change > 0 ? "more" : "less";
  if (meant !== "either" && meant !== way) return "other way";
  return Math.abs(change) > limit ? way : "too small";
}
