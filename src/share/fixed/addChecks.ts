import type { Calculated } from "../../sheets/calculated";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import type { Original } from "../originals";
import { addressesIn, rectangleOf } from "../../sheets/rectangle";
import type { RangeRef } from "../../sheets/rangeRef";
import { quotedText } from "../references";
import { callsBehind } from "./callsBehind";
import type { CellIndex } from "./cellIndex";
import { checkCellFor, headCellFor } from "./checkCells";
import { type FixedCall, OLD_FLAG } from "./fixedCall";
import type { FixedSheet } from "./fixedSheet";
import { referencesOf } from "./reach";
import { itemAt } from "../../reference/itemAt";

/**
 * The sheets with a word on whether inputs have changed: beside each fixed answer, and at the head of every sheet whose numbers rest
 * on fixed answers of another. With what was added for it.
 */
export function addChecks(
  sheets: readonly Sheet[],
  calls: readonly FixedCall[],
  checks: FixedSheet,
  book: Calculated,
  index: CellIndex,
  date: string,
): { sheets: Sheet[]; added: Original[] } {
  const read = calls.length === 0 ? new Map<string, RangeRef[]>() : rangesRead(book, index);
  const added: Original[] = [];
  const comparing = calls.filter(comparesSomething);
  const checked = sheets.map((sheet, place): Sheet => {
    const here = comparing.filter((call) => call.sheet === sheet.name);
    const behind = comparing.length === 0 ? [] : callsBehind(itemAt(book.workbook.sheets, place), comparing, index);
    if (here.length + behind.length === 0) return sheet;
    const taken = takenIn(sheet);
    const readHere = read.get(sheet.name) ?? [];
    const cells: SheetCell[] = [];
    const put = (at: string | null, code: string): void => {
      if (at === null) return;
      taken.add(at);
      added.push({ sheet: sheet.name, at, formula: "", written: { rows: 1, columns: 1 } });
      cells.push({ at, formula: `=${code}`, style: "note" });
    };
    for (const call of here) put(checkCellFor(call, taken, readHere), checks.state(call));
    if (behind.length > 0) put(headCellFor(taken, readHere), headWords(behind, checks, date));
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

const MOST_NAMED = 4; // sheets; a text in a formula has at most 255 characters

/** Of numbers that come from elsewhere: from which sheets, and whether they are old. */
function headWords(behind: readonly FixedCall[], checks: FixedSheet, date: string): string {
  const names = [...new Set(behind.map(({ sheet }) => sheet))];
  const from = `what comes from ${names.length > MOST_NAMED ? "other sheets" : names.join(", ")} is`;
  return `IF(${checks.changed(behind)}=0,${quotedText(`${from} as of ${date}`)},${quotedText(`${OLD_FLAG}: ${from} old`)})`;
}

/** A printed table has no inputs, so nothing can make it old. */
const comparesSomething = ({ formula }: FixedCall): boolean => !/^=[^()]*\(\s*\)$/.test(formula);

/** Cells of a sheet in which something stands, and those under a chart. */
function takenIn(sheet: Sheet): Set<string> {
  const taken = new Set(sheet.cells.flatMap((cell) => ("value" in cell && cell.value === null ? [] : [cell.at])));
  for (const { over } of sheet.charts ?? []) for (const at of addressesIn(rectangleOf(over))) taken.add(at);
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
