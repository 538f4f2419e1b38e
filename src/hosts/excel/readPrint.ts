import type { PrintSetup, SharedOut } from "../../sheets/workbook";
import { rectangleAt, withoutSheet } from "./rangeAt";

/** Undefined where the paper is neither of the two that a description knows, or Excel has no printer to ask. */
export async function readPrint(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<PrintSetup | undefined> {
  const { pageLayout } = sheet;
  pageLayout.load("orientation,paperSize,zoom");
  const breaks = [sheet.horizontalPageBreaks, sheet.verticalPageBreaks] as const;
  for (const collection of breaks) collection.load("items/rowIndex");
  const rows = pageLayout.getPrintTitleRowsOrNullObject();
  const area = pageLayout.getPrintAreaOrNullObject();
  rows.load("rowIndex,rowCount");
  const columns = pageLayout.getPrintTitleColumnsOrNullObject();
  columns.load("columnIndex,columnCount");
  area.load("address");
  const isKnown = await context.sync().then(
    () => true,
    () => false,
  );
  if (!isKnown || (pageLayout.paperSize !== "A4" && pageLayout.paperSize !== "Letter")) return undefined;
  const { horizontalFitToPages: pagesWide = 1, verticalFitToPages: pagesHigh } = pageLayout.zoom;
  const shared = await readShared(context, pageLayout.zoom.scale, breaks);
  const [printed, ...others] = area.isNullObject
    ? []
    : area.address.split(",").filter((one) => rectangleAt(one) !== null);
  return {
    paper: pageLayout.paperSize,
    landscape: pageLayout.orientation === "Landscape",
    ...(shared === null ? {} : { shared }),
    ...(pagesWide > 1 ? { pagesWide } : {}),
    ...(pagesHigh === undefined ? {} : { pagesHigh }),
    ...(rows.isNullObject ? {} : { titleRows: { first: rows.rowIndex + 1, last: rows.rowIndex + rows.rowCount } }),
    ...(columns.isNullObject
      ? {}
      : { titleColumns: { first: columns.columnIndex + 1, last: columns.columnIndex + columns.columnCount } }),
    ...(printed !== undefined && others.length === 0 ? { area: withoutSheet(printed) } : {}),
  };
}

/** Where pages begin by the wish of the sheet's maker; null where nobody wished, or the sheet is fitted to pages. */
async function readShared(
  context: Excel.RequestContext,
  scale: number | null | undefined,
  breaks: readonly [Excel.PageBreakCollection, Excel.PageBreakCollection],
): Promise<SharedOut | null> {
  if (scale == null || breaks.every(({ items }) => items.length === 0)) return null;
  const [rows, columns] = breaks.map(({ items }) => items.map((one) => one.getCellAfterBreak())) as [
    Excel.Range[],
    Excel.Range[],
  ];
  for (const cell of [...rows, ...columns]) cell.load("rowIndex,columnIndex");
  await context.sync();
  return {
    scale,
    rows: rows.map(({ rowIndex }) => rowIndex + 1),
    columns: columns.map((cell) => cell.columnIndex + 1),
  };
}
