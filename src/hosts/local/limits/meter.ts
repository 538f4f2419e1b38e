import { TOO_MUCH_WORK } from "../../../sheets/tooMuchWork";
import type { Value } from "./sizes";

/** Visits of cells between one change of the sheet and the next: some seconds of work, three times that of opening a club copy. */
export const MOST_WORK = 1e9;

let most = MOST_WORK;
let left = most;

/** A change of the sheet begins a new measure. */
export function begin(): void {
  left = most;
}

/** From now on the measure is this one; a test need not spend the whole. */
export function measure(work: number): void {
  most = work;
  begin();
}

/** Counts work before it is done; false where it is more than is left, and from then on until the next change. */
export function spend(work: number): boolean {
  left = work <= left ? left - work : -1; // what is left out once is left out everywhere, or a part of it would be hidden
  return left >= 0;
}

/** Whether something was left out since the last change. */
export const isSpent = (): boolean => left < 0;

/** An error of its own, so that no IFERROR puts a number in its place. */
export const refusedValue = (): Value => ({ value: "#ERROR", message: TOO_MUCH_WORK });

export const isRefusal = (value: Value | undefined): boolean => value?.message === TOO_MUCH_WORK;
