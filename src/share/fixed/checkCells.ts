import { cellAddress, placeOf } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
import { addressesIn, readRectangle, rectangleOf } from "../../sheets/rectangle";
import type { Sheet } from "../../sheets/workbook";
import type { FixedCall } from "./fixedCall";

/**
 * A blank cell beside a fixed answer for the word on whether it is old: right of its first row, else above its first cell, else
 * under its last row, and rather where it is printed. Null where all are taken, or lie in a range that some formula reads.
 *
 * @param area what is printed of the sheet; all of it where it is not told
 */
export function checkCellFor(
  call: FixedCall,
  taken: ReadonlySet<string>,
  read: readonly RangeRef[],
  area: string | undefined,
): string | null {
  const { column, row } = placeOf(call.at);
  const { rows, columns } = call.extent;
  const isFree = freeCells(taken, read);
  const free = [
    { column: column + columns, row },
    { column, row: row - 1 },
    { column, row: row + rows },
  ].filter((place) => isFree(place.column, place.row));
  const printed = area === undefined ? null : readRectangle(area);
  const found = free.find((place) => printed !== null && isIn(printed, place.column, place.row)) ?? free[0];
  return found === undefined ? null : cellAddress(found.column, found.row);
}

const isIn = ({ top, left, bottom, right }: Omit<RangeRef, "sheet">, column: number, row: number): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;

const HEAD_ROWS = [2, 3, 4, 5, 6];
const HEAD_COLUMNS = [3, 4, 5, 6, 7, 8, 9, 10]; // of the title's row, which is longer than its cell
const ROOM = { cells: 3, characters: 45 }; // that the words run over: as many cells, or fewer that are wide

/**
 * A blank place at the head of a sheet, where a reader of any of its numbers comes by, and rather where it cuts no text that runs
 * over its own cell; null where all is taken or read.
 */
export function headCellFor(
  { columns: widths, cells }: Pick<Sheet, "columns" | "cells">,
  taken: ReadonlySet<string>,
  read: readonly RangeRef[],
): string | null {
  const isFree = freeCells(taken, read);
  const hasRoom = ([column, row]: readonly [column: number, row: number]): boolean => {
    let wide = 0;
    for (let across = 0; across < ROOM.cells && wide < ROOM.characters; across++) {
      if (!isFree(column + across, row)) return false;
      wide += widths[column + across - 1] ?? 0;
    }
    return true;
  };
  const places = [...HEAD_ROWS.map((row) => [1, row] as const), ...HEAD_COLUMNS.map((column) => [column, 1] as const)];
  const roomy = places.filter(hasRoom);
  const found = roomy.find(([column, row]) => !runsInto(cells, widths, column, row)) ?? roomy[0];
  return found === undefined ? null : cellAddress(found[0], found[1]);
}

/** Whether a text further left in that row is longer than the cells up to there are wide. */
const runsInto = (cells: Sheet["cells"], widths: Sheet["columns"], column: number, row: number): boolean =>
  cells.some((cell) => {
    const place = placeOf(cell.at);
    if (place.row !== row || place.column >= column || !("value" in cell) || typeof cell.value !== "string")
      return false;
    const wide = widths.slice(place.column - 1, column - 1).reduce((sum, width) => sum + width, 0);
    return cell.value.length > wide;
  });

/** Whether nothing stands in a cell of the sheet, and no formula reads a range that it lies in. */
const freeCells =
  (taken: ReadonlySet<string>, read: readonly RangeRef[]) =>
  (column: number, row: number): boolean =>
    row >= 1 && !taken.has(cellAddress(column, row)) && !read.some((range) => isIn(range, column, row));

/** Cells of a sheet in which something stands, and those under a chart. */
export function takenIn(sheet: Sheet): Set<string> {
  const taken = new Set(sheet.cells.flatMap((cell) => ("value" in cell && cell.value === null ? [] : [cell.at])));
  for (const { over } of sheet.charts ?? []) for (const at of addressesIn(rectangleOf(over))) taken.add(at);
  return taken;
}
