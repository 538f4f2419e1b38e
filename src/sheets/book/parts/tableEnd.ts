import { text } from "../../cells";
import type { SheetCell } from "../../workbook";

/** In the row under a table that has a last row: no formula reads on, and nothing else would say so to whoever types on. */
export const tableEnd = (at: string): SheetCell =>
  text(at, "The table ends here: what is typed below it is not read.", "note");
