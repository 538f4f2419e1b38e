import { text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";

/** What can hurt someone at the task of a sheet, in one line at its head; the sheet Cautions has it whole, with sources. */
export const cautionLine = (frame: Frame, at: string, words: string): SheetCell =>
  text(at, frame.has("cautions") ? `${words} More: ${frame.sheet("cautions")}.` : words, "total");
