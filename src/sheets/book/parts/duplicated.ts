import { formula, text } from "../../cells";
import { cellAddress, fixedAddress } from "../../address";
import type { SheetCell } from "../../workbook";
import { LOOK } from "./look";

/**
 * A sheet that somebody duplicates, to try another pipe or fan on it, goes on showing what the other sheets say, who read the first one. So
 * a sheet that reads such a table holds it as one text as well, and the table's own sheet compares: the same formula, duplicated, finds another text.
 */

const ROW = 5; // above the headings of the sheets that read

const asText = (range: string): string => `IFERROR(TEXTJOIN("|",FALSE,${range}),"")`;

/** The cell of that text on the sheet that reads, and its explanation, before which the text ends on the screen. */
export const heldAsText = (column: number, range: string, sheet: string): SheetCell[] => [
  formula(cellAddress(column, ROW), `=${asText(range)}`, "unit"),
  text(cellAddress(column + 1, ROW), `What is read of the sheet ${sheet}, by which a duplicate of it is told`, "note"),
];

export const heldAt = (column: number): string => fixedAddress(column, ROW);

/** Whether this table is another than the one that is read. Where the other sheet is gone, all that reads it says so. */
export const isDuplicate = (own: string, held: string): string => `IFERROR(${asText(own)}<>${held},FALSE)`;

/** @param what is not read, as "this table" */
export const duplicated = (what: string): string => `${LOOK} a duplicate: no sheet reads ${what}.`;
