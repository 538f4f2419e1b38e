import type { TableDefinition } from "hucre/xlsx";
import { cellAddress } from "../../../sheets/address";
import type { Sheet } from "../../../sheets/workbook";
import { readRectangle, type Rectangle, rectangleText } from "../../../sheets/rectangle";
import { toFileText } from "../xlsxText";

/**
 * A sheet's tables as hucre takes them. The format wants headers that are different texts, and a row below them; where
 * somebody has changed that, the cells are written without their table, which Excel would call damaged.
 */
export const fileTables = (sheet: Sheet): TableDefinition[] =>
  (sheet.tables ?? []).flatMap((table) => {
    const range = readRectangle(table.range);
    const headers = range === null ? null : headersOf(sheet, range);
    if (range === null || headers === null) return [];
    return [
      {
        name: table.name,
        range: rectangleText(range),
        columns: headers.map((name) => ({ name: toFileText(name) })),
        style: "TableStyleLight1",
        showRowStripes: false,
      },
    ];
  });

function headersOf(sheet: Sheet, { top, left, bottom, right }: Rectangle): string[] | null {
  if (top === bottom) return null;
  const values = new Map(sheet.cells.map((cell) => [cell.at, "value" in cell ? cell.value : null]));
  const headers: string[] = [];
  for (let column = left; column <= right; column++) {
    const value = values.get(cellAddress(column, top));
    if (typeof value !== "string" || value === "") return null;
    headers.push(value);
  }
  const different = new Set(headers.map((header) => header.toLowerCase()));
  return different.size === headers.length ? headers : null;
}
