import { STAYS_TEXT, TEXT } from "../../sheets/textCells";
import type { CellValue, SheetCell } from "../../sheets/workbook";

/** What a person would type to get this cell; a text that could be taken for something else is marked as text. */
export function contentOf(cell: { readonly value: CellValue } | { readonly formula: string } | SheetCell): string {
  if ("formula" in cell) return cell.formula;
  if (cell.value === null) return "";
  if (typeof cell.value !== "string") return String(cell.value).toUpperCase();
  return "format" in cell && cell.format === TEXT && STAYS_TEXT.test(cell.value) ? cell.value : textContent(cell.value);
}

/** Text that does not begin with a letter could be taken for a formula, a number or a date, and so could a truth value. */
export const textContent = (value: string): string =>
  /^\p{L}/u.test(value) && !/^(true|false)$/i.test(value) ? value : `'${value}`;

/** What a cell for text alone holds, of what stands in it. */
export const textOfContent = (content: string): string =>
  content.startsWith("'") && content.length > 1 && !STAYS_TEXT.test(content.slice(1)) ? content.slice(1) : content;
