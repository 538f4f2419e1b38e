import type { TableDefinition } from "hucre/xlsx";
import { cellAddress } from "../../../sheets/address";
import type { Sheet, SheetTable } from "../../../sheets/workbook";
import { plainRange, readArea } from "../places";
import { toFileText } from "../xlsxText";

/**
 * A sheet's tables as hucre takes them. The format wants headers that are different texts, and a row below them; where
 * somebody has changed that, the cells are written without their table, which Excel would call damaged.
 */
export const fileTables = (sheet: Sheet): TableDefinition[] =>
  (sheet.tables ?? []).flatMap((table) => {
    const headers = headersOf(sheet, table);
    if (headers === null) return [];
    return [
      {
        name: table.name,
        range: plainRange(table.range)!,
        columns: headers.map((name) => ({ name: toFileText(name) })),
        style: "TableStyleLight1",
        showRowStripes: false,
      },
    ];
  });

function headersOf(sheet: Sheet, { range }: SheetTable): string[] | null {
  const area = readArea(range);
  if (area === null || area.first.row === area.last.row) return null;
  const values = new Map(sheet.cells.map((cell) => [cell.at, "value" in cell ? cell.value : null]));
  const headers: string[] = [];
  for (let column = area.first.column; column <= area.last.column; column++) {
    const value = values.get(cellAddress(column, area.first.row));
    if (typeof value !== "string" || value === "") return null;
    headers.push(value);
  }
  const different = new Set(headers.map((header) => header.toLowerCase()));
  return different.size === headers.length ? headers : null;
}
