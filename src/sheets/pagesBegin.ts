import { placeOf } from "./address";
import { readRectangle } from "./rectangle";
import type { Sheet } from "./workbook";

const LINE = 13; // points of a line of the usual font
/** Points of a row of one line, a little more than the font needs. */
export const ROW_POINTS = 13.5;
const ENOUGH = 0.4; // of a page: one that would end above that is rather left to be cut
const SURE = 0.95; // of a page: rows with large letters grow as a program opens them

/** Points of all rows that are printed. */
export const highOf = (sheet: Sheet): number => highBetween(sheet, 1, lastRow(sheet) + 1);

function highBetween({ tallRows }: Pick<Sheet, "tallRows">, from: number, to: number): number {
  const tall = tallRows.filter(({ row }) => from <= row && row < to);
  const lines = tall.reduce((sum, one) => sum + one.lines * LINE + 2, 0);
  return Math.max(0, to - from - tall.length) * ROW_POINTS + lines;
}

const lastRow = ({ cells, print }: Sheet): number =>
  readRectangle(print?.area ?? "")?.bottom ?? Math.max(0, ...cells.map(({ at }) => placeOf(at).row));

/**
 * Rows with which a page begins: those of the headings in column A whose part a page's end would cut.
 *
 * @param room points of a page from top to bottom, at the size on the screen
 */
export function pagesBegin(sheet: Sheet, room: number): number[] {
  const last = lastRow(sheet);
  const high = (from: number, to: number): number => highBetween(sheet, from, to);
  const headings = sheet.cells
    .filter(({ at, style }) => style === "section" && /^A\d+$/.test(at))
    .map(({ at }) => placeOf(at).row)
    .filter((row) => row > 1 && row <= last)
    .sort((one, other) => one - other);
  const { titleRows } = sheet.print ?? {};
  const titles = titleRows === undefined ? 0 : high(titleRows.first, titleRows.last + 1);
  const begins: number[] = [];
  let top = 1;
  headings.forEach((row, index) => {
    const above = begins.length === 0 ? 0 : titles;
    const fits = above + high(top, headings[index + 1] ?? last + 1) <= SURE * room;
    if (fits || above + high(top, row) < ENOUGH * room) return;
    begins.push(row);
    top = row;
  });
  return begins;
}
