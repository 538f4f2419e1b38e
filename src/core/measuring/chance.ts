import { DomainError } from "../errors";

/** How often chance alone may pass for a change: once in 20 times, on both sides together or on the one side that was meant. */
export type Sides = 1 | 2;

/** Normal deviates of 5 % on one side, and of 2.5 % on each of two. */
export const NORMAL = { 1: 1.6448536269514722, 2: 1.959963984540054 } as const;
/** Student's t for one to five degrees of freedom, for which the series below is not yet exact. */
export const FEW_DEGREES = {
  1: [6.313751514675041, 2.919985580353726, 2.353363434801823, 2.13184678632665, 2.015048372669157],
  2: [12.706204736432095, 4.302652729749464, 3.1824463052842633, 2.7764451051977987, 2.5705818356363155],
} as const;

/** Normal deviate of 80 %: a change that is there is seen eight times of ten. */
export const SEEN_MOSTLY = 0.8416212335729143;

/** Normal deviate of 99 %. */
export const UPPER_HUNDREDTH = 2.3263478740408408;

/**
 * Student's t of 5 % chance: what a mean strays from the truth once in 20 times, in standard deviations as estimated from readings.
 *
 *     t = z + (z^3 + z)/(4 v) + (5 z^5 + 16 z^3 + 3 z)/(96 v^2) + (3 z^7 + 19 z^5 + 17 z^3 - 15 z)/(384 v^3)
 *           + (79 z^9 + 776 z^7 + 1482 z^5 - 1920 z^3 - 945 z)/(92160 v^4)
 *
 * @param degrees degrees of freedom, a whole number from 1; infinite where the standard deviation is known beforehand
 * @param sides 2 for a change either way, 1 for one that was meant to go one way
 * @returns [-] within 0.0003 of the exact value
 * @throws DomainError if there is no degree of freedom
 * @source abramowitzStegun 26.7.5
 */
export function studentT(degrees: number, sides: Sides): number {
  if (!(degrees >= 1)) throw new DomainError("degrees", degrees, "at least 1");
  const few = FEW_DEGREES[sides][degrees - 1];
  if (few !== undefined) return few;
  return tSeries(sides).reduceRight((sum, coefficient) => sum / degrees + coefficient, 0);
}

/**
 * The coefficients of that series, by rising powers of one over the degrees of freedom.
 *
 * @returns [-] five numbers
 * @source abramowitzStegun 26.7.5
 */
export function tSeries(sides: Sides): number[] {
  const z = NORMAL[sides];
  return [
    z,
    (z ** 3 + z) / 4,
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96,
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384,
    (79 * z ** 9 + 776 * z ** 7 + 1482 * z ** 5 - 1920 * z ** 3 - 945 * z) / 92160,
  ];
}

/**
 * What a sum of squares, each over its own variance, exceeds by chance once in a hundred times.
 *
 *     v (1 - 2/(9 v) + z sqrt(2/(9 v)))^3
 *
 * @param degrees degrees of freedom, from 1
 * @returns [-] the upper 1 % point of chi-square, within 1 %
 * @throws DomainError if there is no degree of freedom
 * @source wilsonHilferty1931
 */
export function scatterLimit(degrees: number): number {
  if (!(degrees >= 1)) throw new DomainError("degrees", degrees, "at least 1");
  return degrees * (1 - 2 / (9 * degrees) + UPPER_HUNDREDTH * Math.sqrt(2 / (9 * degrees))) ** 3;
}

/**
 * How many readings on each side would show a change eight times of ten.
 *
 *     n = 2 (z + 0.8416)^2 / d^2 + z^2 / 4, rounded up, at least 2;  d = change / standard deviation of one reading
 *
 * @param deviations [-] the change over the standard deviation of one reading, above 0
 * @param sides as for studentT
 * @returns readings before, and as many after; one off at most against the exact number
 * @throws DomainError if the change is not above 0
 * @source guenther1981
 */
export function readingsNeeded(deviations: number, sides: Sides): number {
  if (!(deviations > 0)) throw new DomainError("deviations", deviations, "above 0");
  const z = NORMAL[sides];
  return Math.max(2, Math.ceil((2 * (z + SEEN_MOSTLY) ** 2) / deviations ** 2 + z ** 2 / 4));
}
