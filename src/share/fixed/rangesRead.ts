import type { Calculated } from "../../sheets/calculated";
import type { RangeRef } from "../../sheets/rangeRef";
import type { CellIndex } from "./cellIndex";
import { referencesOf } from "./reach";

/** Every range of several cells that a formula of the book reads, by sheet. */
export function rangesRead({ workbook }: Calculated, index: CellIndex): Map<string, RangeRef[]> {
  const all = new Map<string, Map<string, RangeRef>>();
  for (const { name, cells } of workbook.sheets) {
    for (const cell of cells) {
      if (!("formula" in cell) || !cell.formula.includes(":")) continue;
      for (const range of referencesOf(cell.formula, name, index).ranges) {
        const there = all.get(range.sheet) ?? new Map<string, RangeRef>();
        all.set(range.sheet, there.set(`${range.top},${range.left},${range.bottom},${range.right}`, range));
      }
    }
  }
  return new Map([...all].map(([sheet, ranges]) => [sheet, [...ranges.values()]]));
}
