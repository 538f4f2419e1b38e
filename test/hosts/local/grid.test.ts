/** The grid's own library in Node, with a toy function: what the parts give together, without a page. */
import * as library from "@odoo/o-spreadsheet";
import { createCustomFunctions } from "../../../src/hosts/local/customFunctions";
import type { GridModel } from "../../../src/hosts/local/grid";
import { localHost } from "../../../src/hosts/local/localHost";
import { gridData } from "../../../src/hosts/local/model";
import { addNotesPlugin } from "../../../src/hosts/local/notesPlugin";
import { registerAll } from "../../../src/hosts/local/register";
import { cellWords } from "../../../src/hosts/local/status";
import type { SheetCell, Workbook } from "../../../src/sheets/workbook";

Object.assign(globalThis, { o_spreadsheet: library });

const { customFunctions, functions } = createCustomFunctions(() => undefined);
customFunctions.associate("TWICE", (range) =>
  (range as unknown[][]).map((row) =>
    row.map((cell) => {
      if (typeof cell !== "number")
        throw new customFunctions.Error(
          customFunctions.ErrorCode.invalidValue,
          `a number is needed; got ${String(cell)}`,
        );
      return 2 * cell;
    }),
  ),
);

beforeAll(() => {
  jest.spyOn(console, "debug").mockImplementation(() => undefined);
  const metadata = {
    id: "TWICE",
    name: "TWICE",
    description: "Twice.",
    parameters: [{ name: "range", dimensionality: "matrix" as const }],
  };
  registerAll(
    { addFunction: library.addFunction as never, errorTypes: library.registries.errorTypes },
    "TOY",
    { functions: [metadata] },
    functions,
  );
  addNotesPlugin();
});

function modelOf(cells: readonly SheetCell[]): GridModel {
  const sheet = {
    name: "One",
    columns: [],
    tallRows: [],
    frozen: { rows: 0, columns: 0 },
    cells,
    lists: [],
    flags: [],
  };
  const workbook: Workbook = { name: "Toy", sheets: [sheet], names: [{ name: "given", sheet: "One", at: "A1" }] };
  return new library.Model(gridData(workbook));
}

const place = (model: GridModel, at: string) => ({
  sheetId: model.getters.getActiveSheetId(),
  ...library.helpers.toCartesian(at),
});
const valueAt = (model: GridModel, at: string): unknown => model.getters.getEvaluatedCell(place(model, at)).value;

describe("the grid with our functions", () => {
  test("a range goes in and spills out the same way round", () => {
    const model = modelOf([
      { at: "A1", value: 1 },
      { at: "B1", value: 2 },
      { at: "A2", value: 3 },
      { at: "B2", value: 4 },
      { at: "D1", formula: "=TOY.TWICE(A1:B2)" },
      { at: "D4", formula: "=toy.twice(given)+1" },
    ]);
    expect(["D1", "E1", "D2", "E2"].map((at) => valueAt(model, at))).toEqual([2, 4, 6, 8]);
    expect(valueAt(model, "D4")).toBe(3);
  });

  test("an error is Excel's, is caught by IFERROR, and its sentence is said of the cell and of those that follow from it", () => {
    const model = modelOf([
      { at: "B1", formula: '=TOY.TWICE("x")' },
      { at: "B2", formula: "=B1+1" },
      { at: "B3", formula: '=IFERROR(B1,"caught")' },
    ]);
    expect(valueAt(model, "B1")).toBe("#VALUE!");
    expect(valueAt(model, "B3")).toBe("caught");
    expect(cellWords(model, place(model, "B1"))).toBe("B1 shows #VALUE!: a number is needed; got x");
    expect(cellWords(model, place(model, "B2"))).toBe("B2 shows #VALUE!: a number is needed; got x (B1)");
    expect(cellWords(model, place(model, "B3"))).toBe("");
  });

  test("a note belongs to its cell: it moves with rows, comes back with undo, and goes with its row", () => {
    const model = modelOf([{ at: "B3", value: 1, note: "why one" }]);
    const sheetId = model.getters.getActiveSheetId();
    const said = (at: string): string => cellWords(model, place(model, at));
    expect(said("B3")).toBe("B3: why one");
    model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: "One",
      dimension: "ROW",
      base: 0,
      position: "before",
      quantity: 2,
    });
    expect([said("B3"), said("B5")]).toEqual(["", "B5: why one"]);
    model.dispatch("REQUEST_UNDO");
    expect([said("B3"), said("B5")]).toEqual(["B3: why one", ""]);
    expect(model.exportData()).toMatchObject({ cellNotes: [{ range: "One!B3", note: "why one" }] });
    model.dispatch("REMOVE_COLUMNS_ROWS", { sheetId, sheetName: "One", dimension: "ROW", elements: [2] });
    expect([said("B2"), said("B3")]).toEqual(["", ""]);
  });

  test("the pane's host writes beside, not over, what is there", async () => {
    const model = modelOf([{ at: "A1", value: 1 }]);
    const host = localHost(model);
    expect(await host.selectionAddress()).toBe("A1");
    expect(await host.isSelectionEmpty()).toBe(false);
    expect(await host.insert({ value: 2 }, false)).toEqual({ written: false, at: "A1", why: "filled" });
    expect(valueAt(model, "A1")).toBe(1);
    model.selection.selectCell(2, 4);
    expect(await host.insert({ value: "=1+1" }, false)).toEqual({ written: true, at: "C5" });
    expect(valueAt(model, "C5")).toBe("=1+1");
    expect(await host.insert({ formula: "=1+1" }, true)).toEqual({ written: true, at: "C5" });
    expect(valueAt(model, "C5")).toBe(2);
  });
});
