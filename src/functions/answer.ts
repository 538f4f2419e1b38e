import { DomainError } from "../core/errors";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../reference/quantities";
import { type Argument, readUnits } from "./arguments";
import { type Failure, failureOf, NOT_FINITE, raise } from "./cellErrors";
import { type Cell, type Matrix, MOST_CELLS, toMatrix } from "./cells";

type Values<Arguments extends readonly Argument<unknown>[]> = {
  [Index in keyof Arguments]: Arguments[Index] extends Argument<infer Value> ? Value : never;
};

/**
 * A function of single values over cells and ranges, by the spreadsheet's own array rule: equal shapes go item by item,
 * one cell meets all, a column with a row makes a grid.
 *
 * One cell: a failure is raised as the host's error. Several: a wrong item shows its sentence, a blank one an empty text,
 * and the others compute.
 *
 * @param result quantity of the answer; its SI value is converted into the call's units
 */
export function answer<const Arguments extends readonly Argument<unknown>[]>(
  units: unknown,
  result: Quantity,
  args: Arguments,
  compute: (...values: Values<Arguments>) => number,
): (number | string)[][] {
  let system: UnitSystem;
  let grid: Grid;
  try {
    system = readUnits(units);
    grid = gridOf(args);
  } catch (error) {
    return raise(failureOf(error, "IP", () => undefined));
  }
  const unit = unitOf(result, system);
  const one = (row: number, column: number): number | Failure => {
    const cells = grid.columns.map((matrix) => cellAt(matrix, row, column));
    try {
      const values = args.map((argument, index) => argument.read(cells[index]!, system));
      const value = fromSI(compute(...(values as Values<Arguments>)), unit);
      return Number.isFinite(value) ? value : NOT_FINITE;
    } catch (error) {
      const given = (name: string) => {
        const index = args.findIndex((argument) => argument.name === name);
        return index < 0 ? undefined : { quantity: args[index]!.quantity, cell: cells[index]! };
      };
      return failureOf(error, system, given);
    }
  };
  if (grid.rows === 1 && grid.width === 1) {
    const value = one(0, 0);
    return typeof value === "number" ? [[value]] : raise(value);
  }
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.width }, (__, column) => {
      if (isBlankItem(args, grid, row, column)) return "";
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

function gridOf(args: readonly Argument<unknown>[]): Grid {
  const columns = args.map((argument) => toMatrix(argument.given));
  const rows = Math.max(...columns.map((matrix) => matrix.length));
  const width = Math.max(...columns.map((matrix) => matrix[0]!.length));
  columns.forEach((matrix, index) => {
    const fits = (size: number, whole: number): boolean => size === 1 || size === whole;
    if (!fits(matrix.length, rows) || !fits(matrix[0]!.length, width)) {
      const shape = `${matrix.length} by ${matrix[0]!.length} cells`;
      throw new DomainError(
        args[index]!.name,
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
function isBlankItem(args: readonly Argument<unknown>[], grid: Grid, row: number, column: number): boolean {
  const filled = new Map<string, boolean>();
  args.forEach((argument, index) => {
    const matrix = grid.columns[index]!;
    const direction = `${matrix.length > 1} ${matrix[0]!.length > 1}`;
    if (!argument.needed || direction === "false false") return;
    const cell = cellAt(matrix, row, column);
    filled.set(direction, (filled.get(direction) ?? false) || (cell !== null && cell !== 0));
  });
  return [...filled.values()].includes(false);
}
