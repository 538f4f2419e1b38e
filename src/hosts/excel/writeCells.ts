import { placeOf } from "../../sheets/address";
import type { CellValue, Sheet } from "../../sheets/workbook";
import { addressOf, rangeAt } from "./areas";
import { blocksOf } from "./blocks";
import { asLiteral } from "./literal";

/** Writes the values of a new sheet in one stroke. A null leaves a cell as it is, here blank. */
export function writeValues(sheet: Excel.Worksheet, { cells }: Pick<Sheet, "cells">): void {
  const filled = cells.flatMap((cell) =>
    "value" in cell && cell.value !== null ? [{ ...placeOf(cell.at), value: cell.value }] : [],
  );
  if (filled.length === 0) return;
  const rows = Math.max(...filled.map(({ row }) => row));
  const columns = Math.max(...filled.map(({ column }) => column));
  const matrix: CellValue[][] = Array.from({ length: rows }, () => new Array<null>(columns).fill(null));
  for (const { row, column, value } of filled) {
    matrix[row - 1]![column - 1] = typeof value === "string" ? asLiteral(value) : value;
  }
  rangeAt(sheet, { column: 1, row: 1, columns, rows }).values = matrix;
}

/** Enters the formulas, block by block, so that no cell is touched that a formula is going to fill. */
export function writeFormulas(sheet: Excel.Worksheet, { cells }: Pick<Sheet, "cells">): void {
  const formulas = new Map(cells.flatMap((cell) => ("formula" in cell ? [[cell.at, cell.formula]] : [])));
  const places = [...formulas.keys()].map((at) => ({ ...placeOf(at), key: "" }));
  for (const block of blocksOf(places)) {
    rangeAt(sheet, block).formulas = cellsOf(block).map((row) => row.map((at) => formulas.get(at)!));
  }
}

/** The addresses in a block, row by row. */
const cellsOf = ({ column, row, columns, rows }: ReturnType<typeof blocksOf>[number]): string[][] =>
  Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, right) =>
      addressOf({ column: column + right, row: row + down, columns: 1, rows: 1 }),
    ),
  );
