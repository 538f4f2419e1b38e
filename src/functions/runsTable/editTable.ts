import type { Cell, Matrix } from "../cells";
import type { RunColumn } from "../../reference/runColumns";
import { findColumns } from "./columns";

/** One cell of a runs table to be changed, by its row below the header and its column. */
export interface Edit {
  readonly row: number;
  readonly column: RunColumn;
  readonly cell: Cell;
}

/** The table as if somebody had typed these cells into it; a column that is not there is added. */
export function edited(table: Matrix, edits: readonly Edit[]): Matrix {
  let header = table[0]!;
  const missing = edits.map(({ column }) => column).filter((column) => findColumns(header)[column] === undefined);
  header = [...header, ...new Set<Cell>(missing)];
  const places = findColumns(header);
  const body = table
    .slice(1)
    .map((line): Cell[] => [...line, ...new Array<null>(header.length - line.length).fill(null)]);
  for (const { row, column, cell } of edits) body[row]![places[column]!] = cell;
  return [header, ...body];
}
