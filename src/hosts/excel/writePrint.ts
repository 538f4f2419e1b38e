import { columnLetters } from "../../sheets/address";
import type { PrintSetup } from "../../sheets/workbook";

/** As many pages wide and high as it was told, or one wide and as many high as it needs; or shared out as its maker did. */
export function writePrint(sheet: Excel.Worksheet, print: PrintSetup): void {
  const { pageLayout } = sheet;
  const { paper, landscape, titleRows, titleColumns, area, shared } = print;
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.paperSize = paper;
  pageLayout.zoom = shared === undefined ? fitted(print) : { scale: shared.scale };
  for (const row of shared?.rows ?? []) sheet.horizontalPageBreaks.add(`A${row}`);
  for (const column of shared?.columns ?? []) sheet.verticalPageBreaks.add(`${columnLetters(column)}1`);
  if (titleRows !== undefined) pageLayout.setPrintTitleRows(`$${titleRows.first}:$${titleRows.last}`);
  if (titleColumns !== undefined)
    pageLayout.setPrintTitleColumns(`$${columnLetters(titleColumns.first)}:$${columnLetters(titleColumns.last)}`);
  if (area !== undefined) pageLayout.setPrintArea(area);
}

const fitted = ({ pagesWide = 1, pagesHigh }: PrintSetup): Excel.PageLayoutZoomOptions => ({
  horizontalFitToPages: pagesWide,
  ...(pagesHigh === undefined ? {} : { verticalFitToPages: pagesHigh }),
});
