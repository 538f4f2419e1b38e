/** The grid's own library in Node with our own functions: what a described workbook shows, without a page and without a build. */
import * as library from "@odoo/o-spreadsheet";
import { createCustomFunctions } from "../../src/hosts/local/customFunctions";
import { gridData } from "../../src/hosts/local/model";
import { registerAll } from "../../src/hosts/local/register";
import { cellAddress, placeOf } from "../../src/sheets/address";
import type { Workbook } from "../../src/sheets/workbook";
import { cellFunctions } from "./cellFunctions";

export interface Shows {
  readonly value: (sheet: string, at: string) => unknown; // "" for a blank
  readonly column: (sheet: string, range: string) => unknown[];
  readonly type: (sheet: string, at: string, text: string) => void; // as a person types it
  readonly insertColumn: (sheet: string, before: string) => void; // by its letters, as it stands now
  readonly errors: () => string[]; // every cell that shows an error, as "Leaks!B7: #VALUE! ..."
}

let ready = false;

function prepare(): void {
  if (ready) return;
  ready = true;
  Object.assign(globalThis, { o_spreadsheet: library });
  jest.spyOn(console, "debug").mockImplementation(() => undefined);
  const { customFunctions, functions } = createCustomFunctions((message) => {
    throw new Error(message);
  });
  Object.assign(globalThis, { CustomFunctions: customFunctions });
  cellFunctions.forEach(({ name, call }) => customFunctions.associate(name, call));
  const metadata = cellFunctions.map(({ name, call }) => ({
    id: name,
    name,
    description: name,
    parameters: Array.from({ length: call.length }, (_, index) => ({
      name: `given${index}`,
      description: "",
      dimensionality: "matrix" as const,
      optional: true,
    })),
  }));
  registerAll(
    { addFunction: library.addFunction as never, errorTypes: library.registries.errorTypes },
    "DUCT",
    { functions: metadata, allowErrorForDataTypeAny: true },
    functions,
  );
}

export function gridOfBook(workbook: Workbook): Shows {
  prepare();
  const model = new library.Model(gridData(workbook));
  const { getters } = model;
  const idOf = (sheet: string): string => {
    const id = getters.getSheetIdByName(sheet);
    if (id === undefined) throw new Error(`no sheet ${sheet}`);
    return id;
  };
  const cell = (sheet: string, at: string) =>
    getters.getEvaluatedCell({ sheetId: idOf(sheet), ...library.helpers.toCartesian(at) });
  const value = (sheet: string, at: string): unknown => cell(sheet, at).value ?? "";
  return {
    value,
    column: (sheet, range) => {
      const [from, to] = range.split(":").map(placeOf);
      return Array.from({ length: to!.row - from!.row + 1 }, (_, index) =>
        value(sheet, cellAddress(from!.column, from!.row + index)),
      );
    },
    type: (sheet, at, text) => {
      const result = model.dispatch("UPDATE_CELL", {
        sheetId: idOf(sheet),
        ...library.helpers.toCartesian(at),
        content: text,
      });
      const nothingNew = result.reasons.every((reason) => String(reason) === "NoChanges");
      if (!result.isSuccessful && !nothingNew) throw new Error(`could not type into ${sheet}!${at}`);
    },
    insertColumn: (sheet, before) => {
      const { isSuccessful } = model.dispatch("ADD_COLUMNS_ROWS", {
        sheetId: idOf(sheet),
        sheetName: sheet,
        dimension: "COL",
        base: library.helpers.lettersToNumber(before),
        position: "before",
        quantity: 1,
      });
      if (!isSuccessful) throw new Error(`could not insert a column before ${sheet}!${before}`);
    },
    errors: () =>
      getters.getSheetIds().flatMap((sheetId: string) => {
        const positions = getters.getEvaluatedCellsPositions(sheetId);
        return getters.getEvaluatedCells(sheetId).flatMap((shown, index) => {
          if (shown.type !== "error") return [];
          const { col, row } = positions[index]!;
          const said = "message" in shown ? String(shown.message) : "";
          return [`${getters.getSheetName(sheetId)}!${library.helpers.toXC(col, row)}: ${String(shown.value)} ${said}`];
        });
      }),
  };
}
