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
  const named = Math.max(1, frozen.columns);
  const widths = columns.slice(0, lastColumn(print.area) ?? columns.length).map(pointsOf);
  const pagesWide = pagesFor(widths, named, roomOn(print));
  return pagesWide === 1
    ? sheet
    : { ...sheet, print: { ...print, pagesWide, titleColumns: { first: 1, last: named } } };
}

const lastColumn = (area: string | undefined): number | undefined =>
  area === undefined ? undefined : (readRectangle(area)?.right ?? placeOf(area).column);

/** How wide a page is, in points of a sheet that is drawn as small as it may be. */
function roomOn({ paper, landscape }: PrintSetup): number {
  const across = INCHES[paper][landscape ? "long" : "narrow"] - MARGINS.left - MARGINS.right;
  return ((ROUNDING * across * POINTS) / LEAST_SIZE) * USUAL_SIZE;
}

/** Pages side by side, the first columns on each; a column is never cut. */
function pagesFor(widths: readonly number[], named: number, room: number): number {
  const names = widths.slice(0, named).reduce((sum, width) => sum + width, 0);
  let pages = 1;
  let taken = names;
  for (const width of widths.slice(named)) {
    if (taken + width > room && taken > names) {
      pages += 1;
      taken = names;
    }
    taken += width;
  }
  return pages;
}
