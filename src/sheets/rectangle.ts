import { cellAddress, fixedAddress, type Place, placeOf, readPlace } from "./address";
import type { Extent } from "./calculated";

/** Cells that lie in a rectangle; rows and columns count from 1, and the last ones belong to it. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A range "B4:C9" or one cell, with or without dollar signs, its corners in any order; null where the text is neither. */
export function readRectangle(text: string): Rectangle | null {
  const [from, to, ...rest] = text.split(":").map(readPlace);
  if (rest.length > 0 || from == null || to === null) return null;
  const end = to ?? from;
  return {
    top: Math.min(from.row, end.row),
    left: Math.min(from.column, end.column),
    bottom: Math.max(from.row, end.row),
    right: Math.max(from.column, end.column),
  };
}

/** The rectangle of a range that our own workbook has. */
export function rectangleOf(range: string): Rectangle {
  const rectangle = readRectangle(range);
  if (rectangle === null) throw new Error(`not a range of cells: ${range}`);
  return rectangle;
}

/** The rectangle that an answer fills from its corner on. */
export function filledFrom(at: string, { rows, columns }: Extent): Rectangle {
  const { column, row } = placeOf(at);
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}

export const rowsOf = ({ top, bottom }: Rectangle): number => bottom - top + 1;
export const columnsOf = ({ left, right }: Rectangle): number => right - left + 1;
export const cellsIn = (rectangle: Rectangle): number => rowsOf(rectangle) * columnsOf(rectangle);
export const isOneCell = (rectangle: Rectangle): boolean => cellsIn(rectangle) === 1;

/** "B4:C9", or "B4" where it is one cell. */
export const rectangleText = (rectangle: Rectangle): string => cornersText(rectangle, cellAddress);

/** "$B$4:$C$9", or "$B$4" where it is one cell. */
export const fixedText = (rectangle: Rectangle): string => cornersText(rectangle, fixedAddress);

function cornersText(rectangle: Rectangle, address: (column: number, row: number) => string): string {
  const { top, left, bottom, right } = rectangle;
  const first = address(left, top);
  return isOneCell(rectangle) ? first : `${first}:${address(right, bottom)}`;
}

/** The places in a rectangle, row by row. */
export const placesIn = (rectangle: Rectangle): Place[][] =>
  Array.from({ length: rowsOf(rectangle) }, (_, down) =>
    Array.from({ length: columnsOf(rectangle) }, (__, across) => ({
      column: rectangle.left + across,
      row: rectangle.top + down,
    })),
  );

/** The addresses in a rectangle, row by row. */
export const addressesIn = (rectangle: Rectangle): string[] =>
  placesIn(rectangle).flatMap((line) => line.map(({ column, row }) => cellAddress(column, row)));

/** The addresses of the cells that an answer fills, its own first. */
export const filledAddresses = (at: string, extent: Extent): string[] => addressesIn(filledFrom(at, extent));

/** What is left of a rectangle without others, in as many rectangles as that takes. */
export const without = (whole: Rectangle, others: readonly Rectangle[]): Rectangle[] =>
  others.reduce((parts, other) => parts.flatMap((part) => lessOne(part, other)), [whole]);

function lessOne(part: Rectangle, other: Rectangle): Rectangle[] {
  const top = Math.max(part.top, other.top);
  const bottom = Math.min(part.bottom, other.bottom);
  const left = Math.max(part.left, other.left);
  const right = Math.min(part.right, other.right);
  if (top > bottom || left > right) return [part];
  return [
    { ...part, bottom: top - 1 },
    { ...part, top: bottom + 1 },
    { top, bottom, left: part.left, right: left - 1 },
    { top, bottom, left: right + 1, right: part.right },
  ].filter((rest) => rowsOf(rest) > 0 && columnsOf(rest) > 0);
}
