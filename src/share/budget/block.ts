import { columnLetters } from "../../sheets/address";
import { numberText, quotedText } from "../references";
import { cellText, rangeText, type RangeRef } from "../../sheets/rangeRef";
import { valueAt } from "../../reference/itemAt";

/** One column of a block of workings: its heading, what stands above its first and below its last row, and its formula per row. */
export interface BlockColumn<Name extends string> {
  readonly name: Name;
  readonly heading: string;
  readonly edge?: number; // stands in the rows before the first and after the last; 0 where nothing is said
  readonly formula: (row: number) => string; // rows from 1
}

/** A single number that the whole block uses. */
export interface BlockScalar<Name extends string> {
  readonly name: Name;
  readonly heading: string;
  readonly formula: string;
}

/**
 * Where the cells of a block stand. A column's rows may refer to those above or below them in the same column, which is no
 * circle, while a range over the whole of their own column would be one. What goes along with the row has no $ before its row, so that
 * a column reads as one formula filled down, and a file holds it once.
 */
export interface BlockPlace<Column extends string, Scalar extends string> {
  readonly rows: number;
  readonly cell: (column: Column, row: number) => string;
  readonly all: (column: Column) => string;
  readonly above: (column: Column, row: number) => string; // from the edge before the first row to the row before this one
  readonly below: (column: Column, row: number) => string;
  readonly scalar: (name: Scalar) => string;
  readonly onOtherSheets: BlockText<Column, Scalar>;
}

/** The same addresses as formulas on any sheet write them. */
interface BlockText<Column extends string, Scalar extends string> {
  readonly cell: (column: Column, row: number) => string;
  readonly all: (column: Column) => string;
  readonly scalar: (name: Scalar) => string;
}

const TITLE = 0;
const SCALAR_HEADINGS = 1;
const SCALARS = 2;
const HEADINGS = 3;
const BEFORE = 4; // the edge before the first row
const ROWS_ABOVE = BEFORE + 1;

/** How many rows of cells a block of so many rows takes. */
export const blockHeight = (rows: number): number => ROWS_ABOVE + rows + 1;

/** The addresses of a block of these columns that stands there. */
export function blockPlace<Column extends string, Scalar extends string>(
  place: RangeRef,
  rows: number,
  columns: readonly Column[],
  scalars: readonly Scalar[],
): BlockPlace<Column, Scalar> {
  const letters = new Map(columns.map((name, index) => [name, columnLetters(place.left + index)]));
  const line = (row: number): number => place.top + BEFORE + row;
  const inColumn = (column: Column, first: string, last: string): string =>
    `$${valueAt(letters, column)}${first}:$${valueAt(letters, column)}${last}`;
  const scalarAt = (name: Scalar): { column: number; row: number } => ({
    column: place.left + scalars.indexOf(name),
    row: place.top + SCALARS,
  });
  const columnAt = (name: Column): number => place.left + columns.indexOf(name);
  return {
    rows,
    cell: (column, row) => `$${valueAt(letters, column)}${line(row)}`,
    all: (column) => inColumn(column, `$${line(1)}`, `$${line(rows)}`),
    above: (column, row) => inColumn(column, `$${line(0)}`, `${line(row - 1)}`),
    below: (column, row) => inColumn(column, `${line(row + 1)}`, `$${line(rows + 1)}`),
    scalar: (name) => `$${columnLetters(scalarAt(name).column)}$${scalarAt(name).row}`,
    onOtherSheets: {
      cell: (column, row) => cellText(place.sheet, columnAt(column), line(row)),
      all: (column) => {
        const at = columnAt(column);
        return rangeText({ sheet: place.sheet, top: line(1), bottom: line(rows), left: at, right: at });
      },
      scalar: (name) => cellText(place.sheet, scalarAt(name).column, scalarAt(name).row),
    },
  };
}

/** Every cell of a block, row by row. */
export function blockCells<Column extends string, Scalar extends string>(
  title: string,
  rows: number,
  columns: readonly BlockColumn<Column>[],
  scalars: readonly BlockScalar<Scalar>[],
): string[][] {
  const width = Math.max(columns.length, scalars.length);
  const padded = (cells: readonly string[]): string[] => [
    ...cells,
    ...new Array<string>(width - cells.length).fill(""),
  ];
  const edges = padded(columns.map(({ edge }) => numberText(edge ?? 0)));
  const lines: string[][] = [];
  lines[TITLE] = padded([quotedText(title)]);
  lines[SCALAR_HEADINGS] = padded(scalars.map(({ heading }) => quotedText(heading)));
  lines[SCALARS] = padded(scalars.map(({ formula }) => formula));
  lines[HEADINGS] = padded(columns.map(({ heading }) => quotedText(heading)));
  lines[BEFORE] = edges;
  for (let row = 1; row <= rows; row++) lines.push(padded(columns.map(({ formula }) => formula(row))));
  lines.push(edges);
  return lines;
}
