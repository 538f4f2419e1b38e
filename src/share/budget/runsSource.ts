import { headerName } from "../../core/naming/headerName";
import { allColumns, columnsForGainsAlone, neededColumns } from "../../reference/columnsOfRuns";
import type { RunColumn } from "../../reference/runColumns";
import { cellText, type RangeRef } from "../../sheets/rangeRef";
import type { ShownValue } from "../translate/translation";
import { valueAt } from "../../reference/itemAt";

/** A runs table as the workings read it: its columns are found once, by the headers that stand there when the copy is made. */
export interface RunsSource {
  readonly rows: number; // below the header
  readonly has: (column: RunColumn) => boolean;
  readonly cell: (column: RunColumn, row: number) => string; // rows from 1; the column must be there
}

/** More rows than this are no workshop's, and workings that compare each run with each other would be slow. */
const MOST_ROWS = 600;

const SPARE = 40; // blank rows that are kept for more runs, where the range is longer than anything filled

/** The source, or a sentence that says why the table cannot be read. */
export function runsSource(range: RangeRef, shown: readonly (readonly ShownValue[])[]): RunsSource | string {
  const header = (shown[0] ?? []).map((value) => (typeof value === "string" ? headerName(value) : ""));
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
  return {
    rows,
    has: (column) => places.has(column),
    cell: (column, row) => cellText(range.sheet, range.left + valueAt(places, column), range.top + row),
  };
}
