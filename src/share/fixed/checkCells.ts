import { cellAddress, placeOf } from "../../sheets/address";
import type { RangeRef } from "../formula/rangeRef";
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
  const free = places.find(([across, down]) => {
    if (down < 1 || taken.has(cellAddress(across, down))) return false;
    return !read.some(
      ({ top, left, bottom, right }) => down >= top && down <= bottom && across >= left && across <= right,
    );
  });
  return free === undefined ? null : cellAddress(free[0], free[1]);
}
