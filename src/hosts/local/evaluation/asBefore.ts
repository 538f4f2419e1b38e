import type { CellPosition, GridModel } from "../grid";
import { isSpent } from "../limits/meter";
import type { EvaluatedCell, Evaluator, FormulaCell, Given, GivenCells, SheetRange } from "./evaluator";

/** Functions that look at more than what they are given, or give something else each time. A test asks the library for them. */
export const UNSTEADY: ReadonlySet<string> = new Set([
  "CELL",
  "FORMULATEXT",
  "INDIRECT",
  "ISFORMULA",
  "NOW",
  "OFFSET",
  "PIVOT",
  "PIVOT.HEADER",
  "PIVOT.VALUE",
  "RAND",
  "RANDARRAY",
  "RANDBETWEEN",
  "SPILLED.RANGE",
  "SUBTOTAL",
  "TODAY",
]);

/** What a formula read, in its order, when it was computed last, and what it gave; null where that says nothing of the next time. */
interface Known {
  readonly compiled: object;
  readonly position: CellPosition;
  readonly isSteady: boolean;
  reads: readonly Read[];
  gave: EvaluatedCell | null;
}

interface Read {
  readonly from: SheetRange;
  readonly isRange: boolean; // as the formula asked for it
  found: Given;
}

/**
 * A change clears all that rests on it, however little of that becomes another: a length changes some numbers of BUDGET, and
 * hundreds of formulas beside it read others. Here a formula that finds all that it reads as it was gives what it gave.
 *
 * What it reads is asked for in the same order again, each only as long as all before it is as it was: so nothing is asked
 * for that the formula would not ask for itself, and a circle shows where it showed.
 */
export function asBefore(
  evaluator: Evaluator,
  getters: Pick<GridModel["getters"], "getCell">,
): { readonly forget: (position: CellPosition) => void; readonly forgetAll: () => void } {
  let known = new WeakMap<object, Known>(); // by cell
  const reading: Read[][] = []; // of the formulas that are being computed, the innermost last
  let ours: object | null = null; // what formulas are given while their reads are noted
  let isAll = false; // all is computed in the library's own way, in several passes: to note that took a seventh of its time
  let [cellOf, cellsOf]: ((from: SheetRange) => Given)[] = [];
  const { computeFormulaCell, evaluateAllCells, updateCompilationParameters } = evaluator;

  const forgetAll = (): void => {
    known = new WeakMap();
  };

  evaluator.evaluateAllCells = () => {
    forgetAll();
    isAll = true;
    try {
      evaluateAllCells.call(evaluator);
    } finally {
      isAll = false;
    }
  };

  evaluator.updateCompilationParameters = () => {
    updateCompilationParameters.call(evaluator);
    const { compilationParams } = evaluator;
    if (isAll) return;
    ours = compilationParams;
    const { referenceDenormalizer, ensureRange } = compilationParams;
    [cellOf, cellsOf] = [referenceDenormalizer, ensureRange];
    const noted = <Found extends Given>(from: SheetRange, isRange: boolean, found: Found): Found => {
      reading.at(-1)?.push({ from, isRange, found });
      return found;
    };
    compilationParams.referenceDenormalizer = (from) => noted(from, false, referenceDenormalizer(from));
    compilationParams.ensureRange = (from) => noted(from, true, ensureRange(from));
  };

  const isAsFound = (read: Read): boolean => {
    const now = read.isRange ? cellsOf!(read.from) : cellOf!(read.from);
    if (!isSame(read.found, now)) return false;
    read.found = now; // the next formula that read the same then need not compare it again
    return true;
  };

  evaluator.computeFormulaCell = (position, cell) => {
    const compiled = cell.compiledFormula;
    if (evaluator.compilationParams !== ours) return computeFormulaCell.call(evaluator, position, cell);
    let one = known.get(cell);
    if (one?.compiled !== compiled || !isSamePosition(one.position, position)) {
      one = { compiled, position, isSteady: isSteady(compiled), reads: [], gave: null };
      known.set(cell, one);
    } else if (one.gave !== null && one.reads.every(isAsFound)) return one.gave;
    one.gave = null;
    const reads: Read[] = [];
    reading.push(reads);
    try {
      const gave = computeFormulaCell.call(evaluator, position, cell);
      const fillsOthers = evaluator.spreadingRelations.getArrayResultZone(position) !== undefined;
      if (one.isSteady && !fillsOthers && !isSpent() && !reads.some(isOfCircle)) [one.reads, one.gave] = [reads, gave];
      return gave;
    } finally {
      reading.pop();
    }
  };

  return {
    forgetAll,
    forget: (position) => {
      const cell = getters.getCell(position);
      if (cell !== undefined) known.delete(cell);
    },
  };
}

const isSteady = ({ symbols }: FormulaCell["compiledFormula"]): boolean =>
  !symbols.some((symbol) => UNSTEADY.has(symbol.toUpperCase()));

const isCells = (found: Given): found is GivenCells => Array.isArray(found);

/** Where an error of a circle stands depends on the cell that was asked for first. */
function isOfCircle({ found }: Read): boolean {
  if (!isCells(found)) return found.value === "#CYCLE";
  let is = circles.get(found);
  if (is === undefined) {
    is = found.some((column) => column.some((cell) => cell.value === "#CYCLE"));
    circles.set(found, is);
  }
  return is;
}

const circles = new WeakMap<GivenCells, boolean>();

function isSame(one: Given, other: Given): boolean {
  if (one === other) return true;
  if (!isCells(one) || !isCells(other)) return !isCells(one) && !isCells(other) && isSameCell(one, other);
  const before = compared.get(one);
  if (before?.other === other) return before.is;
  const is =
    one.length === other.length &&
    one.every((column, at) => {
      const beside = other[at]!;
      return column.length === beside.length && column.every((cell, row) => isSameCell(cell, beside[row]!));
    });
  compared.set(one, { other, is });
  return is;
}

/** Formulas beside each other read the same ranges. */
const compared = new WeakMap<GivenCells, { readonly other: GivenCells; readonly is: boolean }>();

const isSameCell = (one: EvaluatedCell, other: EvaluatedCell): boolean =>
  one === other ||
  (Object.is(one.value, other.value) &&
    one.format === other.format &&
    one.message === other.message &&
    (one.errorOriginPosition === other.errorOriginPosition ||
      (one.errorOriginPosition !== undefined &&
        other.errorOriginPosition !== undefined &&
        isSamePosition(one.errorOriginPosition, other.errorOriginPosition))));

const isSamePosition = (one: CellPosition, other: CellPosition): boolean =>
  one.sheetId === other.sheetId && one.col === other.col && one.row === other.row;
