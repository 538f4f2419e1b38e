import type { CellPosition, GridModel } from "../grid";
import { type EvaluatedCell, type Evaluator, isInside, isSameZone, type OnceEach, type SheetRange } from "./evaluator";
import type { Spill } from "./restingOn";

/**
 * The library computes formulas in passes: a cell that reads what another formula fills may come before it, and is computed
 * again in the next pass. Here that formula is computed when one of its cells is read, which is enough as long as it fills the
 * cells that it filled before.
 */
export function onceEach(
  evaluator: Evaluator,
  getters: Pick<GridModel["getters"], "getCell">,
): OnceEach & {
  /** Gets ready for another set of cells, which this clears. */
  readonly begin: (cells: Iterable<SheetRange>, spills: readonly Spill[]) => void;
} {
  const { computeCell, invalidateSpreading, invalidatePositionsDependingOnSpread } = evaluator;
  let works = false;
  let isRight = true;
  let spills: readonly Spill[] = [];
  const begun = new Set<Spill>();

  evaluator.invalidateSpreading = (position) => {
    if (!works) invalidateSpreading.call(evaluator, position);
  };
  evaluator.invalidatePositionsDependingOnSpread = (sheetId, zone) => {
    if (!works) invalidatePositionsDependingOnSpread.call(evaluator, sheetId, zone);
  };
  evaluator.computeCell = (position) => {
    const known = evaluator.evaluatedCells.get(position);
    if (known !== undefined) return known;
    if (!works) return computeCell.call(evaluator, position);
    const cell = getters.getCell(position);
    if (cell?.isFormula === true) return formula(position);
    if (cell === undefined || cell.content === "") fill(position);
    return evaluator.evaluatedCells.get(position) ?? computeCell.call(evaluator, position);
  };

  function formula(position: CellPosition): EvaluatedCell {
    const before = evaluator.spreadingRelations.getArrayResultZone(position);
    const spill = before && spills.find((one) => isSamePosition(one.formula, position));
    if (spill !== undefined) begun.add(spill);
    const cell = computeCell.call(evaluator, position);
    if (spill !== undefined) begun.delete(spill);
    const now = evaluator.spreadingRelations.getArrayResultZone(position);
    if (!isSameZone(before, now) || evaluator.blockedArrayFormulas.has(position)) isRight = false;
    return cell;
  }

  /** A formula that rests on its own cells, over others, is left to the library. */
  function fill(position: CellPosition): void {
    for (const spill of spills) {
      if (spill.sheetId !== position.sheetId || !isInside(position, spill.zone)) continue;
      if (isSamePosition(spill.formula, position)) continue; // the formula is gone
      if (begun.has(spill)) isRight = false;
      else if (!evaluator.evaluatedCells.has(spill.formula)) evaluator.computeAndSave(spill.formula);
    }
  }

  return {
    begin: (cells, ofThem) => {
      evaluator.clearEvaluatedRanges(cells);
      evaluator.cellsBeingComputed = new Set();
      evaluator.updateCompilationParameters();
      spills = ofThem;
      isRight = true;
    },
    compute: (cells, stop) => {
      works = true;
      try {
        while (isRight && !stop()) {
          const next = cells.next();
          if (next.done === true) break;
          const cell = evaluator.computeCell(next.value);
          if (cell.value !== null || cell.format !== undefined) evaluator.evaluatedCells.set(next.value, cell);
        }
      } finally {
        works = false;
      }
      return isRight;
    },
  };
}

const isSamePosition = (one: CellPosition, other: CellPosition): boolean =>
  one.sheetId === other.sheetId && one.col === other.col && one.row === other.row;
