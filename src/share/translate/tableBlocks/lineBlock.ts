import type { Point } from "../../../core/fittings/interpolate";
import type { Provenance } from "../../../reference/schema";
import type { BlockCell, TablePlace, TableBlock } from "./block";
import { TRUST, trustCells } from "./trust";

/** A line through points, which stand from left to right. */
export interface Line {
  readonly name: string;
  readonly points: readonly PrintedPoint[];
}

/** A point with the rows that its value comes from. */
export interface PrintedPoint extends Point {
  readonly from: readonly Provenance[];
}

/**
 * Lines through points. The value at x is that of the first point plus, for every point left of x, the change of slope there
 * times the distance from it; so one sum over the table reads the line, and nobody has to find the right piece.
 */
export function lineBlock(title: string, lines: readonly Line[]): TableBlock {
  const rows: BlockCell[][] = [];
  for (const { name, points } of lines) {
    points.forEach(({ at, value, from }, index) => {
      const here = rows.length;
      rows.push([
        name,
        at,
        value,
        index === 0 ? (place) => place.cell("K", here) : 0,
        (place) => `${slopeFrom(place, here, index < points.length - 1)}-${slopeFrom(place, here - 1, index > 0)}`,
        ...trustCells(from),
      ]);
    });
  }
  return { title, columns: ["line", "at", "K", "start", "change of slope", ...TRUST], inputs: true, rows };
}

/** The slope of the line from one row to the next; 0 before the first point and after the last. */
function slopeFrom(place: TablePlace, row: number, exists: boolean): string {
  if (!exists) return "0";
  const rise = `${place.cell("K", row + 1)}-${place.cell("K", row)}`;
  return `(${rise})/(${place.cell("at", row + 1)}-${place.cell("at", row)})`;
}

/** Whether the line has points on both sides of x, or at it. */
export function lineHolds(block: TablePlace, line: string, x: string): string {
  const ofLine = `(${block.range("line")}=${line})`;
  const side = (sign: string): string => `SUMPRODUCT(${ofLine}*(${block.range("at")}${sign}${x}))>0`;
  return `AND(${side("<=")},${side(">=")})`;
}

/** The value of the line at x, which must lie within it. */
export function readLine(block: TablePlace, line: string, x: string): string {
  const at = block.range("at");
  const bends = `(${at}<${x})*(${x}-${at})*${block.range("change of slope")}`;
  return `SUMPRODUCT((${block.range("line")}=${line})*(${block.range("start")}+${bends}))`;
}
