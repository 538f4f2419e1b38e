import * as library from "@odoo/o-spreadsheet";
import type { GridModel } from "../../src/hosts/local/grid";
import { gridData } from "../../src/hosts/local/model";
import { placeOf } from "../../src/sheets/address";
import type { Sheet, Workbook } from "../../src/sheets/workbook";
import type { EngineValues } from "./engine";

/** A quote inside a text, which files write twice, as the grid reads it: twice it takes for two texts side by side. */
const withItsQuotes = (formula: string): string =>
  formula.replace(/"(?:[^"]|"")*"/g, (text) => `"${text.slice(1, -1).replaceAll('""', String.raw`\"`)}"`);

Object.assign(globalThis, { o_spreadsheet: library });

const readable = (sheet: Sheet): Sheet => ({
  ...sheet,
  cells: sheet.cells.map((cell) => ("formula" in cell ? { ...cell, formula: withItsQuotes(cell.formula) } : cell)),
});

/** What the grid of the local sheet computes for every cell of a workbook of plain formulas: an engine that is not ours, and quick. */
export function inGrid(workbook: Workbook): EngineValues {
  const quiet = jest.spyOn(console, "debug").mockImplementation(() => undefined); // the library tells how long it took
  const model: GridModel = new library.Model(gridData({ ...workbook, sheets: workbook.sheets.map(readable) }));
  quiet.mockRestore();
  const { getSheetIds, getSheetName, getEvaluatedCell } = model.getters;
  const ids = new Map(getSheetIds().map((id) => [getSheetName(id), id]));
  return new Map(
    workbook.sheets.map(({ name, cells }) => {
      const values = cells.map(({ at }) => {
        const { column, row } = placeOf(at);
        const { value } = getEvaluatedCell({ sheetId: ids.get(name)!, col: column - 1, row: row - 1 });
        return [at, typeof value === "string" ? value.replaceAll(`\\"`, `"`) : ((value ?? "") as number)] as const;
      });
      return [name, new Map(values)] as const;
    }),
  );
}
