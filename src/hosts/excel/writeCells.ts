import { cellAddress, placeOf } from "../../sheets/address";
import { placesIn } from "../../sheets/rectangle";
import type { CellValue, Sheet } from "../../sheets/workbook";
import { rangeAt } from "./rangeAt";
import { blocksOf } from "./blocks";
import { asLiteral } from "./literal";
import { itemAt, valueAt } from "../../reference/itemAt";

/** Writes the values of a new sheet in one stroke. A null leaves a cell as it is, here blank. */
export function writeValues(sheet: Excel.Worksheet, { cells }: Pick<Sheet, "cells">): void {
  const filled = cells.flatMap((cell) =>
    "value" in cell && cell.value !== null ? [{ ...placeOf(cell.at), value: cell.value, format: cell.format }] : [],
  );
  if (filled.length === 0) return;
  const rows = Math.max(...filled.map(({ row }) => row));
  const columns = Math.max(...filled.map(({ column }) => column));
  const matrix: CellValue[][] = Array.from({ length: rows }, () => new Array<null>(columns).fill(null));
  for (const { row, column, value, format } of filled) {
    itemAt(matrix, row - 1)[column - 1] = typeof value === "string" ? asLiteral(value, format) : value;
  }
  rangeAt(sheet, { top: 1, left: 1, bottom: rows, right: columns }).values = matrix;
}

/** Enters the formulas, block by block, so that no cell is touched that a formula is going to fill. */
export function writeFormulas(sheet: Excel.Worksheet, { cells }: Pick<Sheet, "cells">): void {
  const formulas = new Map(cells.flatMap((cell) => ("formula" in cell ? [[cell.at, cell.formula]] : [])));
  const places = [...formulas.keys()].map((at) => ({ ...placeOf(at), key: "" }));
  for (const block of blocksOf(places)) {
    rangeAt(sheet, block).formulas = placesIn(block).map((line) =>
      line.map(({ column, row }) => valueAt(formulas, cellAddress(column, row))),
    );
  }
}
