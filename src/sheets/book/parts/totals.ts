import { cellAddress, placeOf } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";

export interface Total {
  readonly label: string;
  readonly code: string; // a whole formula
  readonly format: string;
  readonly unit?: string; // a whole formula
}

/**
 * Labels under one another, each with its value and its unit.
 *
 * @param at cell of the first label
 * @param reach columns from the label to the value; a label runs over the empty cells between
 */
export function totals(at: string, reach: number, list: readonly Total[]): SheetCell[] {
  const { column, row } = placeOf(at);
  return list.flatMap(({ label, code, format, unit }, index) => [
    text(cellAddress(column, row + index), label, "label"),
    formula(cellAddress(column + reach, row + index), code, "total", { format }),
    ...(unit === undefined ? [] : [formula(cellAddress(column + reach + 1, row + index), unit, "unit")]),
  ]);
}
