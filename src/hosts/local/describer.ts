import type { Sheet, Workbook } from "../../sheets/workbook";
import { cellNames } from "./readGrid";
import type { KnownCells } from "./readGridCells";
import { calculatedSheet } from "./readGridSheet";
import type { GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";
import { itemAt } from "../../reference/itemAt";

export interface GridCommand {
  readonly type: string;
  readonly sheetId?: string;
}

/** Whether a command of the grid changes what stands in it. An undo is asked for first, and done a turn later by one that is not sent to others. */
export const changesBook = (command: GridCommand): boolean =>
  o_spreadsheet.isCoreCommand(command as never) || command.type === "UNDO" || command.type === "REDO";

/** Follows what is done to the grid, so that only what changed is described anew. */
export interface Describer {
  readonly done: (command: GridCommand) => void; // one that changes the book
  /** What stands in the grid; a sheet that nothing has touched is the very object of last time. */
  readonly workbook: () => Workbook;
}

/** Commands that change the description of their own sheet and of no other. A name, a row or a column can stand in formulas anywhere. */
const OF_ONE_SHEET: ReadonlySet<string> = new Set([
  "UPDATE_CELL",
  "UPDATE_CELL_POSITION",
  "CLEAR_CELL",
  "CLEAR_CELLS",
  "DELETE_CONTENT",
  "SET_FORMATTING",
  "SET_BORDER",
  "RESIZE_COLUMNS_ROWS",
  "SET_GRID_LINES_VISIBILITY",
]);

/** @param first what the grid was made of, sheet by sheet */
export function describer(model: GridModel, first: Workbook): Describer {
  const { getters } = model;
  const described = new Map<string, Sheet>(getters.getSheetIds().map((id, index) => [id, itemAt(first.sheets, index)]));
  let cells: KnownCells = new WeakMap();
  const sheet = (id: string): Sheet => {
    const known = described.get(id);
    if (known !== undefined) return known;
    const fresh = calculatedSheet(model, id, cells);
    described.set(id, fresh);
    return fresh;
  };
  return {
    done: ({ type, sheetId }) => {
      if (sheetId !== undefined && OF_ONE_SHEET.has(type)) described.delete(sheetId);
      else {
        described.clear();
        cells = new WeakMap();
      }
    },
    workbook: () => ({
      name: keptGetters(model).getBookTitle(),
      sheets: getters.getSheetIds().map(sheet),
      names: cellNames(getters),
    }),
  };
}
