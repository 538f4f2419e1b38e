import { plain } from "../../../core/naming/findNamed";
import { headerName } from "../../../core/naming/headerName";
import type { CellBlock } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import type { Calculated } from "../../../sheets/calculated";
import type { RangeRef } from "../../../sheets/rangeRef";
import { cell } from "../asRead";
import type { NewSize } from "./sizesFound";

const SAME = 1e-9; // of a diameter, for what a file rounds

/**
 * The cells of the runs table that take new diameters. Where one no longer holds what the search saw, or holds a formula, none
 * is written, and a sentence names it.
 */
export function newDiameters(
  { workbook, shown }: Calculated,
  { sheet, left, right, top, bottom }: RangeRef,
  changes: readonly NewSize[],
): { readonly blocks: readonly CellBlock[]; readonly names: readonly CellBlock[] } | { readonly why: string } {
  const value = (column: number, row: number) => shown.get(sheet)?.get(cellAddress(column, row))?.value;
  const columnOf = (header: string): number | undefined => {
    for (let column = left; column <= right; column++) {
      const words = value(column, top);
      if (typeof words === "string" && headerName(words) === header) return column;
    }
    return undefined;
  };
  const [runs, diameters] = [columnOf("run"), columnOf("diameter")];
  if (runs === undefined || diameters === undefined)
    return { why: `The table on the sheet ${sheet} has moved: search again.` };
  const formulas = new Set(
    workbook.sheets.find(({ name }) => name === sheet)?.cells.flatMap((cell) => ("formula" in cell ? [cell.at] : [])),
  );
  const blocks: CellBlock[] = [];
  const names = [cell(sheet, cellAddress(diameters, top))]; // by which it is seen that rows or columns were moved
  for (const { run, now, buy } of changes) {
    const rows: number[] = [];
    for (let row = top + 1; row <= bottom; row++) {
      const name = value(runs, row);
      if (name !== undefined && name !== null && typeof name !== "object" && plain(String(name)) === plain(run))
        rows.push(row);
    }
    const [row] = rows;
    if (row === undefined || rows.length > 1)
      return { why: `The sheet ${sheet} no longer has one row for ${run}: search again.` };
    const at = cellAddress(diameters, row);
    const held = value(diameters, row);
    if (formulas.has(at)) return { why: `${at} of the sheet ${sheet} holds a formula, so nothing was written: change that cell yourself.` }; // prettier-ignore
    if (typeof held !== "number" || Math.abs(held - now) > SAME * now)
      return { why: `The diameter of ${run} is no longer ${now}, so nothing was written: search again.` };
    blocks.push({ sheet, at, rows: [[buy]] });
    names.push(cell(sheet, cellAddress(runs, row)));
  }
  return { blocks, names };
}
