/** An error value that stands in a cell: "#N/A", "#DIV/0!" ... */
export class CellErrorValue {
  readonly inWords: string;
  constructor(code: string) {
    this.inWords = `the error ${code}`;
  }
}

/** What a cell can hold once the hosts' differences are gone; null is a blank. */
export type Cell = number | string | boolean | null | CellErrorValue;

/** A blank arrives as 0 from some hosts, so neither is taken for the other. */
export const isNothing = (cell: Cell): boolean => cell === null || cell === 0;

/** Words over a column, no number: figures that cannot be read, "100,5" or `4"`, are no heading but a value to be told of. */
export const isWords = (cell: Cell): boolean => typeof cell === "string" && !/^\s*[-+−]?[.,]?\d/.test(cell);

export type Matrix = readonly (readonly Cell[])[];

const TALL = 20_000; // rows: nobody types so many, so what is taller is mostly a whole column

/** An argument as the host handed it over: nothing of it is copied, and a cell is looked at when it is asked for. */
export interface Range {
  readonly rows: readonly unknown[]; // of a whole column without those below the last filled one
  readonly high: number; // rows that the host handed over
  readonly wide: number;
}

const ONE_BLANK: Range = { rows: [null], high: 1, wide: 1 };

/** A cell or a range of cells. */
export function rangeOf(argument: unknown): Range {
  if (!Array.isArray(argument)) return { rows: [argument], high: 1, wide: 1 };
  const given: readonly unknown[] = argument;
  let wide = 0;
  for (const line of given) {
    const cells = Array.isArray(line) ? line.length : 1;
    if (cells > wide) wide = cells;
  }
  if (wide === 0) return ONE_BLANK;
  return { rows: filled(given), high: given.length, wide };
}

/** The cell of a range that meets an item: one cell, one row and one column meet all. */
export function cellAt({ rows, high, wide }: Range, row: number, column: number): Cell {
  const line = rows[high === 1 ? 0 : row];
  const place = wide === 1 ? 0 : column;
  const value: unknown = Array.isArray(line) ? line[place] : place === 0 ? line : null;
  return typeof value === "number" ? value : toCell(value);
}

/**
 * An argument as the host handed it over (a cell, a range, nothing) as a rectangle of plain cells. Of a whole column the rows
 * below the last filled one are left out.
 */
export function toMatrix(argument: unknown): Matrix {
  const given: readonly unknown[] = Array.isArray(argument) ? argument : [[argument]];
  const lines = filled(given).map((row) => (Array.isArray(row) ? row : [row]).map(toCell));
  const width = lines.reduce((most, line) => Math.max(most, line.length), 0);
  if (lines.length === 0 || width === 0) return [[null]];
  return lines.map((line) =>
    line.length === width ? line : [...line, ...new Array<null>(width - line.length).fill(null)],
  );
}

const filled = (rows: readonly unknown[]): readonly unknown[] =>
  rows.length > TALL ? rows.slice(0, Math.max(1, filledRows(rows))) : rows;

/** Rows up to the last one with something in it; a 0 is nothing here, since some hosts send blanks as 0. */
function filledRows(rows: readonly unknown[]): number {
  const isFilled = (cell: unknown): boolean => ![null, undefined, 0, ""].includes(cell as null);
  for (let row = rows.length; row > 0; row--) {
    const line = rows[row - 1];
    if (Array.isArray(line) ? line.some(isFilled) : isFilled(line)) return row;
  }
  return 0;
}

/** Blank as null, formatted numbers and entities as their basic value, errors as errors. */
function toCell(value: unknown): Cell {
  if (value === undefined || value === null) return null;
  if (typeof value === "string") return value.trim() === "" ? null : value;
  if (typeof value === "number" || typeof value === "boolean") return value;
  if (value instanceof CellErrorValue) return value;
  if (typeof value !== "object") return null;
  const { code, type, basicValue } = value as { code?: unknown; type?: unknown; basicValue?: unknown };
  if (typeof code === "string") return new CellErrorValue(code);
  if (type === "Error") return new CellErrorValue(typeof basicValue === "string" ? basicValue : "#VALUE!");
  return typeof basicValue === "object" ? null : toCell(basicValue);
}
