import type { PrintSetup } from "../../sheets/workbook";

/** One page wide and as many high as it needs. */
export function writePrint({ pageLayout }: Excel.Worksheet, { paper, landscape, titleRows, area }: PrintSetup): void {
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.paperSize = paper;
  pageLayout.zoom = { horizontalFitToPages: 1 };
  if (titleRows !== undefined) pageLayout.setPrintTitleRows(`$${titleRows.first}:$${titleRows.last}`);
  if (area !== undefined) pageLayout.setPrintArea(area);
}
