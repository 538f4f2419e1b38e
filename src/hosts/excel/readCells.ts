import { cellAddress } from "../../sheets/address";
import type { ShownError, Extent, ShownCell } from "../../sheets/calculated";
import { filledAddresses } from "../../sheets/rectangle";
import type { Look, StyleName } from "../../sheets/styles";
import type { CellValue, SheetCell } from "../../sheets/workbook";
import { isFormula } from "./isFormula";
import { readInBands } from "./readInBands";
import { LOOKS, styleOf } from "./readLook";
import { readSpills } from "./readSpills";
import { itemAt } from "../../reference/itemAt";

export interface Cells {
  readonly cells: readonly SheetCell[];
  readonly shown: ReadonlyMap<string, ShownCell>;
}

interface RawCell {
  readonly column: number;
  readonly row: number;
  readonly formula: string | null;
  readonly value: CellValue | ShownError;
  readonly style: StyleName | Look | undefined;
  readonly format: string | undefined;
}

/** The cells of a range that are filled or styled, and what they show. */
export async function readCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Excel.Range,
): Promise<Cells> {
  const raw = new Map<string, RawCell>();
  let looks: OfficeExtension.ClientResult<Excel.CellProperties[][]>;
  await readInBands(
    context,
    area,
    ({ row, column, range, formulas, values }) => {
      formulas.forEach((line, down) =>
        line.forEach((formula, right) => {
          const value = itemAt(values, down)[right];
          const isOne = isFormula(formula, value);
          const style = styleOf(itemAt(itemAt(looks.value, down), right), isOne);
          const format = String(itemAt(range.numberFormat as unknown[][], down)[right]);
          const cell: RawCell = {
            column: column + right,
            row: row + down,
            formula: isOne ? formula : null,
            value: valueOf(value, itemAt(itemAt(range.valueTypes, down), right)),
            style,
            format: format === "General" || format === "" ? undefined : format,
          };
          if (cell.formula !== null || cell.value !== null || style !== undefined || cell.format !== undefined) {
            raw.set(cellAddress(cell.column, cell.row), cell);
          }
        }),
      );
    },
    (band) => {
      band.load("valueTypes,numberFormat");
      looks = band.getCellProperties(LOOKS);
    },
  );
  const formulas = [...raw].filter(([, { formula }]) => formula !== null).map(([at]) => at);
  return described(raw, await readSpills(context, sheet, area, formulas));
}

/** Cells that a formula fills stand there only for their looks; what they show is listed all the same. */
function described(raw: ReadonlyMap<string, RawCell>, spills: ReadonlyMap<string, Extent>): Cells {
  const filled = new Set([...spills].flatMap(([at, extent]) => filledAddresses(at, extent).slice(1)));
  const cells: SheetCell[] = [];
  const shown = new Map<string, ShownCell>();
  for (const [at, { formula, value, style, format }] of raw) {
    const fills = spills.get(at);
    const look = { at, ...(style === undefined ? {} : { style }), ...(format === undefined ? {} : { format }) };
    if (value !== null) shown.set(at, { value, ...(fills === undefined ? {} : { fills }) });
    if (filled.has(at)) {
      if (style !== undefined || format !== undefined) cells.push({ ...look, value: null });
    } else if (formula !== null) cells.push({ ...look, formula });
    else cells.push(isError(value) ? { ...look, formula: `=${value.error}` } : { ...look, value });
  }
  return { cells, shown };
}

const isError = (value: CellValue | ShownError): value is ShownError => typeof value === "object" && value !== null;

const ERRORS = ["#VALUE!", "#N/A", "#NAME?", "#NUM!", "#DIV/0!", "#REF!", "#NULL!", "#SPILL!"] as const;

/** Excel has more errors than a file can hold, such as #BUSY!; they are given as #N/A with their own name behind it. */
function valueOf(value: unknown, type: string): CellValue | ShownError {
  if (type === "Empty") return null;
  if (type === "Error") {
    const error = ERRORS.find((name) => name === value);
    return error === undefined ? { error: "#N/A", message: String(value) } : { error };
  }
  return typeof value === "number" || typeof value === "boolean" ? value : String(value);
}
