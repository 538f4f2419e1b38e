import type { GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";

/** Why the grid refuses to sort. */
const TORN = "SortTearsTable";

export const TORN_WORDS =
  "Nothing was sorted: what stands beside the selected cells would have stayed where it is, or headings and totals would have been sorted in. Select the rows to be sorted over all columns of their table, and sort again.";

interface Zone {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

interface SortCells {
  readonly type: string;
  readonly sheetId: string;
  readonly zone: Zone;
  readonly sortOptions?: { readonly sortHeaders?: boolean }; // so sorts the menu of a filter, which knows its table
}

/** Whether a command was refused because it would have torn a table. */
export const tearsTable = (rejected: object): boolean =>
  (rejected as { readonly result: { readonly reasons: readonly string[] } }).result.reasons.includes(TORN);

/** Whether something is typed in the rows of a zone beside it. */
function hasEntriesBeside(getters: GridModel["getters"], sheetId: string, zone: Zone): boolean {
  const isEntry = (row: number, col: number): boolean => {
    const cell = getters.getCell({ sheetId, col, row });
    return cell !== undefined && !cell.isFormula && cell.content !== "";
  };
  for (let row = zone.top; row <= zone.bottom; row++)
    for (let col = 0; col < getters.getNumberCols(sheetId); col++)
      if ((col < zone.left || col > zone.right) && isEntry(row, col)) return true;
  return false;
}

/**
 * Keeps the tables of a budget's sheets in one piece. The grid sorts some columns of a table and leaves the others; and where one column is
 * selected it offers to sort all that stands around, title and totals among the runs.
 */
export function sortWholeRows(): void {
  class SortWholeRows extends o_spreadsheet.UIPlugin {
    override allowDispatch(command: { readonly type: string }) {
      if (command.type !== "SORT_CELLS") return "Success" as never;
      const { sheetId, zone, sortOptions } = command as SortCells;
      const getters = this.getters;
      const { top, bottom } = getters.getSelectedZone();
      if (keptGetters({ getters }).getSheetKey(sheetId) === undefined) return "Success" as never;
      const isMore = sortOptions?.sortHeaders !== true && (zone.top < top || zone.bottom > bottom);
      const tears = isMore || hasEntriesBeside(getters, sheetId, zone);
      return (tears ? TORN : "Success") as never;
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add("sort_whole_rows", SortWholeRows);
}
