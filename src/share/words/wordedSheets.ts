import type { Sheet, SheetCell } from "../../sheets/workbook";
import type { Original } from "../originals";
import { type CopyFacts, wordsInCopy } from "./wordsInCopy";

/** The sheets with what is so in a copy in place of texts and notes that are not, and what they said before. */
export function wordedSheets(sheets: readonly Sheet[], facts: CopyFacts): { sheets: Sheet[]; said: Original[] } {
  const said: Original[] = [];
  const worded = sheets.map((sheet): Sheet => {
    const instead = (part: "text" | "note", was: string, at: string): string => {
      const became = wordsInCopy(was, facts);
      if (became === null) return was;
      said.push({ sheet: sheet.name, at, formula: "", written: { rows: 1, columns: 1 }, said: { part, was, became } });
      return became;
    };
    const cells = sheet.cells.map((cell): SheetCell => {
      const { note, at } = cell;
      const look = note === undefined ? cell : { ...cell, note: instead("note", note, at) };
      return "value" in look && typeof look.value === "string"
        ? { ...look, value: instead("text", look.value, at) }
        : look;
    });
    // a cell's input message is the note of its heading, which is recorded there
    const hints = sheet.hints?.map((hint) => ({ ...hint, text: wordsInCopy(hint.text, facts) ?? hint.text }));
    return { ...sheet, cells, ...(hints === undefined ? {} : { hints }) };
  });
  return { sheets: worded, said };
}
