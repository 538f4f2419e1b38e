import type { GridModel } from "../../src/hosts/local/grid";
import { gridModel } from "../../src/hosts/local/gridModel";
import { placeOf } from "../../src/sheets/address";
import type { Workbook } from "../../src/sheets/workbook";
import type { EngineValues } from "./engine";
import "./gridLibrary";

/** What the grid of the local sheet computes for every cell of a workbook of plain formulas: an engine that is not ours, and quick. */
export function inGrid(workbook: Workbook): EngineValues {
  const model = gridOf(workbook);
  const { getSheetIds, getSheetName, getEvaluatedCell } = model.getters;
  const ids = new Map(getSheetIds().map((id) => [getSheetName(id), id]));
  return new Map(
    workbook.sheets.map(({ name, cells }) => {
      const values = cells.map(({ at }) => {
        const { column, row } = placeOf(at);
        const { value } = getEvaluatedCell({ sheetId: ids.get(name)!, col: column - 1, row: row - 1 });
        return [at, (value ?? "") as string | number] as const;
      });
      return [name, new Map(values)] as const;
    }),
  );
}

/** The grid itself. */
export function gridOf(workbook: Workbook): GridModel {
  return gridModel(workbook);
}
