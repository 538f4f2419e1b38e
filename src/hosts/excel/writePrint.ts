import type { PrintSetup } from "../../sheets/workbook";

/** One page wide, and as many high as it needs where it is not told. */
export function writePrint({ pageLayout }: Excel.Worksheet, print: PrintSetup): void {
  const { paper, landscape, pagesHigh, titleRows, area } = print;
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.paperSize = paper;
  pageLayout.zoom = { horizontalFitToPages: 1, ...(pagesHigh === undefined ? {} : { verticalFitToPages: pagesHigh }) };
  if (titleRows !== undefined) pageLayout.setPrintTitleRows(`$${titleRows.first}:$${titleRows.last}`);
  if (area !== undefined) pageLayout.setPrintArea(area);
}
