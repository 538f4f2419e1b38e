import type { CellStyle } from "hucre/xlsx";
import { type Look, lookOf, type StyleName, USUAL_SIZE } from "../../../sheets/styles";
import type { CellLook } from "../../../sheets/workbook";

export const FONT = "Arial"; // its digits are as wide as the widths of columns count on; every platform has it or its twin

const BOX = { style: "thin", color: { rgb: "A08A4A" } } as const;
const BELOW = { style: "medium", color: { rgb: "5C7A78" } } as const;

const borders = {
  box: { top: BOX, right: BOX, bottom: BOX, left: BOX },
  below: { bottom: BELOW },
} as const;

const colour = (hex: string): { rgb: string } => ({ rgb: hex.slice(1).toUpperCase() });

/** How a cell looks and shows its number, as hucre takes it; undefined where nothing is said. */
export function cellStyle({ style, format }: Pick<CellLook, "style" | "format">): CellStyle | undefined {
  const look = style === undefined ? undefined : lookOf(style);
  if (look === undefined) return format === undefined ? undefined : { numFmt: format };
  return {
    font: { name: FONT, size: look.size ?? USUAL_SIZE, color: colour(look.ink), ...emphasis(look) },
    ...(look.fill === undefined
      ? {}
      : { fill: { type: "pattern", pattern: "solid", fgColor: colour(look.fill) } as const }),
    ...(look.border === undefined ? {} : { border: borders[look.border] }),
    ...(look.align === undefined && !look.wrap ? {} : { alignment: alignment(look) }),
    ...(format === undefined ? {} : { numFmt: format }),
  };
}

/** What a flag changes of a cell. A fill of a conditional format stands in its background colour. */
export function flagStyle(style: StyleName): CellStyle {
  const look = lookOf(style);
  return {
    font: { color: colour(look.ink), ...emphasis(look) },
    ...(look.fill === undefined
      ? {}
      : {
          fill: { type: "pattern", pattern: "solid", fgColor: colour(look.fill), bgColor: colour(look.fill) } as const,
        }),
  };
}

const emphasis = ({ bold, italic }: Look): { bold?: true; italic?: true } => ({
  ...(bold ? { bold } : {}),
  ...(italic ? { italic } : {}),
});

const alignment = ({ align, wrap }: Look): NonNullable<CellStyle["alignment"]> => ({
  ...(align === undefined ? {} : { horizontal: align }),
  ...(wrap ? { wrapText: true, vertical: "center" } : {}),
});
