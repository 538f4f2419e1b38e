import { cellAddress } from "../../sheets/address";
import type { Extent, ShownError, ShownCell } from "../../sheets/calculated";
import { rectangleText } from "../../sheets/rectangle";
import type { CellPosition, GridModel } from "./grid";
import { excelName } from "./values";

type Getters = GridModel["getters"];
type GridCell = ReturnType<Getters["getCells"]>[number];

export const atOf = ({ col, row }: Pick<CellPosition, "col" | "row">): string => cellAddress(col + 1, row + 1);

/** A range without its sheet and without signs of dollars; a single cell as such. The grid counts from 0. */
export const rangeOf = ({ left, top, right, bottom }: Zone): string =>
  rectangleText({ left: left + 1, top: top + 1, right: right + 1, bottom: bottom + 1 });

type Zone = ReturnType<Getters["getSelectedZone"]>;

/** What the cells of a sheet show, by address; blank ones are left out. */
export function shownCells(getters: Getters, sheetId: string): ReadonlyMap<string, ShownCell> {
  const shown = new Map<string, ShownCell>();
  for (const position of getters.getEvaluatedCellsPositions(sheetId)) {
    const cell = getters.getCell(position);
    const value =
      cell !== undefined && !cell.isFormula && cell.content !== "" ? cell.parsedValue : shownValue(getters, position);
    if (value === null && cell?.isFormula !== true) continue;
    shown.set(atOf(position), { value, ...fills(getters, position, cell) });
  }
  for (const zone of getters.getMerges(sheetId)) {
    const at = atOf({ col: zone.left, row: zone.top });
    const cell = shown.get(at);
    if (cell !== undefined) shown.set(at, { ...cell, merged: extentOf(zone) });
  }
  return shown;
}

function shownValue(getters: Getters, position: CellPosition): ShownCell["value"] {
  const { type, value, message } = getters.getEvaluatedCell(position);
  if (type !== "error") return value;
  const error = errorName(String(value));
  const sentence = message === undefined ? "" : String(message);
  return sentence === "" ? { error } : { error, message: sentence };
}

const ERRORS: readonly ShownError["error"][] = [
  "#VALUE!",
  "#N/A",
  "#NAME?",
  "#NUM!",
  "#DIV/0!",
  "#REF!",
  "#NULL!",
  "#SPILL!",
];

const errorName = (code: string): ShownError["error"] => ERRORS.find((name) => name === excelName(code)) ?? "#VALUE!";

function fills(getters: Getters, position: CellPosition, cell: GridCell | undefined): Pick<ShownCell, "fills"> {
  if (cell?.isFormula !== true) return {};
  const zone = getters.getSpreadZone(position);
  if (zone === undefined || (zone.top === zone.bottom && zone.left === zone.right)) return {};
  return { fills: extentOf(zone) };
}

const extentOf = ({ left, top, right, bottom }: Zone): Extent => ({
  rows: bottom - top + 1,
  columns: right - left + 1,
});
