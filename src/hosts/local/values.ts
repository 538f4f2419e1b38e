import { CellError } from "./customFunctions";
import { dayIn, percentIn } from "./days";
import { itemAt } from "../../reference/itemAt";

/** A value as the grid keeps it. Its matrices go by column: matrix[column][row]. */
export interface GridValue {
  readonly value: string | number | boolean | null;
  readonly message?: string;
  readonly format?: string;
}

export type GridMatrix = readonly (readonly (GridValue | undefined)[])[];

/** Turns rows into columns, and columns into rows. */
export const transpose = <Item>(matrix: readonly (readonly Item[])[]): Item[][] =>
  (matrix[0] ?? []).map((_, index) => matrix.map((line) => line[index] as Item)); // an item may be undefined itself

/** The grid's names of errors that Excel names otherwise. */
const EXCEL_NAMES: Readonly<Record<string, string>> = {
  "#ERROR": "#VALUE!",
  "#REF": "#REF!",
  "#CYCLE": "#VALUE!",
  "#BAD_EXPR": "#NAME?",
};

/** An error of the grid by the name that Excel has for it. */
export const excelName = (code: string): string => EXCEL_NAMES[code] ?? code;

/** Errors a cell function can show, and those of them that keep their sentence; any other code becomes #VALUE!. */
const SHOWN = ["#VALUE!", "#N/A", "#NUM!", "#DIV/0!", "#NULL!"];
const SPOKEN = ["#VALUE!", "#N/A"];

export const isGridMatrix = (value: unknown): value is GridMatrix => Array.isArray(value);

/**
 * One cell of the grid as a cell function receives it: a blank as null, an error as a CustomFunctions.Error, a day and a
 * percentage as the text that its cell shows, for no function of ours means the number behind it, or only where a share of 1 is meant.
 */
export function fromGrid(cell: GridValue | undefined, isError: (value: unknown) => boolean): unknown {
  if (cell === undefined || cell.value === null) return null;
  if (!isError(cell.value)) return dayIn(cell) ?? percentIn(cell) ?? cell.value;
  const code = String(cell.value);
  return new CellError(excelName(code), cell.message);
}

/** What a cell function returned, as the grid takes it; an answer of one cell is not a spill. */
export function toGrid(result: unknown): GridValue | GridValue[][] {
  if (!Array.isArray(result)) return toGridValue(result);
  const rows = result as unknown[][];
  if (rows.length === 1 && itemAt(rows, 0).length === 1) return toGridValue(itemAt(rows, 0)[0]);
  return transpose(rows.map((row) => row.map(toGridValue)));
}

/** As Excel shows it: nothing is a 0, and what is no number is an error. */
function toGridValue(value: unknown): GridValue {
  if (value === null || value === undefined) return { value: 0 };
  if (typeof value === "number") return Number.isFinite(value) ? { value } : { value: "#NUM!" };
  if (typeof value === "string" || typeof value === "boolean") return { value };
  return value instanceof CellError ? errorToGrid(value) : { value: "#VALUE!" };
}

/** What a cell function threw. Only a CustomFunctions.Error keeps a sentence, and only with two of the codes, as in Excel. */
export function errorToGrid(error: unknown): GridValue {
  if (!(error instanceof CellError)) return { value: "#VALUE!" };
  const value = SHOWN.includes(error.code) ? error.code : "#VALUE!";
  return SPOKEN.includes(error.code) && error.message !== "" ? { value, message: error.message } : { value };
}
