import type { Cell } from "hucre/xlsx";
import type { StepLink } from "../../../sheets/stepLinks";
import { sheetPrefix } from "../../../sheets/sheetPrefix";
import { placeOf } from "../../../sheets/address";
import type { Extent, Shown, ShownCell } from "../../../sheets/calculated";
import type { CellValue, Sheet, SheetCell } from "../../../sheets/workbook";
import { filledAddresses, filledFrom, rectangleText } from "../../../sheets/rectangle";
import { toStored } from "../storedFormula";
import { MARK, toFileText } from "../xlsxText";
import { LONGEST_TEXT } from "./fitsFile";
import { cellStyle } from "./look";
import { mayFill } from "./mayFill";

type FileCell = Partial<Cell>;
type ShownOfSheet = ReadonlyMap<string, ShownCell>;

/**
 * The cells of a sheet by "row,column" from 0, as hucre takes them: what the description lists, then what formulas fill.
 *
 * @param withResults whether formulas have their values beside them
 */
export function fileCells(
  sheet: Sheet,
  shown: Shown,
  links: readonly StepLink[],
  withResults: boolean,
): Map<string, FileCell> {
  const shownHere: ShownOfSheet = shown.get(sheet.name) ?? new Map<string, ShownCell>();
  const filled = filledValues(sheet, shownHere);
  const cells = new Map<string, FileCell>();
  for (const cell of sheet.cells) {
    const written = fileCell(cell, shownHere, filled);
    if (!withResults) delete written.formulaResult;
    cells.set(keyOf(cell.at), written);
  }
  for (const [at, value] of filled) if (!cells.has(keyOf(at))) cells.set(keyOf(at), { value });
  for (const { at, sheet: to } of links)
    cells.set(keyOf(at), { ...cells.get(keyOf(at)), hyperlink: { target: "", location: `${sheetPrefix(to)}A1` } });
  return cells;
}

function keyOf(at: string): string {
  const { row, column } = placeOf(at);
  return `${row - 1},${column - 1}`;
}

function fileCell(cell: SheetCell, shown: ShownOfSheet, filled: ReadonlyMap<string, CellValue>): FileCell {
  const style = cellStyle(cell);
  const look = {
    ...(style === undefined ? {} : { style }),
    ...(cell.note === undefined ? {} : { comment: { text: toFileText(cell.note) } }),
  };
  if ("formula" in cell) return { ...look, ...fileFormula(cell.formula, cell.at, shown.get(cell.at)) };
  return { ...look, value: cell.value === null ? (filled.get(cell.at) ?? null) : fileValue(cell.value) };
}

function fileFormula(formula: string, at: string, shown: ShownCell | undefined): FileCell {
  const result = shown === undefined ? undefined : shownValue(shown);
  const extent = extentOf(formula, shown);
  return {
    formula: toFileText(toStored(formula)),
    ...(result == null ? {} : { formulaResult: result }),
    ...(extent === undefined
      ? {}
      : { formulaType: "array", formulaDynamic: true, formulaRef: rectangleText(filledFrom(at, extent)) }),
  };
}

/** How far a formula fills; one that may fill more once its inputs are there is marked as filling its own cell. */
const extentOf = (formula: string, shown: ShownCell | undefined): Extent | undefined =>
  shown?.fills ?? (mayFill(formula) ? { rows: 1, columns: 1 } : undefined);

/** What formulas show in cells beside their own. */
function filledValues(sheet: Sheet, shown: ShownOfSheet): Map<string, CellValue> {
  const values = new Map<string, CellValue>();
  for (const cell of sheet.cells) {
    const fills = "formula" in cell ? shown.get(cell.at)?.fills : undefined;
    if (fills === undefined) continue;
    for (const at of filledAddresses(cell.at, fills)) {
      const there = shown.get(at);
      if (at !== cell.at && there !== undefined) values.set(at, filledValue(there));
    }
  }
  return values;
}

/** A text that hucre would take for an error is marked; the mark is taken away again when the parts are finished. */
const fileValue = (value: CellValue): CellValue => {
  if (typeof value !== "string") return value;
  return ERROR.test(value) ? MARK + value : toFileText(value);
};

const ERROR = /^#(?:VALUE!|REF!|N\/A|NAME\?|NULL!|DIV\/0!|NUM!|GETTING_DATA|SPILL!|CALC!)$/;

/** A cached value; a result too long to be stored is cut, since it is computed anew anyway. */
function shownValue({ value }: ShownCell): CellValue {
  if (typeof value === "string") return toFileText(value.slice(0, LONGEST_TEXT));
  return typeof value === "object" && value !== null ? MARK + errorName(value.error) : value;
}

function filledValue({ value }: ShownCell): CellValue {
  if (typeof value === "string") return fileValue(value.slice(0, LONGEST_TEXT));
  return typeof value === "object" && value !== null ? errorName(value.error) : value;
}

/** The file format has no name for a blocked spill. */
const errorName = (error: string): string => (error === "#SPILL!" ? "#VALUE!" : error);
