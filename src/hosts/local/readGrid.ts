import type { Calculated } from "../../sheets/calculated";
import type { CellName } from "../../sheets/workbook";
import { calculatedSheet } from "./readGridSheet";
import type { GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";
import { rangeOf, shownCells } from "./shownCells";

/** Everything that stands in the grid, as a description, with what its cells show. */
export function calculatedOf(model: GridModel): Calculated {
  const { getters } = model;
  const ids = getters.getSheetIds();
  return {
    workbook: {
      name: keptGetters(model).getBookTitle(),
      sheets: ids.map((id) => calculatedSheet(model, id)),
      names: cellNames(getters),
    },
    shown: new Map(ids.map((id) => [getters.getSheetName(id), shownCells(getters, id)])),
  };
}

/** A name of several cells keeps them all, written as a range. */
export const cellNames = (getters: GridModel["getters"]): CellName[] =>
  getters.getNamedRanges().flatMap(({ name, range }) => {
    const sheet = getters.tryGetSheetName(range.sheetId);
    return sheet === undefined || range.invalidXc !== undefined ? [] : [{ name, sheet, at: rangeOf(range.zone) }];
  });
