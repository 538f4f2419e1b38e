import { columnLetters, placeOf } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import { inRows } from "../parts/block";
import { LOOK } from "../parts/look";
import {
  GAIN_COLUMN,
  HOODS_FIRST,
  HOODS_LAST,
  LOG,
  LOG_FIRST,
  LOG_LAST,
  METER,
  REPEATS,
  TURNED,
  WORKED,
  WORKED_FIRST,
  WORKED_LAST,
  workedRow,
} from "./layout";

/**
 * Everything on this sheet is one formula beside another, and a number typed or pasted over one looks like its result. So each row says in a
 * column at the right whether all its formulas stand, the log in the rows of what follows from it. What is in short above reads those,
 * and is asked by the line over it.
 */

const COLUMN = "AE";
const ABOVE = `$${COLUMN}$${WORKED}`; // of the meter, and of the heading that a function has in the log
const worked = inRows(COLUMN, WORKED_FIRST, WORKED_LAST);
const hoods = inRows(COLUMN, HOODS_FIRST, HOODS_LAST);

/** Whether something was typed or pasted over a formula below what is in short. */
export const isTypedOver = `COUNTIF(${ABOVE}:$${COLUMN}$${HOODS_LAST},"<1")>0`;

/** Whether this is a part of the sheet that was copied without its columns at the right. Told by a heading: what the log shows is asked by the column above. */
export const isLeftBehind = `ISBLANK($${TURNED}$${WORKED})`;
export const LEFT_BEHIND = `copied without the columns up to ${COLUMN}`;

const typedOver = (where: string): string =>
  `"${LOOK} something was typed or pasted over a formula "&${where}&": undo that"`;
const firstOf = (range: string): string => `ROW(INDEX(${range},MATCH(0,${range},0)))`;
const ofLog = `"of row "&(${firstOf(worked)}-${WORKED - LOG})&" or "&${firstOf(worked)}`;

/** In which row it was. */
export const typedOverSaid = typedOver(
  `IF(${ABOVE}=0,"of the meter, or in ${columnLetters(GAIN_COLUMN)}${LOG}",IF(COUNTIF(${worked},"<1")>0,${ofLog},"of row "&${firstOf(hoods)}))`,
);

const stands = ({ at }: SheetCell): string => `ISFORMULA(${at})`;

/** A line over some formulas that says, in place of its own words, that one of them is gone. */
export function unlessTypedOver(words: string, cells: readonly SheetCell[], rows: string): string {
  const all = cells.filter((cell) => "formula" in cell).map(stands);
  return `IF(AND(${all.join(",")}),${words},${typedOver(`"of rows ${rows}"`)})`;
}

/** The cells that say so of each row. Of a block that a function fills only the first cell has a formula. */
export function standing(cells: readonly SheetCell[]): SheetCell[] {
  const rows = new Map<number, string[]>();
  for (const cell of cells) {
    const row = "formula" in cell ? ownRow(cell.at) : null;
    if (row !== null) rows.set(row, [...(rows.get(row) ?? []), stands(cell)]);
  }
  return [
    text(`${COLUMN}${WORKED - 1}`, "1: the formulas of this row stand; 0: something is over one", "note"),
    ...[...rows].map(([row, all]) => formula(`${COLUMN}${row}`, `=IFERROR(1*AND(${all.join(",")}),1)`, "unit")), // an error where cells were deleted
  ];
}

/** Where it is said of a formula; headings name nothing but units. */
function ownRow(at: string): number | null {
  const { row, column } = placeOf(at);
  if ((row >= METER && row <= REPEATS) || (row === LOG && column === GAIN_COLUMN)) return WORKED;
  if (row >= LOG_FIRST && row <= LOG_LAST) return workedRow(row);
  const isBelow = (row >= WORKED_FIRST && row <= WORKED_LAST) || (row >= HOODS_FIRST && row <= HOODS_LAST);
  return isBelow ? row : null;
}
