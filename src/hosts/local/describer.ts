import type { Sheet, Workbook } from "../../sheets/workbook";
import { cellNames } from "./readGrid";
import { type KnownCells, renewedCells } from "./readGridCells";
import { calculatedSheet } from "./readGridSheet";
import type { CellPosition, GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";
import { itemAt } from "../../reference/itemAt";

export interface GridCommand {
  readonly type: string;
  readonly sheetId?: string;
  readonly col?: number;
  readonly row?: number;
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

/** An entry is both: the grid puts the cell into its place each time, also where it stands there already. */
const OF_ONE_CELL: ReadonlySet<string> = new Set(["UPDATE_CELL", "UPDATE_CELL_POSITION"]);

/** Commands that change the description of their own sheet and of no other. A name, a row or a column can stand in formulas anywhere. */
const OF_ONE_SHEET: ReadonlySet<string> = new Set([
  ...OF_ONE_CELL,
  "CLEAR_CELL",
  "CLEAR_CELLS",
  "DELETE_CONTENT",
  "SET_FORMATTING",
  "SET_BORDER",
  "RESIZE_COLUMNS_ROWS",
  "SET_GRID_LINES_VISIBILITY",
]);

interface Described {
  readonly sheet: Sheet;
  readonly isOurs: boolean; // described from the grid, so its cells stand in order
  readonly entered: CellPosition[]; // what was entered since
}

const MOST_ENTERED = 100; // beyond that it is quicker to go through all cells

/** @param first what the grid was made of, sheet by sheet */
export function describer(model: GridModel, first: Workbook): Describer {
  const { getters } = model;
  const described = new Map<string, Described>(
    getters
      .getSheetIds()
      .map((id, index) => [id, { sheet: itemAt(first.sheets, index), isOurs: false, entered: [] }] as const),
  );
  let cells: KnownCells = new WeakMap();
  const sheet = (id: string): Sheet => {
    const known = described.get(id);
    if (known?.entered.length === 0) return known.sheet;
    const fresh =
      known === undefined
        ? calculatedSheet(model, id, cells)
        : { ...known.sheet, cells: renewedCells(model, known.sheet.cells, known.entered) };
    described.set(id, { sheet: fresh, isOurs: true, entered: [] });
    return fresh;
  };
  return {
    done: ({ type, sheetId, col, row }) => {
      const known = sheetId === undefined ? undefined : described.get(sheetId);
      if (OF_ONE_CELL.has(type) && known?.isOurs === true && known.entered.length < MOST_ENTERED)
        known.entered.push({ sheetId: sheetId!, col: col!, row: row! });
      else if (sheetId !== undefined && OF_ONE_SHEET.has(type)) described.delete(sheetId);
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
