import type { CellPosition, GridModel } from "../grid";
import { cellsOfZone, type EvaluatedCell, type Evaluator, type FormulaCell, type OnceEach } from "./evaluator";
import { fillersOf } from "./fillersOf";

const MOST_DEEP = 300; // formulas, each of which waits for the next: far below what the stack of a browser holds

/**
 * Computes a book of which nothing is computed, each cell once, after what it rests on.
 *
 * The library computes in passes, sheet by sheet: what reads a blank cell that a formula fills afterwards is computed again.
 * Here whatever could fill a blank cell is computed when the cell is read. Where a cell was read as blank and is filled after
 * all, where answers are in each other's way or formulas rest on themselves, it depends on who comes first: that is the
 * library's to say.
 */
export function allOnce(
  evaluator: Evaluator,
  getters: Pick<GridModel["getters"], "getCell" | "getCells" | "getCellPosition">,
): OnceEach & { readonly begin: () => void } {
  const { computeCell, invalidateSpreading, invalidatePositionsDependingOnSpread } = evaluator;
  let works = false;
  let isRight = true;
  let fillers = fillersOf(getters);
  const blanks = new Set<string>(); // cells that were read as such
  const inTheWay: CellPosition[] = []; // what could be in the way of an answer

  evaluator.invalidateSpreading = (position) => {
    if (!works) invalidateSpreading.call(evaluator, position);
  };
  evaluator.invalidatePositionsDependingOnSpread = (sheetId, zone) => {
    if (!works) return invalidatePositionsDependingOnSpread.call(evaluator, sheetId, zone);
    for (const position of cellsOfZone({ sheetId, zone })) {
      if (blanks.has(keyOf(position))) isRight = false;
      inTheWay.push(...fillers(position).filter((filler) => !isBegun(filler)));
    }
  };
  evaluator.computeCell = (position) => {
    const known = evaluator.evaluatedCells.get(position);
    if (known !== undefined) return known;
    if (!works) return computeCell.call(evaluator, position);
    const cell = getters.getCell(position);
    if (cell?.isFormula !== true)
      return cell === undefined || cell.content === "" ? blank(position) : computeCell.call(evaluator, position);
    if (isBegun(position) || evaluator.cellsBeingComputed.size > MOST_DEEP) isRight = false;
    if (!isRight) return evaluator.getEvaluatedCell(position); // nothing: all is computed by the library
    const computed = computeCell.call(evaluator, position);
    if (evaluator.blockedArrayFormulas.has(position)) isRight = false;
    return computed;
  };

  const isBegun = (formula: CellPosition): boolean => evaluator.cellsBeingComputed.has(getters.getCell(formula)!.id);

  function blank(position: CellPosition): EvaluatedCell {
    for (const filler of fillers(position)) {
      if (isBegun(filler)) continue;
      if (isLikely(filler)) evaluator.computeAndSave(filler);
      else inTheWay.push(filler);
    }
    const filled = evaluator.evaluatedCells.get(position);
    if (filled !== undefined) return filled;
    blanks.add(keyOf(position));
    return computeCell.call(evaluator, position);
  }

  /** Others than ours, whose names have a dot, and SEQUENCE rarely fill more than their own cell: they need not come first. */
  const isLikely = (formula: CellPosition): boolean => {
    const cell = getters.getCell(formula)! as FormulaCell;
    return cell.compiledFormula.symbols.some((symbol) => symbol.includes(".") || symbol === "SEQUENCE");
  };

  function computeAndKeep(position: CellPosition): void {
    const cell = evaluator.computeCell(position);
    if (cell.value !== null || cell.format !== undefined) evaluator.evaluatedCells.set(position, cell);
  }

  return {
    begin: () => {
      evaluator.buildDependencyGraph();
      evaluator.evaluatedCells = new (evaluator.evaluatedCells.constructor as new () => Evaluator["evaluatedCells"])();
      evaluator.cellsBeingComputed = new Set();
      evaluator.updateCompilationParameters();
      fillers = fillersOf(getters);
      blanks.clear();
      inTheWay.length = 0;
      isRight = true;
    },
    compute: (cells, stop) => {
      works = true;
      try {
        while (isRight) {
          const filler = inTheWay.pop();
          if (filler !== undefined) computeAndKeep(filler);
          else if (stop()) break;
          else {
            const next = cells.next();
            if (next.done === true) break;
            computeAndKeep(next.value);
          }
        }
      } finally {
        works = false;
      }
      return isRight;
    },
  };
}

const keyOf = ({ sheetId, col, row }: CellPosition): string => `${sheetId} ${col} ${row}`;
