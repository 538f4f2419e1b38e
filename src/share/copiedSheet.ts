import { cellAddress, placeOf } from "../sheets/address";
import type { Calculated, ShownError } from "../sheets/calculated";
import { filledAddresses } from "../sheets/rectangle";
import { lookOfCell } from "../sheets/lookOfCell";
import type { Sheet, SheetCell } from "../sheets/workbook";
import { NUMBER, TEXT } from "./isPlain";
import { markFixed, withFixedNote, withRefusal } from "./marks";
import type { TranslatedSheets } from "./translateSheets";

/** What a cell of the copy holds instead of what it held. */
export type Replacement = (cell: SheetCell) => SheetCell;

/** New contents by sheet, then by address. */
export type Replacements = ReadonlyMap<string, ReadonlyMap<string, Replacement>>;

/** The contents that translated and fixed formulas leave behind. */
export function replacementsOf(translated: TranslatedSheets, book: Calculated, fixedSheetName: string): Replacements {
  const all = new Map<string, Map<string, Replacement>>();
  const put = (sheet: string, at: string, replacement: Replacement): void => {
    const there = all.get(sheet) ?? new Map<string, Replacement>();
    all.set(sheet, there.set(at, replacement));
  };
  for (const { sheet, at, cells } of translated.live) {
    const { column, row } = placeOf(at);
    cells.forEach((line, down) =>
      line.forEach((formula, across) => {
        const there = cellAddress(column + across, row + down);
        const said = sentenceAt(book, sheet, there);
        put(sheet, there, (cell) => withRefusal(plainContent(formula, cell), said));
      }),
    );
  }
  for (const { sheet, at, extent, function: name, why } of translated.fixed) {
    for (const address of filledAddresses(at, extent)) {
      const value = book.shown.get(sheet)?.get(address)?.value ?? null;
      const sentence = `${name === "" ? "this" : name} stays as it was, since ${why}. The sheet "${fixedSheetName}" tells whether its inputs have changed.`;
      put(sheet, address, (cell) => {
        const marked = { ...lastValue(cell, value), style: markFixed(cell.style) };
        const told = withRefusal(marked, sentenceAt(book, sheet, address));
        return address === at ? withFixedNote(told, sentence) : told;
      });
    }
  }
  for (const { sheet, at, extent, why } of translated.untranslated) {
    for (const address of filledAddresses(at, extent)) {
      const value = book.shown.get(sheet)?.get(address)?.value ?? null;
      put(sheet, address, (cell) => {
        const kept = lastValue(cell, value);
        return address === at ? withFixedNote(kept, `the last value; it could not be translated: ${why}.`) : kept;
      });
    }
  }
  return all;
}

/** What a cell's error said in the book; plain formulas show #N/A there and cannot say it. */
function sentenceAt({ shown }: Calculated, sheet: string, at: string): string {
  const value = shown.get(sheet)?.get(at)?.value;
  return typeof value === "object" && value !== null ? (value.message ?? "") : "";
}

/** A formula that is nothing but a text or a number is that value. */
function plainContent(formula: string, cell: SheetCell): SheetCell {
  const look = lookOfCell(cell);
  if (TEXT.test(formula)) return { ...look, value: formula.slice(2, -1).replaceAll('""', '"') };
  if (NUMBER.test(formula)) return { ...look, value: Number(formula.slice(1)) };
  return { ...look, formula };
}

/** What a cell showed, as a value. An error or an empty text needs a formula: typed, a file would not keep it. */
function lastValue(cell: SheetCell, value: SheetCellValue): SheetCell {
  const look = lookOfCell(cell);
  if (value === "") return { ...look, formula: '=""' };
  return value !== null && typeof value === "object" ? { ...look, formula: "=NA()" } : { ...look, value };
}

type SheetCellValue = string | number | boolean | null | ShownError;

/** A sheet with new contents. Cells that were not listed are added at the end. */
export function copiedSheet(sheet: Sheet, replacements: ReadonlyMap<string, Replacement>): Sheet {
  const listed = new Set(sheet.cells.map(({ at }) => at));
  const cells = sheet.cells.map((cell) => replacements.get(cell.at)?.(cell) ?? cell);
  for (const [at, replacement] of replacements) if (!listed.has(at)) cells.push(replacement({ at, value: null }));
  return { ...sheet, cells };
}
