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
  readonly ownerOf: (sheet: string, at: string) => { readonly at: string; readonly formula: string } | null;
  /** A reference, name or whole column as a range inside what is filled, by the sheet's own spelling; null for what is not there. */
  readonly resolve: (text: string, sheet: string) => RangeRef | null;
}

const MARGIN = 50; // blank rows and columns behind the last filled cell that still count

interface SheetIndex {
  readonly name: string;
  readonly cells: ReadonlyMap<string, SheetCell>;
  readonly filledBy: ReadonlyMap<string, string>; // address of the formula that fills a cell
  readonly rows: number;
  readonly columns: number;
}

export function cellIndex({ workbook, shown }: Calculated): CellIndex {
  const sheets = new Map<string, SheetIndex>();
  for (const { name, cells } of workbook.sheets) {
    const listed = new Map(cells.map((cell) => [cell.at, cell]));
    const filledBy = new Map<string, string>();
    let [rows, columns] = [1, 1];
    for (const cell of cells) {
      const { row, column } = placeOf(cell.at);
      const fills = "formula" in cell ? shown.get(name)?.get(cell.at)?.fills : undefined;
      const [high, wide] = [fills?.rows ?? 1, fills?.columns ?? 1];
      rows = Math.max(rows, row + high - 1);
      columns = Math.max(columns, column + wide - 1);
      for (let down = 0; down < high; down++)
        for (let across = 0; across < wide; across++)
          if (down + across > 0) filledBy.set(cellAddress(column + across, row + down), cell.at);
    }
    sheets.set(name.toLowerCase(), { name, cells: listed, filledBy, rows, columns });
  }
  const names = new Map(workbook.names.map((name) => [name.name.toLowerCase(), name]));
  const sheetOf = (name: string): SheetIndex | undefined => sheets.get(name.toLowerCase());
  return {
    cell: (sheet, at) => sheetOf(sheet)?.cells.get(at),
    ownerOf: (sheet, at) => {
      const there = sheetOf(sheet);
      const own = there?.cells.get(at);
      if (own !== undefined && "formula" in own) return own;
      const by = there?.filledBy.get(at);
      const owner = by === undefined ? undefined : there!.cells.get(by);
      return owner !== undefined && "formula" in owner ? owner : null;
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
