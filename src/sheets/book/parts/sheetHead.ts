import { input, text } from "../../cells";
import type { SheetCell } from "../../workbook";

/** Title, what the sheet is for, who invented its numbers, and the legend that tells inputs from results: rows 1 to 4. */
export function sheetHead(title: string, purpose: string, invented: string | null): SheetCell[] {
  return [
    text("A1", title, "title"),
    text("A2", purpose),
    ...(invented === null ? [] : [text("A3", invented, "note")]),
    input("A4", "boxed cell"),
    text("B4", "is yours to fill or change. Cells without a box are computed, or explain.", "note"),
  ];
}
