import { cellAddress, placeOf } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
import type { FixedCall } from "./fixedCall";

/**
 * A blank cell beside a fixed answer for the word on whether it is old: right of its first row, else above its first cell, else
 * under its last row. Null where all are taken, or lie in a range that some formula reads.
 */
export function checkCellFor(call: FixedCall, taken: ReadonlySet<string>, read: readonly RangeRef[]): string | null {
  const { column, row } = placeOf(call.at);
  const { rows, columns } = call.extent;
  const places = [
    [column + columns, row],
    [column, row - 1],
    [column, row + rows],
  ] as const;
  return firstFree(places, 1, taken, read);
}

const HEAD_ROWS = [2, 3, 4, 5, 6];
const HEAD_COLUMNS = [3, 4, 5, 6, 7, 8]; // of the title's row, which is longer than its cell
const ROOM = 3; // cells that the words run over

/** A blank place at the head of a sheet, where a reader of any of its numbers comes by; null where all is taken or read. */
export function headCellFor(taken: ReadonlySet<string>, read: readonly RangeRef[]): string | null {
  const places = [...HEAD_ROWS.map((row) => [1, row] as const), ...HEAD_COLUMNS.map((column) => [column, 1] as const)];
  return firstFree(places, ROOM, taken, read);
}

function firstFree(
  places: readonly (readonly [column: number, row: number])[],
  room: number,
  taken: ReadonlySet<string>,
  read: readonly RangeRef[],
): string | null {
  const isFree = (column: number, row: number): boolean =>
    row >= 1 &&
    !taken.has(cellAddress(column, row)) &&
    !read.some(({ top, left, bottom, right }) => row >= top && row <= bottom && column >= left && column <= right);
  const free = places.find(([column, row]) =>
    Array.from({ length: room }, (_, across) => isFree(column + across, row)).every(Boolean),
  );
  return free === undefined ? null : cellAddress(free[0], free[1]);
}
