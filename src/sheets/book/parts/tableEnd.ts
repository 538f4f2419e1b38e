import { placeOf } from "../../address";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import { LOOK } from "./look";

/**
 * In the row under a table that has a last row: no formula reads on, and nothing else would say so to whoever types on, or inserts a row
 * right above this line. The last row is told by many of its cells, since a single one may be cut to another place.
 */
export function tableEnd(at: string): SheetCell {
  const { row } = placeOf(at);
  const below = `ROW()-SUMPRODUCT(MAX(ROW($A$${row - 1}:$Z$${row - 1})))`;
  return formula(
    at,
    `=IF(IFERROR(${below},1)=1,"The table ends here: what is typed below it is not read.","${LOOK} a row inserted right above this line is not read: insert it higher up.")`,
    "note",
  );
}
