import { halfLastDigit } from "../support/printed";

/**
 * One number that somebody else printed, and how we compute it. A row is data, so that the help page on how the numbers
 * are checked can be written from the same list that the tests run.
 */
export interface PublishedRow {
  readonly id: string; // of the row in our collection of published values; more words where it prints several numbers
  readonly what: string; // the inputs, in our words
  readonly source: string;
  readonly printed: string; // as printed
  readonly unit: string; // of the printed number
  readonly tolerance: Tolerance;
  readonly compute: () => number; // in the printed unit
}

/** Half the last printed digit; or that plus a margin, with the reason for it; or none, for a number copied from a table. */
export type Tolerance = typeof HALF_LAST_DIGIT | typeof EXACTLY | Margin;

export type Margin =
  { readonly relative: number; readonly why: string } | { readonly absolute: number; readonly why: string };

export const HALF_LAST_DIGIT = "half the last digit";
export const EXACTLY = "exactly as printed";

/** Whether a number was copied as printed and read back, which proves less than one that was computed. */
export const isCopied = ({ tolerance }: PublishedRow): boolean => tolerance === EXACTLY;

export interface PublishedGroup {
  readonly title: string;
  readonly rows: readonly PublishedRow[];
}

/** A number that falls on the edge of its rounding is still rounded right, and a copied one may pass through units. */
const LAST_BITS = 1e-12;

/** How far our number may lie from the printed one. */
export function allowed({ printed, tolerance }: PublishedRow): number {
  const size = Math.abs(Number(printed));
  const bits = LAST_BITS * Math.max(size, 1);
  if (tolerance === EXACTLY) return bits;
  const half = halfLastDigit(printed) + bits;
  if (tolerance === HALF_LAST_DIGIT) return half;
  return half + ("relative" in tolerance ? tolerance.relative * size : tolerance.absolute);
}
