import { DomainError } from "../../core/errors";
import { itemAt } from "../../reference/itemAt";

/** So many sets of open gates are solved at most: a second or so. */
export const MOST_SETS = 500;

/**
 * Every set of one gate, then of two, and so on; within a count in the order of the table.
 *
 * @param count of gates
 * @param most gates that are open at once
 * @returns the places of each set
 * @throws DomainError where there are more sets than `MOST_SETS`
 */
export function setsOfGates(count: number, most: number): number[][] {
  const needed = howMany(count, most);
  if (needed > MOST_SETS) {
    const few = `small enough for at most ${MOST_SETS} sets of open gates, and ${count} gates make ${needed}`;
    throw new DomainError("most", most, few);
  }
  const ofOne = Array.from({ length: count }, (_, place) => [place]);
  const sets = [...ofOne];
  let grown = ofOne;
  for (let size = 2; size <= Math.min(most, count); size++) {
    grown = grown.flatMap((set) => ofOne.slice(itemAt(set, set.length - 1) + 1).map(([next]) => [...set, next!]));
    sets.push(...grown);
  }
  return sets;
}

/** Binomial coefficients added up, each from the one before: C(n, k) = C(n, k - 1) (n - k + 1) / k. */
function howMany(count: number, most: number): number {
  let [sum, ofThisSize] = [0, 1];
  for (let size = 1; size <= Math.min(most, count); size++) {
    ofThisSize = (ofThisSize * (count - size + 1)) / size;
    sum += ofThisSize;
  }
  return sum;
}
