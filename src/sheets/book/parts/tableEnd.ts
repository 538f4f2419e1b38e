import { placeOf } from "../../address";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import { LOOK } from "./look";

/**
 * In the row under a table that has a last row: no formula reads on, and nothing else would say so to whoever types on, or inserts a row right
 * above this line. The last row is told by its entry and by a blank cell far beside it, as either may be moved alone. No other cell of it
 * is named: those hold formulas, and this line must rest on none.
 *
 * @param blank column in which nothing stands in the table's rows
 */
export function tableEnd(at: string, blank = "Z"): SheetCell {
  const above = `$${placeOf(at).row - 1}`;
  const last = `MAX(ROW($${at.replace(/\d+/, "")}${above}),ROW($${blank}${above}))`;
  return formula(
    at,
    `=IF(IFERROR(ROW()-${last},1)>1,"${LOOK} a row inserted right above this line is not read: insert it higher up.","The table ends here: what is typed below it is not read.")`,
    "note",
  );
}
