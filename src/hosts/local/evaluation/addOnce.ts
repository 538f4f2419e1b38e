import type { CellPosition } from "../grid";
import type { Evaluator, SheetRange } from "./evaluator";

/**
 * The library learns what a name or INDIRECT stands for when it computes a formula, each time anew, and forgets none of it:
 * so every change took a little longer than the one before. Here it learns the same thing once.
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
  };
  return { forget: () => known.clear() };
}

const keyOf = ({ sheetId, col, row }: CellPosition, { sheetId: on, zone }: SheetRange): string =>
  [sheetId, col, row, on, zone.left, zone.top, zone.right, zone.bottom].join(" ");
