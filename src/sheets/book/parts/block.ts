import { cellAddress, placeOf } from "../../address";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import { itemAt, lastOf } from "../../../reference/itemAt";

/** Cells without a header that one formula in the first of them fills: a range such as "$E$23:$F$25". */
export function blockOf(range: string, format: string, code: string): SheetCell[] {
  const corners = range.replaceAll("$", "").split(":").map(placeOf);
  const [first, last] = [itemAt(corners, 0), lastOf(corners)];
  const cells: SheetCell[] = [];
  for (let row = first.row; row <= last.row; row++) {
    for (let column = first.column; column <= last.column; column++) {
      const at = cellAddress(column, row);
      const isFirst = row === first.row && column === first.column;
      cells.push(isFirst ? formula(at, code, "result", { format }) : { at, value: null, style: "result", format });
    }
  }
  return cells;
}

/** Columns "E" or "E:F" between two rows, as a formula may copy it: $E$9:$F$24. */
export function inRows(letters: string, first: number, last: number): string {
  const [from, to = from] = letters.split(":");
  return `$${from!}$${first}:$${to!}$${last}`;
}

/**
 * What stands in a table in the formula's own row; or, where that row belongs to another header, in the row of the same place. A formula
 * that names the cell itself follows it when somebody cuts and pastes it: the entry then counts in its old row, too.
 */
export const thisRow = (letters: string, header: number, last: number, own = header): string =>
  `INDEX(${inRows(letters, header, last)},ROW()-ROW($A$${own})+1${letters.includes(":") ? ",0" : ""})`;
