import type { Flag, Sheet, SheetTable } from "../../sheets/workbook";
import { rangeAt, rectangleAt, withoutSheet } from "./rangeAt";
import { linesOfPoints, widthOfPoints } from "./measures";
import { itemAt } from "../../reference/itemAt";

export type Layout = Pick<Sheet, "columns" | "tallRows" | "frozen" | "gridlines">;

/** Widths and heights from the first cell to the last one used, and what is frozen. */
export async function readLayout(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
): Promise<Layout> {
  const whole = sheet.getRange("A1").getBoundingRect(used);
  const widths = whole.getColumnProperties({ format: { columnWidth: true } });
  whole.load("rowCount");
  const frozen = sheet.freezePanes.getLocationOrNullObject();
  frozen.load("address,rowCount,columnCount,isEntireRow,isEntireColumn");
  sheet.load("showGridlines");
  await context.sync();
  const heights = await readHeights(context, sheet, whole.rowCount);
  return {
    ...(sheet.showGridlines ? {} : { gridlines: false as const }),
    columns: widths.value.map(({ format }) => widthOfPoints(format?.columnWidth ?? 0)),
    tallRows: heights.flatMap((height, index) => {
      const lines = linesOfPoints(height);
      return lines > 1 ? [{ row: index + 1, lines }] : [];
    }),
    frozen: frozen.isNullObject
      ? { rows: 0, columns: 0 }
      : {
          rows: frozen.isEntireColumn ? 0 : frozen.rowCount,
          columns: frozen.isEntireRow ? 0 : frozen.columnCount,
        },
  };
}

const AT_ONCE = 20_000; // rows in one answer, which holds 5 MB

/** In points, from the first row on. */
async function readHeights(context: Excel.RequestContext, sheet: Excel.Worksheet, rows: number): Promise<number[]> {
  const heights: number[] = [];
  for (let from = 1; from <= rows; from += AT_ONCE) {
    const some = { top: from, bottom: Math.min(rows, from + AT_ONCE - 1), left: 1, right: 1 };
    heights.push(...(await heightsOf(context, rangeAt(sheet, some))));
  }
  return heights;
}

async function heightsOf(context: Excel.RequestContext, range: Excel.Range): Promise<number[]> {
  const heights = range.getRowProperties({ format: { rowHeight: true } });
  await context.sync();
  return heights.value.map(({ format }) => format?.rowHeight ?? 0);
}

/** Conditional formats by the text that a cell holds; the rest has no place in a description. */
export async function readFlags(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Flag[]> {
  const { conditionalFormats } = sheet.getRange();
  conditionalFormats.load("items/type");
  await context.sync();
  const flags = conditionalFormats.items
    .filter(({ type }) => type === "ContainsText")
    .map((item) => ({ range: item.getRangeOrNullObject(), text: item.textComparison }));
  for (const { range, text } of flags) {
    range.load("address");
    text.load("rule");
  }
  await context.sync();
  return flags.flatMap(({ range, text }) =>
    range.isNullObject || rectangleAt(range.address) === null || text.rule.operator !== "Contains"
      ? []
      : [{ range: withoutSheet(range.address), containsText: text.rule.text, style: "flag" as const }],
  );
}

export async function readTables(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<SheetTable[]> {
  const { tables } = sheet;
  tables.load("items/name");
  await context.sync();
  const ranges = tables.items.map((table) => table.getRange());
  for (const range of ranges) range.load("address");
  await context.sync();
  return tables.items.map(({ name }, index) => ({ name, range: withoutSheet(itemAt(ranges, index).address) }));
}
