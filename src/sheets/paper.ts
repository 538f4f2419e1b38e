import { itemAt } from "../reference/itemAt";
import type { UnitSystem } from "../reference/quantities";
import { placeOf } from "./address";
import { highOf, pagesBegin } from "./pagesBegin";
import { readRectangle, rectangleOf } from "./rectangle";
import { USUAL_SIZE } from "./styles";
import type { PrintSetup, Sheet } from "./workbook";

/** Paper of the unit system's countries. */
export const paperOf = (units: UnitSystem): PrintSetup["paper"] => (units === "SI" ? "A4" : "Letter");

/** Inches around what is printed. */
export const MARGINS = { left: 0.4, right: 0.4, top: 0.6, bottom: 0.5, header: 0.3, footer: 0.25 } as const;

const POINTS = 72; // of an inch
const INCHES = { A4: { narrow: 8.27, long: 11.69 }, Letter: { narrow: 8.5, long: 11 } } as const;
const LEAST_SIZE = 7; // points: letters that are read without a glass
const ROUNDING = 0.93; // some programs draw columns a twentieth wider than they are written, and round upwards

/** Points of a column: seven pixels for each character and five around them, at 96 pixels an inch. */
const pointsOf = (characters: number): number => (7 * characters + 5) * (POINTS / 96);

/** Columns, counted from 1. */
type Span = Readonly<Record<"first" | "last", number>>;

/**
 * The sheet as it can be read on paper: where one page wide would make its letters too small it takes more pages side by side,
 * with the columns that name its rows on each; and a part with a heading of its own begins a page rather than being cut.
 *
 * @param whole columns that one page must show together, such as a note and those that it runs over; a picture's are known
 */
export function legible(sheet: Sheet, whole: readonly Span[] = []): Sheet {
  const { print, columns, frozen, charts = [] } = sheet;
  if (print === undefined || print.pagesHigh !== undefined) return sheet;
  const named = namedColumns(frozen.columns);
  const widths = columns.slice(0, lastColumn(print.area) ?? columns.length).map(pointsOf);
  const pictures = charts.map(({ over }) => rectangleOf(over)).map(({ left, right }) => ({ first: left, last: right }));
  const pages = pagesAcross(widths, named, print, [...whole, ...pictures]);
  const widest = Math.max(...pages.map((page) => widthOf(page, widths)));
  const { across, down } = roomOn(print);
  const byWidth = Math.min(100, Math.floor((100 * ROUNDING * across) / widest));
  const rows = pagesBegin(sheet, (100 * down) / byWidth);
  if (pages.length === 1 && rows.length === 0) return sheet;
  const scale = rows.length > 0 ? byWidth : fewerHigh(byWidth, highOf(sheet), down);
  const shared = { scale, rows, columns: pages.slice(1).map((page) => itemAt(page, named) + 1) };
  const titleColumns = pages.length === 1 ? {} : { titleColumns: { first: 1, last: named } };
  return { ...sheet, print: { ...print, shared, ...titleColumns } };
}

/** A percentage a little smaller where that spares the last paper of each column of them, and is read without a glass. */
function fewerHigh(scale: number, high: number, down: number): number {
  const papers = Math.ceil((high * scale) / 100 / down);
  const smaller = Math.floor((100 * down * (papers - 1)) / high);
  return papers > 1 && smaller >= (100 * LEAST_SIZE) / USUAL_SIZE ? smaller : scale;
}

const widthOf = (columns: readonly number[], widths: readonly number[]): number =>
  columns.reduce((sum, column) => sum + (widths[column] ?? 0), 0);

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
 * @param whole columns that one page shows together, counted from 1, where a page has room for them
 */
export function pagesAcross(
  widths: readonly number[],
  named: number,
  format: Format,
  whole: readonly Span[] = [],
): number[][] {
  const names = [...widths.keys()].slice(0, named);
  const room = ((ROUNDING * roomOn(format).across) / LEAST_SIZE) * USUAL_SIZE - widthOf(names, widths);
  const pages = [[...names]];
  let taken = 0;
  const take = (columns: readonly number[]): void => {
    const width = widthOf(columns, widths);
    if (taken + width > room && columns.length > 1 && width > room) return columns.forEach((column) => take([column]));
    if (taken + width > room && taken > 0) {
      pages.push([...names]);
      taken = 0;
    }
    pages.at(-1)?.push(...columns);
    taken += width;
  };
  for (const group of groupsOf([...widths.keys()].slice(named), whole)) take(group);
  return pages;
}

/** Columns one by one, and together where they are wanted so. */
function groupsOf(columns: readonly number[], whole: readonly Span[]): number[][] {
  const groups: number[][] = [];
  const isIn = (column: number, { first, last }: Span): boolean => first <= column + 1 && column + 1 <= last;
  for (const column of columns) {
    const before = groups.at(-1);
    const goesOn = whole.some((one) => isIn(column, one) && before !== undefined && isIn(before.at(-1) ?? -1, one));
    if (goesOn) before?.push(column);
    else groups.push([column]);
  }
  return groups;
}
