import type { Calculated } from "../../sheets/calculated";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import type { Original } from "../originals";
import { cellAddress, placeOf } from "../../sheets/address";
import type { RangeRef } from "../formula/rangeRef";
import type { CellIndex } from "./cellIndex";
import { checkCellFor } from "./checkCells";
import { type FixedCall, OLD_FLAG } from "./fixedCall";
import type { FixedSheet } from "./fixedSheet";
import { referencesOf } from "./reach";

/** The sheets with a word beside each fixed answer on whether its inputs have changed, and what was added for it. */
export function addChecks(
  sheets: readonly Sheet[],
  calls: readonly FixedCall[],
  checks: FixedSheet,
  book: Calculated,
  index: CellIndex,
): { sheets: Sheet[]; added: Original[] } {
  const read = calls.length === 0 ? new Map<string, RangeRef[]>() : rangesRead(book, index);
  const added: Original[] = [];
  const checked = sheets.map((sheet): Sheet => {
    const here = calls.filter((call) => call.sheet === sheet.name && comparesSomething(call));
    if (here.length === 0) return sheet;
    const taken = takenIn(sheet);
    const cells: SheetCell[] = [];
    for (const call of here) {
      const at = checkCellFor(call, taken, read.get(sheet.name) ?? []);
      if (at === null) continue;
      taken.add(at);
      added.push({ sheet: sheet.name, at, formula: "", written: { rows: 1, columns: 1 } });
      cells.push({ at, formula: `=${checks.state(call)}`, style: "note" });
    }
    const places = new Set(cells.map(({ at }) => at));
    return {
      ...sheet,
      cells: [...sheet.cells.filter(({ at }) => !places.has(at)), ...cells],
      flags: [
        ...sheet.flags,
        ...cells.map(({ at }) => ({ range: at, containsText: OLD_FLAG, style: "flag" as const })),
      ],
    };
  });
  return { sheets: checked, added };
}

/** A printed table has no inputs, so nothing can make it old. */
const comparesSomething = ({ formula }: FixedCall): boolean => !/^=[^()]*\(\s*\)$/.test(formula);

/** Cells of a sheet in which something stands, and those under a chart. */
function takenIn(sheet: Sheet): Set<string> {
  const taken = new Set(sheet.cells.flatMap((cell) => ("value" in cell && cell.value === null ? [] : [cell.at])));
  for (const { over } of sheet.charts ?? []) {
    const [first, last] = over.split(":").map((at) => placeOf(at));
    if (first === undefined || last === undefined) continue;
    for (let row = first.row; row <= last.row; row++)
      for (let column = first.column; column <= last.column; column++) taken.add(cellAddress(column, row));
  }
  return taken;
}

/** Every range of several cells that a formula of the book reads, by sheet. */
function rangesRead({ workbook }: Calculated, index: CellIndex): Map<string, RangeRef[]> {
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
