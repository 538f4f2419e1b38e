import { itemAt } from "../../reference/itemAt";
import type { Calculated, ShownCell } from "../../sheets/calculated";
import type { CellName, Sheet, Workbook } from "../../sheets/workbook";
import { calculatedSheet } from "./readGridSheet";
import type { GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";
import { rangeOf, shownCells } from "./shownCells";

/** Everything that stands in the grid, as a description, with what its cells show. */
export function calculatedOf(model: GridModel): Calculated {
  const { getters } = model;
  return shownWith(model, {
    name: keptGetters(model).getBookTitle(),
    sheets: getters.getSheetIds().map((id) => calculatedSheet(model, id)),
    names: cellNames(getters),
  });
}

/** The same where the grid is described already: what its cells show is added. */
export function shownWith({ getters }: GridModel, workbook: Workbook): Calculated {
  const shown = workbook.sheets.map(
    (sheet, index) => [sheet.name, shownOn(getters, sheet, itemAt(getters.getSheetIds(), index))] as const,
  );
  return { workbook, shown: new Map(shown) };
}

/** What a sheet without a formula shows changes with its description alone; the tables of a budget are most of its cells. */
function shownOn(getters: GridModel["getters"], sheet: Sheet, id: string): ReadonlyMap<string, ShownCell> {
  const known = shownBefore.get(sheet);
  if (known !== undefined) return known;
  const shown = shownCells(getters, id);
  if (!sheet.cells.some((cell) => "formula" in cell)) shownBefore.set(sheet, shown);
  return shown;
}

const shownBefore = new WeakMap<Sheet, ReadonlyMap<string, ShownCell>>();

/** A name of several cells keeps them all, written as a range. */
export const cellNames = (getters: GridModel["getters"]): CellName[] =>
  getters.getNamedRanges().flatMap(({ name, range }) => {
    const sheet = getters.tryGetSheetName(range.sheetId);
    return sheet === undefined || range.invalidXc !== undefined ? [] : [{ name, sheet, at: rangeOf(range.zone) }];
  });
