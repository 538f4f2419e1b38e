import { cholesky, solveTriangle, type Triangle } from "./cholesky";
import { dot } from "./dot";

/** Readings that go straight with what is unknown. */
export interface Linear {
  readonly priors: ArrayLike<number>; // standard deviation of each unknown before the readings; its mean is 0
  readonly spreads: ArrayLike<number>; // of each reading around the line, each for itself
  readonly slopes: readonly Float64Array[]; // of each reading by the unknowns
}

/**
 * How readings stray together before anything is fitted, decomposed.
 *
 *     J D J' + R = L L'
 *
 * @returns L
 * @source jcgm100 5.2
 */
export function spreadTriangle({ priors, spreads, slopes }: Linear): Triangle {
  return cholesky(
    slopes.map((row, index) => {
      const weighted = weigh(row, priors);
      return slopes
        .slice(0, index + 1)
        .map((other, at) => dot(weighted, other) + (at === index ? spreads[index]! ** 2 : 0));
    }),
  );
}

const weigh = (row: Float64Array, priors: ArrayLike<number>): Float64Array =>
  row.map((slope, place) => slope * priors[place]! ** 2);

/**
 * The most plausible values of the unknowns.
 *
 *     x = D J' (J D J' + R)^-1 y
 *
 * The same as least squares in which each unknown has been read as 0 once more, with its prior's deviation. It is found among
 * the readings, which are fewer than the unknowns, so that what is certain beforehand needs no case of its own.
 *
 * @param linear the readings' slopes and deviations
 * @param read what was read, y
 * @returns x
 * @source jcgm100 H.3 for least squares; house for the priors
 */
export function straightFit(linear: Linear, read: ArrayLike<number>): Float64Array {
  const weights = solveTriangle(spreadTriangle(linear), read);
  return Float64Array.from(linear.priors, (prior, place) => {
    let sum = 0;
    linear.slopes.forEach((row, index) => (sum += row[place]! * weights[index]!));
    return prior ** 2 * sum;
  });
}

/**
 * What readings take away of the unknowns' covariance: it is D - V'V after them.
 *
 *     V = L^-1 J D
 *
 * @returns the rows of V
 * @source house
 */
export function narrowedBy(linear: Linear): Float64Array[] {
  const rows = linear.slopes.map((row) => weigh(row, linear.priors));
  spreadTriangle(linear).forEach((line, index) => {
    const row = rows[index]!;
    for (let at = 0; at < index; at++) {
      const [other, times] = [rows[at]!, line[at]!];
      for (let place = 0; place < row.length; place++) row[place]! -= times * other[place]!;
    }
    for (let place = 0; place < row.length; place++) row[place]! /= line[index]!;
  });
  return rows;
}

/** An answer's slopes by the unknowns, and what the readings have to do with it. */
export interface Seen {
  readonly slopes: ArrayLike<number>;
  readonly shared: Float64Array; // V g
}

/**
 * Readies an answer's slopes for `covariance`.
 *
 * @returns the slopes with their part in the readings
 * @source house
 */
export const seen = (narrowed: readonly Float64Array[], slopes: ArrayLike<number>): Seen => ({
  slopes,
  shared: Float64Array.from(narrowed, (row) => dot(row, slopes)),
});

/**
 * How two answers stray together after the readings.
 *
 *     g C h = g D h - (V g) . (V h)
 *
 * @returns the covariance; of an answer with itself its variance
 * @source jcgm100 5.2
 */
export function covariance(priors: ArrayLike<number>, one: Seen, other: Seen): number {
  let before = 0;
  for (let place = 0; place < priors.length; place++)
    before += one.slopes[place]! * priors[place]! ** 2 * other.slopes[place]!;
  return before - dot(one.shared, other.shared);
}
