/**
 * Excel's API gives widths and heights in points. A width in a description counts digits of the default font: each
 * 7 pixels wide at 96 to the inch, and 5 pixels of padding beside them (ECMA-376 Part 1, 18.3.1.13, whose example is
 * Calibri 11). A pixel is three quarters of a point.
 */
const DIGIT = 7; // pixels
const PADDING = 5; // pixels
const POINTS_OF_PIXEL = 0.75;

const WIDEST = 255; // characters, Excel's limit
const HIGHEST = 409; // points, Excel's limit is half a point above

export const pointsOfWidth = (characters: number): number =>
  Math.round(Math.min(characters, WIDEST) * DIGIT + PADDING) * POINTS_OF_PIXEL;

/** A width that half a pixel would make a half or a whole character is meant as that. */
export function widthOfPoints(points: number): number {
  const width = Math.max(0, (points / POINTS_OF_PIXEL - PADDING) / DIGIT);
  const half = Math.round(width * 2) / 2;
  return Math.abs(half - width) * DIGIT <= 0.5 ? half : Math.round(width * 100) / 100;
}

const LINE = 13.5; // points: a line of our ten-point text
const ROOM = 3; // points above and below

export const pointsOfLines = (lines: number): number => Math.min(lines * LINE + ROOM, HIGHEST);

/** Lines of text that a row has room for; a row of the usual height has one. */
export const linesOfPoints = (points: number): number => Math.max(1, Math.round((points - ROOM) / LINE));
