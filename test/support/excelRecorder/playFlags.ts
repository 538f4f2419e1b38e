import { addressIn, areaOn } from "./places";
import type { Played } from "./object";
import type { Area } from "./state";

/** Conditional formats. */
export const playFlags: Record<string, Played> = {
  ConditionalFormatCollection: {
    items: ({ sheet }: Area) => sheet.flags,
    calls: {
      add: (area: Area, type: string) => {
        const flag = { sheet: area.sheet, range: addressIn(area), type, rule: null, format: {} };
        area.sheet.flags.push(flag);
        return flag;
      },
    },
  },
  ConditionalFormat: {
    reads: { type: ({ type }) => type },
    parts: { textComparison: (flag) => flag },
    calls: { getRangeOrNullObject: ({ sheet, range }) => areaOn(sheet, range) },
  },
  TextConditionalFormat: {
    reads: { rule: ({ rule }) => rule },
    writes: { rule: (flag, rule) => (flag.rule = rule) },
    parts: { format: (flag) => flag.format },
  },
  ConditionalRangeFormat: { parts: { font: (format) => format, fill: (format) => format } },
  ConditionalRangeFont: {
    writes: { color: (format, value) => (format.ink = value), bold: (format, value) => (format.bold = value) },
  },
  ConditionalRangeFill: { writes: { color: (format, value) => (format.fill = value) } },
};
