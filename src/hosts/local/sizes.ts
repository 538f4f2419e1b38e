import type { Sheet } from "../../sheets/workbook";

/** Sizes of columns in characters and of rows in lines, as the description has them, and in the grid's pixels. */

const CHARACTER = 7; // pixels of an average character of the default font
const LINE = 18; // pixels of a line of text
const PADDING = 6; // pixels above and below the lines of a tall row
export const ROW = 23; // pixels of an ordinary row
export const COLUMN = 96; // pixels of a column whose width nobody set

/** Sizes of a sheet's columns and rows in pixels, counted from 1. */
export interface CellSizes {
  readonly width: (column: number) => number;
  readonly height: (row: number) => number;
}

export function cellSizes(sheet: Pick<Sheet, "columns" | "tallRows">): CellSizes {
  const lines = new Map(sheet.tallRows.map((tall) => [tall.row, tall.lines]));
  return {
    width: (column) => {
      const characters = sheet.columns[column - 1];
      return characters === undefined ? COLUMN : Math.round(characters * CHARACTER);
    },
    height: (row) => Math.max(ROW, Math.round((lines.get(row) ?? 0) * LINE + PADDING)),
  };
}

/** Characters that give this many pixels: by halves where that is exact, as a person would say it. */
export const characters = (pixels: number): number =>
  simplest(pixels / CHARACTER, (size) => Math.round(size * CHARACTER) === pixels);

/** Lines of text that give a row of this many pixels. */
export const linesOf = (pixels: number): number =>
  simplest((pixels - PADDING) / LINE, (lines) => Math.round(lines * LINE + PADDING) === pixels);

function simplest(size: number, fits: (size: number) => boolean): number {
  const half = Math.round(size * 2) / 2;
  return fits(half) ? half : Math.round(size * 100) / 100;
}
