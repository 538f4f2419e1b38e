import { cellAddress } from "../../address";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";

/**
 * A table that one formula fills: the formula in its first cell, and the looks of the cells that it spills into.
 *
 * @param column first column, from 1
 * @param header row of its header, from 1
 * @param last last row that it can fill
 * @param formats number format of each column; null for text
 */
export function spillOf(
  column: number,
  header: number,
  last: number,
  formats: readonly (string | null)[],
  code: string,
): SheetCell[] {
  const cells: SheetCell[] = [];
  formats.forEach((format, index) => {
    const head = {
      at: cellAddress(column + index, header),
      style: format === null ? "header" : "numberHeader",
    } as const;
    cells.push(index === 0 ? formula(head.at, code, head.style) : { ...head, value: null });
    for (let row = header + 1; row <= last; row++) {
      const look = { at: cellAddress(column + index, row), value: null, style: "result" } as const;
      cells.push(format === null ? look : { ...look, format });
    }
  });
  return cells;
}
