import type { CellValue, SheetCell } from "../../sheets/workbook";

/** What a person would type to get this cell; a text that could be taken for something else is marked as text. */
export function contentOf(cell: { readonly value: CellValue } | { readonly formula: string } | SheetCell): string {
  if ("formula" in cell) return cell.formula;
  if (cell.value === null) return "";
  return typeof cell.value === "string" ? textContent(cell.value) : String(cell.value).toUpperCase();
}

/** Text that does not begin with a letter could be taken for a formula, a number or a date, and so could a truth value. */
export const textContent = (value: string): string =>
  /^\p{L}/u.test(value) && !/^(true|false)$/i.test(value) ? value : `'${value}`;
