import { columnLetters } from "../../sheets/address";
import type { PrintSetup } from "../../sheets/workbook";

/** As many pages wide and high as it was told, or one wide and as many high as it needs. */
export function writePrint({ pageLayout }: Excel.Worksheet, print: PrintSetup): void {
  const { paper, landscape, pagesWide = 1, pagesHigh, titleRows, titleColumns, area } = print;
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.paperSize = paper;
  pageLayout.zoom = {
    horizontalFitToPages: pagesWide,
    ...(pagesHigh === undefined ? {} : { verticalFitToPages: pagesHigh }),
  };
  if (titleRows !== undefined) pageLayout.setPrintTitleRows(`$${titleRows.first}:$${titleRows.last}`);
  if (titleColumns !== undefined)
    pageLayout.setPrintTitleColumns(`$${columnLetters(titleColumns.first)}:$${columnLetters(titleColumns.last)}`);
  if (area !== undefined) pageLayout.setPrintArea(area);
}
