import { DomainError } from "../core/errors";
import { fromSI, type UnitSystem, unitOf } from "../reference/quantities";
import { readUnits } from "./arguments";
import { type Answered, asError, type Failure, failureOf, NOT_FINITE, raise } from "./cellErrors";
import { type Cell, type Matrix, rowsGiven, toMatrix } from "./cells";
import { readerOf } from "./readRule";
import type { Rule, Signature, Takes, Values } from "./signature";

/**
 * A function of single values over cells and ranges, by the spreadsheet's own array rule: equal shapes go item by item,
 * one cell meets all, a column with a row makes a grid.
 *
 * One cell: a failure is raised as the host's error. Several: a wrong item is such an error in its own cell, a blank one an
 * empty text, and the others compute.
 *
 * @param given the arguments as the host handed them over, in the signature's order, and after them the units
 * @param compute the answer in SI from the values of one item, which it must not keep: the next item takes their place
 */
export function answerOf<const T extends Takes>(
  { takes, gives, units }: Signature<T>,
  given: readonly unknown[],
  compute: (values: Values<T>, system: UnitSystem) => number,
): Answered[][] {
  const names = Object.keys(takes);
  const rules = Object.values(takes);
  let system: UnitSystem = "IP";
  let grid: Grid;
  try {
    if (units) system = readUnits(given[names.length]);
    grid = gridOf(names, given);
  } catch (error) {
    return raise(failureOf(error, "IP", () => undefined));
  }
  const unit = unitOf(gives, system);
  const readers = names.map((name, index) => readerOf(name, rules[index]!, system, given[index] != null));
  const values: Record<string, unknown> = {};
  const one = (row: number, column: number): number | Failure => {
    try {
      names.forEach((name, index) => {
        values[name] = readers[index]!(cellAt(grid.columns[index]!, row, column));
      });
      const value = fromSI(compute(values as Values<T>, system), unit);
      return Number.isFinite(value) ? value : NOT_FINITE;
    } catch (error) {
      return failureOf(error, system, (name) => {
        const index = names.indexOf(name);
        if (index < 0) return undefined;
        return { quantity: rules[index]!.quantity, cell: cellAt(grid.columns[index]!, row, column) };
      });
    }
  };
  if (grid.rows === 1 && grid.width === 1) {
    const value = one(0, 0);
    return typeof value === "number" ? [[value]] : raise(value);
  }
  let [wrong, first] = [0, ""];
  const refused = (failure: Failure): CustomFunctions.Error => {
    if (++wrong === 1) first = failure.sentence;
    if (wrong <= MOST_WRONG) return asError(failure);
    return raise({ kind: "invalidValue", sentence: `more than ${MOST_WRONG} cells are wrong; of the first: ${first}` });
  };
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.width }, (__, column) => {
      if (isBlankItem(rules, grid, row, column)) return "";
      const value = one(row, column);
      return typeof value === "number" ? value : refused(value);
    }),
  );
}

/** Most cells of one answer: written out they are less than the 5 MB that a host takes at once. */
export const MOST_ANSWERS = 200_000;

/** Most wrong ones among them: beyond that it is the range that is wrong, and to look for the name that is meant takes time. */
export const MOST_WRONG = 1000;

interface Grid {
  readonly columns: readonly Range[]; // one per argument
  readonly rows: number;
  readonly width: number;
}

interface Range {
  readonly cells: Matrix; // without the rows of a whole column that nobody filled
  readonly high: number;
  readonly wide: number;
}

function gridOf(names: readonly string[], given: readonly unknown[]): Grid {
  const columns = names.map((_, index): Range => {
    const cells = toMatrix(given[index]);
    return { cells, high: rowsGiven(given[index]), wide: cells[0]!.length };
  });
  const high = Math.max(...columns.map((range) => range.high));
  const width = Math.max(...columns.map((range) => range.wide));
  columns.forEach((range, index) => {
    const fits = (size: number, whole: number): boolean => size === 1 || size === whole;
    if (!fits(range.high, high) || !fits(range.wide, width)) {
      const shape = `${range.high} by ${range.wide} cells`;
      throw new DomainError(
        names[index]!,
        shape,
        `one cell, one row, one column or ${high} by ${width} cells like the other ranges`,
      );
    }
  });
  const rows = Math.max(...columns.map((range) => range.cells.length));
  if (rows * width > MOST_ANSWERS)
    throw new DomainError("the answer", `${rows} by ${width} cells`, `at most ${MOST_ANSWERS} cells in all`);
  return { columns, rows, width };
}

const cellAt = ({ cells, high, wide }: Range, row: number, column: number): Cell =>
  cells[high === 1 ? 0 : row]?.[wide === 1 ? 0 : column] ?? null;

/**
 * An item is blank when, among the ranges that run the same way, all needed cells are blank; 0 counts as blank here,
 * since some hosts send blanks as 0.
 */
function isBlankItem(rules: readonly Rule[], grid: Grid, row: number, column: number): boolean {
  const filled = new Map<string, boolean>();
  rules.forEach((rule, index) => {
    const range = grid.columns[index]!;
    const direction = `${range.high > 1} ${range.wide > 1}`;
    if (!rule.needed || direction === "false false") return;
    const cell = cellAt(range, row, column);
    filled.set(direction, (filled.get(direction) ?? false) || (cell !== null && cell !== 0));
  });
  return [...filled.values()].includes(false);
}
