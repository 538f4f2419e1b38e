import type { CellPosition } from "../grid";
import { cellsInZone, shared } from "../limits/zones";
import { addDependents } from "./dependents";
import type { Evaluator, SheetRange } from "./evaluator";

/**
 * The library learns what a name or INDIRECT stands for when it computes a formula, each time anew, and forgets none of it:
 * so every change took a little longer than the one before. Here it learns the same thing once.
 *
 * Where a formula that fills cells has been computed, the library computes in its next pass whatever it then knows to rest on
 * them. A formula of which it learns later in the same pass that it rests on one of those kept what stood there before.
 *
 * @param learnt called where it is something new
 */
export function addOnce(evaluator: Evaluator, learnt: () => void): { readonly forget: () => void } {
  const { addDependencies } = evaluator;
  const known = new Set<string>();
  evaluator.addDependencies = (formula, ranges) => {
    const fresh = ranges.filter((range) => !known.has(keyOf(formula, range)));
    fresh.forEach((range) => known.add(keyOf(formula, range)));
    if (fresh.length > 0) {
      learnt();
      addDependencies.call(evaluator, formula, fresh);
    }
    evaluator.computeDependencies(ranges);
    if (fresh.some(isToComeAgain)) computeAgain(formula);
  };

  const isToComeAgain = ({ sheetId, zone }: SheetRange): boolean =>
    [...evaluator.nextRangesToUpdate].some(
      (next) => next.sheetId === sheetId && cellsInZone(shared(next.zone, zone)) > 0,
    );

  function computeAgain({ sheetId, col, row }: CellPosition): void {
    const range = { sheetId, zone: { left: col, right: col, top: row, bottom: row } };
    evaluator.nextRangesToUpdate.add(range);
    addDependents(evaluator)(evaluator.nextRangesToUpdate, [range]);
  }

  return { forget: () => known.clear() };
}

const keyOf = ({ sheetId, col, row }: CellPosition, { sheetId: on, zone }: SheetRange): string =>
  [sheetId, col, row, on, zone.left, zone.top, zone.right, zone.bottom].join(" ");
