import { cellAddress } from "../../sheets/address";
import type { Calculated, Extent } from "../../sheets/calculated";
import { type RangeRef, readRange } from "../../sheets/rangeRef";
import type { ShownValue } from "./translation";

const FAR = 100; // rows

/** What the cells of a book show while it is translated. */
export interface ShownReader {
  value(sheet: string, row: number, column: number): ShownValue;
  /** The cell or range that a name stands for. */
  named(name: string): RangeRef | null;
  /** How far the formula in a cell reaches; null where it fills its own cell only. */
  extent(cell: RangeRef): Extent | null;
  /** How many cells of a column below a row show nothing, up to so many as nobody looks beyond. */
  blankBelow(sheet: string, row: number, column: number): number;
}

export function shownReader({ workbook, shown }: Calculated): ShownReader {
  const sheets = new Map([...shown].map(([name, cells]) => [name.toLowerCase(), cells]));
  const names = new Map(workbook.names.map((name) => [name.name.toLowerCase(), name]));
  const cellAt = (sheet: string, row: number, column: number) =>
    sheets.get(sheet.toLowerCase())?.get(cellAddress(column, row));
  return {
    value: (sheet, row, column) => cellAt(sheet, row, column)?.value ?? null,
    named: (text) => {
      const name = names.get(text.toLowerCase());
      return name === undefined ? null : readRange(name.at, name.sheet);
    },
    blankBelow: (sheet, row, column) => {
      const filled = Array.from({ length: FAR }, (_, index) => cellAt(sheet, row + 1 + index, column)?.value ?? "");
      const first = filled.findIndex((value) => value !== "");
      return first < 0 ? FAR : first;
    },
    extent: (cell) => cellAt(cell.sheet, cell.top, cell.left)?.fills ?? null,
  };
}
