import { MITRE } from "../../reference/fittings/mitres";
import { mitreReynoldsMultiplier } from "../../reference/fittings/mitreReynoldsMultiplier";
import { type FittingItem, listCoefficient } from "./fittingList";
import { itemAt } from "../../reference/itemAt";

/** A stretch between two printed Reynolds numbers, in which the multiplier falls along a line. */
export interface Stretch {
  readonly from: number; // [-] Reynolds number
  readonly width: number; // [-]
  readonly fall: number; // [-] of the multiplier over the whole stretch
}

/** The multiplier in the slowest air that was printed; slower air has it too. */
export const SLOWEST = itemAt(mitreReynoldsMultiplier, 0).value;

export const stretches: readonly Stretch[] = mitreReynoldsMultiplier.slice(1).map(({ reynolds, value }, index) => {
  const before = itemAt(mitreReynoldsMultiplier, index);
  return { from: before.reynolds, width: reynolds - before.reynolds, fall: before.value - value };
});

/**
 * How many times a mitre's printed loss it has in slower air: 1.4 up to a Reynolds number of 10 000, 1 from 140 000 on.
 *
 * Straight lines between the printed points. The loss itself still rises with the airflow everywhere.
 *
 * @param reynolds [-] of the air in the duct, at least 0
 * @returns [-] multiplier, and its slope by the Reynolds number
 * @source smacna4th Table A-7
 */
export function mitreInSlowAir(reynolds: number): { readonly times: number; readonly slope: number } {
  let [times, slope] = [SLOWEST, 0];
  for (const { from, width, fall } of stretches) {
    const share = Math.min(Math.max((reynolds - from) / width, 0), 1);
    times -= fall * share;
    if (share > 0 && share < 1) slope = -fall / width;
  }
  return { times, slope };
}

/**
 * The part of a list's coefficient that is of mitres, as printed.
 *
 * @returns [-] at most listCoefficient
 * @source points
 */
export const mitreCoefficient = (items: readonly FittingItem[]): number =>
  listCoefficient(
    items.filter(({ family }) => family?.key === MITRE),
    null,
  );

/**
 * Sum of the coefficients of a list in a duct of this diameter [m], in air of this Reynolds number [-].
 *
 * @returns [-] K of all of them together
 * @source points; smacna4th Table A-7 for mitres in slow air
 */
export const coefficientInAir = (items: readonly FittingItem[], diameter: number, reynolds: number): number =>
  listCoefficient(items, diameter) + mitreCoefficient(items) * (mitreInSlowAir(reynolds).times - 1);
