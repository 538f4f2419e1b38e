import type { CellPosition } from "../grid";
import { addDependents } from "./dependents";
import { type Evaluator, isInside, type Ranges, type SheetRange } from "./evaluator";

/** A formula that fills several cells, and which it filled when it was computed last. */
export interface Spill extends SheetRange {
  readonly formula: CellPosition;
}

/**
 * The changed cells and whatever rests on them, over the cells that formulas fill as well: these the library follows only
 * when it has computed the formula anew, and then it computes again what it had computed with what stood there before.
 *
 * @param more cells that are to be computed anyway
 */
export function restingOn(
  evaluator: Evaluator,
  changed: readonly CellPosition[],
  more: Iterable<SheetRange>,
): { readonly cells: Ranges; readonly spills: readonly Spill[] } {
  const cells = evaluator.nextRangesToUpdate.copy(); // a set of the library's own kind
  cells.clear();
  cells.addManyPositions(changed);
  cells.addMany(evaluator.getArrayFormulasImpactedByChangesOf(changed));
  cells.addMany(more);
  const spills: Spill[] = [];
  let others = spillsOf(evaluator);
  // of a filled cell the library names one formula, and that may be one that was cleared
  const isFilling = ({ sheetId, zone }: Spill): boolean =>
    changed.some((position) => position.sheetId === sheetId && isInside(position, zone));
  cells.addManyPositions(others.filter(isFilling).map(({ formula }) => formula));
  const addResting = addDependents(evaluator);
  let fresh: SheetRange[] = [...cells];
  while (fresh.length > 0) {
    addResting(cells, fresh);
    const found = others.filter(({ formula }) => cells.hasPosition(formula));
    others = others.filter((spill) => !found.includes(spill));
    spills.push(...found);
    cells.addMany(found);
    fresh = found;
  }
  return { cells, spills };
}

function spillsOf({ spreadingRelations, blockedArrayFormulas }: Evaluator): Spill[] {
  return spreadingRelations.arrayFormulasToResults.keys().flatMap((formula) => {
    const zone = spreadingRelations.getArrayResultZone(formula);
    return zone === undefined || blockedArrayFormulas.has(formula) ? [] : [{ sheetId: formula.sheetId, zone, formula }];
  });
}
