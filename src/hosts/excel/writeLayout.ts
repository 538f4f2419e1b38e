import { cellAddress, columnLetters } from "../../sheets/address";
import type { Sheet } from "../../sheets/workbook";
import { pointsOfLines, pointsOfWidth } from "./measures";

/** Widths, heights and what stays in view while one scrolls. */
export function writeLayout(sheet: Excel.Worksheet, { columns, tallRows, frozen, gridlines }: Sheet): void {
  columns.forEach((width, index) => {
    const letters = columnLetters(index + 1);
    sheet.getRange(`${letters}:${letters}`).format.columnWidth = pointsOfWidth(width);
  });
  for (const { row, lines } of tallRows) sheet.getRange(`${row}:${row}`).format.rowHeight = pointsOfLines(lines);
  freeze(sheet.freezePanes, frozen);
  if (gridlines === false) sheet.showGridlines = false;
}

function freeze(panes: Excel.WorksheetFreezePanes, { rows, columns }: Sheet["frozen"]): void {
  if (rows > 0 && columns > 0) panes.freezeAt(`A1:${cellAddress(columns, rows)}`);
  else if (rows > 0) panes.freezeRows(rows);
  else if (columns > 0) panes.freezeColumns(columns);
}
