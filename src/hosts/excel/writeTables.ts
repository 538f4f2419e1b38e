import type { SheetTable } from "../../sheets/workbook";

/** Tables with a filter in their header. Excel's own bands would cover our looks, so they get its plainest style. */
export function writeTables(sheet: Excel.Worksheet, tables: readonly SheetTable[]): void {
  for (const { name, range } of tables) {
    const table = sheet.tables.add(sheet.getRange(range), true);
    table.name = name;
    table.style = "TableStyleLight1";
    table.showBandedRows = false;
  }
}
