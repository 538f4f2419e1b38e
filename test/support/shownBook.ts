import type { Calculated, ShownCell } from "../../src/sheets/calculated";
import type { Sheet, Workbook } from "../../src/sheets/workbook";
import type { Shows } from "./gridOfBook";

/** What a described book shows in a grid, as Check and a copy take it: the cells that it describes, with their values. */
export function shownBook(workbook: Workbook, grid: Shows): Calculated {
  const shown = ({ name, cells }: Sheet): Map<string, ShownCell> =>
    new Map(
      cells.map(({ at }) => {
        const value = grid.value(name, at);
        return [at, { value: value === "" ? null : (value as ShownCell["value"]) }];
      }),
    );
  return { workbook, shown: new Map(workbook.sheets.map((sheet) => [sheet.name, shown(sheet)])) };
}
