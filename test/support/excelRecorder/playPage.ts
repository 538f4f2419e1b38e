import type { Played } from "./object";
import { areaOn, fullAddress } from "./places";
import { misuse } from "./refuse";
import { type Area, type BreaksState, LAST_COLUMN, LAST_ROW } from "./state";

/** Page set-up, and areas that lie apart. */
export const playPage: Record<string, Played> = {
  PageLayout: {
    reads: {
      orientation: ({ print }) => print.orientation ?? "Portrait",
      paperSize: ({ print }) => print.paperSize ?? "A4",
      zoom: ({ print }) => print.zoom ?? { scale: 100 },
    },
    writes: {
      orientation: ({ print }, value) => (print.orientation = value),
      paperSize: ({ print }, value) => (print.paperSize = value),
      zoom: ({ print }, value) => (print.zoom = value),
    },
    calls: {
      setPrintTitleRows: (sheet, rows: string) => {
        if (areaOn(sheet, rows).columns !== LAST_COLUMN) throw misuse("title rows are whole rows");
        sheet.print.titleRows = rows;
      },
      setPrintTitleColumns: (sheet, columns: string) => {
        if (areaOn(sheet, columns).rows !== LAST_ROW) throw misuse("title columns are whole columns");
        sheet.print.titleColumns = columns;
      },
      setPrintArea: (sheet, area) => (sheet.print.area = area),
      getPrintTitleRowsOrNullObject: (sheet) =>
        sheet.print.titleRows === undefined ? null : areaOn(sheet, sheet.print.titleRows),
      getPrintTitleColumnsOrNullObject: (sheet) =>
        sheet.print.titleColumns === undefined ? null : areaOn(sheet, sheet.print.titleColumns),
      getPrintAreaOrNullObject: (sheet) => (sheet.print.area === undefined ? null : [areaOn(sheet, sheet.print.area)]),
    },
  },
  PageBreakCollection: {
    items: ({ sheet, along }: BreaksState) => sheet.breaks[along].map((address) => areaOn(sheet, address)),
    calls: {
      add: ({ sheet, along }: BreaksState, address: string) => {
        const after = areaOn(sheet, address);
        if ((along === "rows" ? after.row : after.column) === 1) throw misuse("no page can begin before the first");
        sheet.breaks[along].push(address);
        return after;
      },
    },
  },
  PageBreak: { reads: { rowIndex: ({ row }: Area) => row - 1 }, calls: { getCellAfterBreak: (after: Area) => after } },
  RangeAreas: {
    reads: { address: (areas: Area[]) => areas.map(fullAddress).join(",") },
    parts: { areas: (areas) => areas },
  },
  RangeCollection: {
    items: (areas: Area[]) => areas,
    calls: { getItemAt: (areas: Area[], index: number) => areas[index] ?? null },
  },
};
