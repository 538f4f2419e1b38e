import { parseA1Ref } from "@borgar/fx";
import { cellAddress, placeOf } from "../../sheets/address";
import type { Calculated } from "../../sheets/calculated";
import type { SheetCell } from "../../sheets/workbook";
import { type RangeRef, readRange } from "../../sheets/rangeRef";

/** Where things stand in a book, found by sheet and address. */
export interface CellIndex {
  /** The cell that is listed there. */
  readonly cell: (sheet: string, at: string) => SheetCell | undefined;
  /** The formula that computes what a cell shows: its own, or one that fills it; null where it is typed or blank. */
  readonly ownerOf: (sheet: string, at: string) => Owner | null;
  /** All that compute what a range shows, each once. */
  readonly ownersIn: (range: RangeRef) => Iterable<Owner>;
  /** A reference, name or whole column as a range inside what is filled, by the sheet's own spelling; null for what is not there. */
  readonly resolve: (text: string, sheet: string) => RangeRef | null;
}

export interface Owner {
  readonly at: string;
  readonly formula: string;
}

const MARGIN = 50; // blank rows and columns behind the last filled cell that still count

interface SheetIndex {
  readonly name: string;
  readonly cells: ReadonlyMap<string, SheetCell>;
  readonly owners: ReadonlyMap<string, Owner>;
  readonly ownersDown: ReadonlyMap<number, readonly Owned[]>; // the same by column, in order
  readonly rows: number;
  readonly columns: number;
}

/** A row of a column, and the formula that computes what its cell shows. */
interface Owned {
  readonly row: number;
  readonly owner: Owner;
}

export function cellIndex({ workbook, shown }: Calculated): CellIndex {
  const sheets = new Map<string, SheetIndex>();
  for (const { name, cells } of workbook.sheets) {
    const listed = new Map(cells.map((cell) => [cell.at, cell]));
    const owners = new Map<string, Owner>();
    let [rows, columns] = [1, 1];
    for (const cell of cells) {
      const { row, column } = placeOf(cell.at);
      const fills = "formula" in cell ? shown.get(name)?.get(cell.at)?.fills : undefined;
      const [high, wide] = [fills?.rows ?? 1, fills?.columns ?? 1];
      rows = Math.max(rows, row + high - 1);
      columns = Math.max(columns, column + wide - 1);
      if (!("formula" in cell)) continue;
      for (let down = 0; down < high; down++)
        for (let across = 0; across < wide; across++) {
          const at = cellAddress(column + across, row + down);
          const own = listed.get(at);
          owners.set(at, own !== undefined && "formula" in own ? own : cell);
        }
    }
    sheets.set(name.toLowerCase(), { name, cells: listed, owners, ownersDown: byColumn(owners), rows, columns });
  }
  const names = new Map(workbook.names.map((name) => [name.name.toLowerCase(), name]));
  const sheetOf = (name: string): SheetIndex | undefined => sheets.get(name.toLowerCase());
  return {
    cell: (sheet, at) => sheetOf(sheet)?.cells.get(at),
    ownerOf: (sheet, at) => sheetOf(sheet)?.owners.get(at) ?? null,
    ownersIn: ({ sheet, top, left, bottom, right }) => {
      const found = new Set<Owner>();
      const there = sheetOf(sheet);
      if (there === undefined) return found;
      for (let column = left; column <= right; column++) {
        const down = there.ownersDown.get(column) ?? [];
        for (let at = firstFrom(top, down); at < down.length && down[at]!.row <= bottom; at++)
          found.add(down[at]!.owner);
      }
      return found;
    },
    resolve: (text, sheet) => {
      const name = names.get(text.toLowerCase());
      const range =
        name === undefined ? (readRange(text, sheet) ?? wholeLines(text, sheet)) : readRange(name.at, name.sheet);
      const there = range === null ? undefined : sheetOf(range.sheet);
      if (range === null || there === undefined) return null;
      const bottom = Math.max(range.top, Math.min(range.bottom, there.rows + MARGIN));
      const right = Math.max(range.left, Math.min(range.right, there.columns + MARGIN));
      return { ...range, sheet: there.name, bottom, right };
    },
  };
}

function byColumn(owners: ReadonlyMap<string, Owner>): ReadonlyMap<number, readonly Owned[]> {
  const columns = new Map<number, Owned[]>();
  for (const [at, owner] of owners) {
    const { row, column } = placeOf(at);
    const known = columns.get(column);
    if (known === undefined) columns.set(column, [{ row, owner }]);
    else known.push({ row, owner });
  }
  for (const down of columns.values()) down.sort((one, other) => one.row - other.row);
  return columns;
}

/** Where in a column the rows from this one on begin. */
function firstFrom(row: number, down: readonly Owned[]): number {
  let [low, high] = [0, down.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (down[middle]!.row < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Whole columns or rows, which have no end of their own. */
function wholeLines(text: string, sheet: string): RangeRef | null {
  const parsed = parseA1Ref(text);
  if (parsed === undefined || !("range" in parsed) || (parsed.context ?? []).length > 1) return null;
  const { top, left, bottom, right } = parsed.range;
  return {
    sheet: parsed.context?.[0] ?? sheet,
    top: (top ?? 0) + 1,
    left: (left ?? 0) + 1,
    bottom: bottom == null ? Infinity : bottom + 1,
    right: right == null ? Infinity : right + 1,
  };
}
