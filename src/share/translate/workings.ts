import { cellAddress } from "../../sheets/address";
import { formula, text } from "../../sheets/cells";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import { onAnySheet } from "../formula/ranges";
import type { RangeRef } from "../../sheets/rangeRef";
import { sheetPrefix } from "../../sheets/sheetPrefix";

/** A text in a formula that is nothing else stands as such. */
function contentOf(at: string, code: string): SheetCell {
  if (/^"(?:[^"]|"")+"$/.test(code)) return text(at, code.slice(1, -1).replaceAll('""', '"'));
  return formula(at, `=${code}`);
}

/** Helper cells that a translation needs, on a sheet of their own, each place below the one before. */
export interface Workings {
  /** Puts rows of formulas (no leading "=", "" for no cell) onto the sheet; they are built once their place is known. */
  place(rows: number, columns: number, formulas: (place: RangeRef) => readonly (readonly string[])[]): RangeRef;
  /** One formula that stands on `sheet` as a cell here; the same formula twice is one cell. The text that refers to it. */
  cell(formula: string, sheet: string): string;
  /** A cell above all places. */
  say(cell: SheetCell): void;
  /** A place that was made before under this key, or a new one. */
  once(key: string, make: () => RangeRef): RangeRef;
  /** The sheet. Its list of cells grows with every place, so it may be kept from the start. */
  readonly sheet: Sheet;
}

/** @param name of the sheet, one that the workbook has not taken */
export function newWorkings(name = "Workings"): Workings {
  const cells: SheetCell[] = [
    text("A1", "Workings", "title"),
    text("A2", "Steps of the formulas on the other sheets. Change nothing here.", "note"),
  ];
  const places = new Map<string, RangeRef>();
  let next = 4;
  const place: Workings["place"] = (rows, columns, formulas) => {
    const range = { sheet: name, top: next, left: 1, bottom: next + rows - 1, right: columns };
    next += rows + 1; // whatever the formulas place stands below
    formulas(range).forEach((line, row) =>
      line.forEach((code, column) => {
        if (code !== "") cells.push(contentOf(cellAddress(1 + column, range.top + row), code));
      }),
    );
    return range;
  };
  const once: Workings["once"] = (key, make) => {
    const range = places.get(key) ?? make();
    places.set(key, range);
    return range;
  };
  const cell: Workings["cell"] = (code, sheet) => {
    const anywhere = onAnySheet(code, sheet);
    const { top } = once(`cell ${anywhere}`, () => place(1, 1, () => [[anywhere]]));
    return `${sheetPrefix(name)}$A$${top}`;
  };
  const say: Workings["say"] = (said) => void cells.push(said);
  const sheet: Sheet = {
    name,
    columns: [22, 16, 16, 16, 16, 16],
    tallRows: [],
    frozen: { rows: 0, columns: 0 },
    cells,
    lists: [],
    flags: [],
  };
  return { place, cell, say, once, sheet };
}
