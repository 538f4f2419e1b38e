import { headerName } from "../../core/naming/headerName";
import { allColumns, columnsForGainsAlone, neededColumns } from "../../reference/columnsOfRuns";
import type { RunColumn } from "../../reference/runColumns";
import { cellText, type RangeRef, rangeText } from "../../sheets/rangeRef";
import type { ShownValue } from "../translate/translation";
import { itemAt, valueAt } from "../../reference/itemAt";

/** Where a runs table stands: its columns are found once, by the headers that stand there when the copy is made. */
export interface RunsTable {
  readonly rows: number; // below the header, as many as the workings read
  readonly columns: readonly RunColumn[];
  readonly hasTextOfDigits: (column: RunColumn) => boolean; // a number that was typed as a text
  readonly range: string; // its header too: a row that is inserted anywhere in it belongs to it
  readonly header: (column: RunColumn) => string; // a cell, which a program moves along with its column
  readonly headed: (column: RunColumn) => string; // what it said when the copy was made
  readonly headers: string; // the range's first row
  readonly column: (column: RunColumn) => string; // its cells from the header on, as many as the range has
  readonly first: string; // the range's first cell
  readonly names: string; // the column Run from its header on, with the blank rows below the table
}

/** More rows than this are no workshop's, and workings that compare each run with each other would be slow. */
const MOST_ROWS = 600;

const SPARE = 40; // blank rows that are kept for more runs, where the range is longer than anything filled

/**
 * The table, or a sentence that says why the table cannot be read.
 * @param blankBelow how many cells below the table's column of this number are blank
 */
export function runsTable(
  range: RangeRef,
  shown: readonly (readonly ShownValue[])[],
  blankBelow: (column: number) => number,
): RunsTable | string {
  const texts = (shown[0] ?? []).map((value) => (typeof value === "string" ? value : ""));
  const header = texts.map(headerName);
  const places = new Map<RunColumn, number>();
  for (const column of allColumns) {
    if (columnsForGainsAlone.includes(column)) continue;
    const place = header.indexOf(headerName(column));
    if (place < 0) continue;
    if (header.lastIndexOf(headerName(column)) !== place) return `its runs table has the column ${column} twice`;
    places.set(column, place);
  }
  const missing = neededColumns.find((column) => !places.has(column));
  if (missing !== undefined) return `its runs table has no column ${missing}`;
  const isFilled = (row: readonly ShownValue[]): boolean => row.some((value) => value !== null && value !== "");
  const filled = shown.reduce((last, row, index) => (index > 0 && isFilled(row) ? index : last), 0);
  const rows = Math.min(range.bottom - range.top, filled + SPARE);
  if (rows < 1) return "its runs table has no row below the header";
  if (filled > MOST_ROWS) return `its runs table has more than ${MOST_ROWS} rows`;
  const column = (name: RunColumn): number => range.left + valueAt(places, name);
  const names = { ...range, left: column("Run"), right: column("Run") };
  return {
    rows,
    columns: [...places.keys()],
    hasTextOfDigits: (name) =>
      shown.some((row, index) => {
        const value = row[valueAt(places, name)];
        return index > 0 && typeof value === "string" && /^[\s\d.]+$/.test(value);
      }),
    range: rangeText(range),
    header: (name) => cellText(range.sheet, column(name), range.top),
    headed: (name) => itemAt(texts, valueAt(places, name)),
    headers: rangeText({ ...range, bottom: range.top }),
    column: (name) => rangeText({ ...range, left: column(name), right: column(name) }),
    first: cellText(range.sheet, range.left, range.top),
    names: rangeText({ ...names, bottom: range.bottom + blankBelow(column("Run")) }),
  };
}
