import type { UnitSystem } from "../reference/quantities";
import { placeOf } from "./address";
import { readRectangle } from "./rectangle";
import { USUAL_SIZE } from "./styles";
import type { PrintSetup, Sheet } from "./workbook";

/** Paper of the unit system's countries. */
export const paperOf = (units: UnitSystem): PrintSetup["paper"] => (units === "SI" ? "A4" : "Letter");

/** Inches around what is printed. */
export const MARGINS = { left: 0.4, right: 0.4, top: 0.75, bottom: 0.6, header: 0.3, footer: 0.3 } as const;

const POINTS = 72; // of an inch
const INCHES = { A4: { narrow: 8.27, long: 11.69 }, Letter: { narrow: 8.5, long: 11 } } as const;
const LEAST_SIZE = 7; // points: letters that are read without a glass
const ROUNDING = 0.93; // some programs draw columns a twentieth wider than they are written, and round upwards

/** Points of a column: seven pixels for each character and five around them, at 96 pixels an inch. */
const pointsOf = (characters: number): number => (7 * characters + 5) * (POINTS / 96);

/**
 * The sheet as it can be read on paper: where one page wide would make its letters too small it takes more pages side by side,
 * with the columns that name its rows on each.
 */
export function legible(sheet: Sheet): Sheet {
  const { print, columns, frozen } = sheet;
  if (print === undefined) return sheet;
  const named = namedColumns(frozen.columns);
  const widths = columns.slice(0, lastColumn(print.area) ?? columns.length).map(pointsOf);
  const pagesWide = pagesAcross(widths, named, print).length;
  return pagesWide === 1
    ? sheet
    : { ...sheet, print: { ...print, pagesWide, titleColumns: { first: 1, last: named } } };
}

const lastColumn = (area: string | undefined): number | undefined =>
  area === undefined ? undefined : (readRectangle(area)?.right ?? placeOf(area).column);

/** How many columns come back on each page: those that stay on the screen, or the first. */
export const namedColumns = (frozen: number): number => Math.max(1, frozen);

type Format = Pick<PrintSetup, "paper" | "landscape">;

/** Points of a page between its margins. */
export function roomOn({ paper, landscape }: Format): { readonly across: number; readonly down: number } {
  const inches = INCHES[paper];
  const [wide, high] = landscape ? [inches.long, inches.narrow] : [inches.narrow, inches.long];
  return {
    across: (wide - MARGINS.left - MARGINS.right) * POINTS,
    down: (high - MARGINS.top - MARGINS.bottom) * POINTS,
  };
}

/**
 * Which columns stand on each of the pages side by side, counted from 0: the first ones on each, a column never cut, and no letter
 * smaller than can be read.
 *
 * @param widths in points
 */
export function pagesAcross(widths: readonly number[], named: number, format: Format): number[][] {
  const room = ((ROUNDING * roomOn(format).across) / LEAST_SIZE) * USUAL_SIZE;
  const names = [...widths.keys()].slice(0, named);
  const nameWidth = names.reduce((sum, column) => sum + (widths[column] ?? 0), 0);
  const pages = [[...names]];
  let taken = nameWidth;
  for (const [column, width] of [...widths.entries()].slice(named)) {
    if (taken + width > room && taken > nameWidth) {
      pages.push([...names]);
      taken = nameWidth;
    }
    pages.at(-1)?.push(column);
    taken += width;
  }
  return pages;
}
