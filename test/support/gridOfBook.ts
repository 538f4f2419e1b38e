/** The grid's own library in Node with our own functions: what a described workbook shows, without a page and without a build. */
import * as library from "@odoo/o-spreadsheet";
import * as air from "../../src/functions/air";
import * as budget from "../../src/functions/budget";
import * as claims from "../../src/functions/claims";
import * as duct from "../../src/functions/duct";
import * as fan from "../../src/functions/fan";
import * as flow from "../../src/functions/flow";
import * as leaks from "../../src/functions/leaks";
import * as losses from "../../src/functions/losses";
import * as measuring from "../../src/functions/measuring";
import * as tables from "../../src/functions/tables";
import { type CellFunction, createCustomFunctions } from "../../src/hosts/local/customFunctions";
import { gridData } from "../../src/hosts/local/model";
import { registerAll } from "../../src/hosts/local/register";
import { cellAddress, placeOf } from "../../src/sheets/address";
import type { Workbook } from "../../src/sheets/workbook";

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
  const rooms = [air, budget, claims, duct, fan, flow, leaks, losses, measuring, tables];
  const all = rooms.flatMap((room) => Object.entries(room) as [string, CellFunction][]);
  all.forEach(([name, code]) => customFunctions.associate(name.toUpperCase(), code));
  const metadata = all.map(([name, code]) => ({
    id: name.toUpperCase(),
    name: name.toUpperCase(),
    description: name,
    parameters: Array.from({ length: code.length }, (_, index) => ({
      name: `given${index}`,
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
