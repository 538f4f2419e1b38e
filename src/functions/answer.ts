import { DomainError } from "../core/errors";
import { fromSI, type UnitSystem, unitOf } from "../reference/quantities";
import { readUnits } from "./arguments";
import { type Failure, failureOf, NOT_FINITE, raise } from "./cellErrors";
import { type Cell, type Matrix, MOST_CELLS, toMatrix } from "./cells";
import { readerOf } from "./readRule";
import type { Rule, Signature, Takes, Values } from "./signature";

/**
 * A function of single values over cells and ranges, by the spreadsheet's own array rule: equal shapes go item by item,
 * one cell meets all, a column with a row makes a grid.
 *
 * One cell: a failure is raised as the host's error. Several: a wrong item shows its sentence, a blank one an empty text,
 * and the others compute.
 *
 * @param given the arguments as the host handed them over, in the signature's order, and after them the units
 * @param compute the answer in SI from the values of one item, which it must not keep: the next item takes their place
 */
export function answerOf<const T extends Takes>(
  { takes, gives, units }: Signature<T>,
  given: readonly unknown[],
  compute: (values: Values<T>, system: UnitSystem) => number,
): (number | string)[][] {
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
  const readers = names.map((name, index) => readerOf(name, rules[index]!, system));
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
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.width }, (__, column) => {
      if (isBlankItem(rules, grid, row, column)) return "";
      const value = one(row, column);
      return typeof value === "number" ? value : value.sentence;
    }),
  );
}

interface Grid {
  readonly columns: readonly Matrix[]; // one matrix per argument
  readonly rows: number;
  readonly width: number;
}

function gridOf(names: readonly string[], given: readonly unknown[]): Grid {
  const columns = names.map((_, index) => toMatrix(given[index]));
  const rows = Math.max(...columns.map((matrix) => matrix.length));
  const width = Math.max(...columns.map((matrix) => matrix[0]!.length));
  columns.forEach((matrix, index) => {
    const fits = (size: number, whole: number): boolean => size === 1 || size === whole;
    if (!fits(matrix.length, rows) || !fits(matrix[0]!.length, width)) {
      const shape = `${matrix.length} by ${matrix[0]!.length} cells`;
      throw new DomainError(
        names[index]!,
        shape,
        `one cell, one row, one column or ${rows} by ${width} cells like the other ranges`,
      );
    }
  });
  if (rows * width > MOST_CELLS)
    throw new DomainError("the ranges", `${rows} by ${width} cells`, `together at most ${MOST_CELLS} cells`);
  return { columns, rows, width };
}

const cellAt = (matrix: Matrix, row: number, column: number): Cell => {
  const line = matrix[matrix.length === 1 ? 0 : row]!;
  return line[line.length === 1 ? 0 : column]!;
};

/**
 * An item is blank when, among the ranges that run the same way, all needed cells are blank; 0 counts as blank here,
 * since some hosts send blanks as 0.
 */
function isBlankItem(rules: readonly Rule[], grid: Grid, row: number, column: number): boolean {
  const filled = new Map<string, boolean>();
  rules.forEach((rule, index) => {
    const matrix = grid.columns[index]!;
    const direction = `${matrix.length > 1} ${matrix[0]!.length > 1}`;
    if (!rule.needed || direction === "false false") return;
    const cell = cellAt(matrix, row, column);
    filled.set(direction, (filled.get(direction) ?? false) || (cell !== null && cell !== 0));
  });
  return [...filled.values()].includes(false);
}
