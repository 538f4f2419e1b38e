import { placeOf } from "../../sheets/address";
import { MOST_AREA, MOST_COLUMNS, MOST_ROWS } from "../../sheets/extent";
import type { Sheet, SheetCell } from "../../sheets/workbook";

/** How far a sheet reaches. */
export interface Reach {
  readonly rows: number;
  readonly columns: number;
}

export interface Parted {
  readonly reach: Reach;
  readonly cells: readonly SheetCell[];
  readonly strays: readonly SheetCell[]; // what is left out, though something stands in it
}

const LEAST: Reach = { rows: 100, columns: 26 }; // blank cells within it are never far

/** Parts a sheet's cells into those that a grid can hold and those that stand too far away. Blank cells far away are nothing. */
export function parted({ cells }: Sheet): Parted {
  const placed = cells.map((cell) => ({ cell, ...placeOf(cell.at), isFilled: isFilled(cell) }));
  const within =
    ({ rows, columns }: Reach) =>
    ({ row, column }: Place): boolean =>
      row <= rows && column <= columns;
  const far = { rows: MOST_ROWS, columns: MOST_COLUMNS };
  const near = placed.filter(within(far));
  const filled = near.filter(({ isFilled: is }) => is);
  let reach = reachOf(near);
  if (areaOf(reach) > MOST_AREA) reach = reachOf(filled); // without the looks of blank rows and columns
  if (areaOf(reach) > MOST_AREA) {
    const lower = { ...reach, rows: Math.floor(MOST_AREA / reach.columns) };
    const narrower = { ...reach, columns: Math.floor(MOST_AREA / reach.rows) };
    const lost = (one: Reach): number => filled.length - filled.filter(within(one)).length;
    reach = lost(lower) <= lost(narrower) ? lower : narrower;
  }
  const kept = placed.filter(within(reach));
  const isKept = new Set(kept);
  return {
    reach,
    cells: kept.length === placed.length ? cells : kept.map(({ cell }) => cell),
    strays: placed.flatMap((one) => (one.isFilled && !isKept.has(one) ? [one.cell] : [])),
  };
}

interface Place {
  readonly row: number;
  readonly column: number;
}

const isFilled = (cell: SheetCell): boolean => "formula" in cell || cell.value !== null || cell.note !== undefined;

const reachOf = (places: readonly Place[]): Reach =>
  places.reduce(
    (reach, { row, column }) => ({ rows: Math.max(reach.rows, row), columns: Math.max(reach.columns, column) }),
    LEAST,
  );

const areaOf = ({ rows, columns }: Reach): number => rows * columns;
