import { BRANCH } from "../../reference/lossFamilies";
import { itemAt } from "../../reference/itemAt";
import type { FittingItem } from "./fittingList";

/** The branch by which a run joins another. */
export interface Branch {
  readonly angle: number; // [degrees] to the other's axis
  readonly plain: boolean; // its K goes by angle alone and stands in the run's coefficient
}

const isBranch = ({ family }: FittingItem): boolean => family?.key === BRANCH;

/**
 * The branch by which a run joins another: the first that its list names. Others, and a second of the same entry, stand
 * somewhere along it and keep K by angle alone.
 *
 * @returns its angle, and whether it is plain; null where the list names none
 * @source house grammar
 */
export function joiningBranch(items: readonly FittingItem[]): Branch | null {
  const first = items.find(isBranch);
  return first === undefined ? null : { angle: first.angle ?? first.family?.angle?.usual ?? NaN, plain: first.plain };
}

/**
 * A list without one of that branch.
 *
 * @returns the same entries, the branch counted once less
 * @source house grammar
 */
export function withoutJoining(items: readonly FittingItem[]): FittingItem[] {
  const place = items.findIndex(isBranch);
  return items.map((item, index) => (index === place ? { ...item, count: itemAt(items, place).count - 1 } : item));
}
