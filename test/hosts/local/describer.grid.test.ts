import fc from "fast-check";
import { calculatedOf, shownWith } from "../../../src/hosts/local/readGrid";
import { changesBook, type Describer, describer, type GridCommand } from "../../../src/hosts/local/describer";
import { KEEP } from "../../../src/hosts/local/keptPlugin";
import type { GridModel } from "../../../src/hosts/local/grid";
import type { Sheet } from "../../../src/sheets/workbook";
import { bookOf, gridOf, place, setUpGrid, sheetOf, step } from "./gridOfOurs";

beforeAll(setUpGrid);

const book = bookOf(
  sheetOf([
    { at: "A1", value: 1 },
    { at: "A2", formula: "=Two!B2+A1" },
  ]),
  {
    ...sheetOf([{ at: "B2", value: 2, style: "input" }]),
    name: "Two",
  },
);

/** A grid that tells the describer what is done to it, as the page does. */
function followed(): { model: GridModel; described: Describer } {
  const model = gridOf(book);
  const described = describer(model, book);
  model.on("command-dispatched", {}, (happened: object) => {
    const command = happened as GridCommand;
    if (changesBook(command)) described.done(command);
  });
  return { model, described };
}

/** What a person can do to either sheet, by number. */
const deeds: readonly ((model: GridModel, sheetId: string) => unknown)[] = [
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 0, row: 0, content: "5" }),
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 2, row: 3, content: "=A1*2" }),
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 1, row: 0, content: "before the others" }),
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 9, row: 40, content: "=Two!B2" }),
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 0, row: 0, content: "" }),
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 2, row: 3, style: { bold: true }, format: "0.0" }),
  (model, sheetId) => model.dispatch("CLEAR_CELL", { sheetId, col: 1, row: 1 }),
  (model, sheetId) => model.dispatch("DELETE_CONTENT", { sheetId, target: [{ left: 0, right: 1, top: 0, bottom: 1 }] }),
  (model, sheetId) =>
    model.dispatch("SET_FORMATTING", { sheetId, target: [{ left: 0, right: 0, top: 0, bottom: 2 }], format: "0.00" }),
  (model, sheetId) =>
    model.dispatch("SET_FORMATTING", {
      sheetId,
      target: [{ left: 0, right: 1, top: 0, bottom: 1 }],
      style: { bold: true },
    }),
  (model, sheetId) =>
    model.dispatch("SET_BORDER", {
      sheetId,
      col: 0,
      row: 1,
      border: { bottom: { style: "medium", color: "#5c7a78" } },
    }),
  (model, sheetId) => model.dispatch("SET_BORDER", { sheetId, col: 0, row: 1, border: undefined }),
  (model) =>
    model.dispatch(
      KEEP as never,
      { facts: [{ range: "A1", kind: "note", text: "noted" }], papers: {}, keys: {} } as never,
    ),
  (model, sheetId) => {
    const sheetIdFrom = model.getters.getActiveSheetId();
    if (sheetIdFrom !== sheetId) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo: sheetId });
    model.selection.selectCell(0, 1);
    model.dispatch("CUT");
    model.dispatch("PASTE", { target: [{ left: 3, right: 3, top: 4, bottom: 4 }] });
  },
  (model, sheetId) => model.dispatch("RESIZE_COLUMNS_ROWS", { sheetId, dimension: "COL", elements: [1], size: 150 }),
  (model, sheetId) =>
    model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: model.getters.getSheetName(sheetId),
      dimension: "ROW",
      base: 0,
      quantity: 1,
      position: "before",
    }),
  (model, sheetId) => model.dispatch("RENAME_SHEET", { sheetId, oldName: "", newName: `New ${sheetId}` }),
  (model, sheetId) =>
    model.dispatch("CREATE_NAMED_RANGE", {
      name: `name_${sheetId}`,
      ranges: [model.getters.getRangeDataFromXc(sheetId, "A1")],
    } as never),
  (model) => step(model, "REQUEST_UNDO"),
  (model) => step(model, "REQUEST_REDO"),
];

describe("what is described anew", () => {
  test("is as if all were, whatever was done", async () => {
    const done = fc.array(fc.tuple(fc.nat(deeds.length - 1), fc.boolean()), { maxLength: 8 });
    await fc.assert(
      fc.asyncProperty(done, async (list) => {
        const { model, described } = followed();
        for (const [deed, second] of list) {
          await deeds[deed]!(model, model.getters.getSheetIds()[second ? 1 : 0]!);
          shownWith(model, described.workbook());
        }
        expect(shownWith(model, described.workbook())).toEqual(calculatedOf(model));
      }),
    );
  });

  test("is a formula that names a sheet which has another name now, though nobody touched its cell", () => {
    const { model, described } = followed();
    const [one, two] = model.getters.getSheetIds();
    model.dispatch("UPDATE_CELL", { sheetId: one!, col: 2, row: 3, content: "7" });
    expect(described.workbook().sheets[0]!.cells).toContainEqual({ at: "A2", formula: "=Two!B2+A1" });
    model.dispatch("RENAME_SHEET", { sheetId: two!, oldName: "Two", newName: "Three" });
    expect(described.workbook().sheets[0]!.cells).toContainEqual({ at: "A2", formula: "=Three!B2+A1" });
  });

  test("is a cell that a note came to", () => {
    const { model, described } = followed();
    model.dispatch("UPDATE_CELL", { ...place(model, "C4"), content: "7" });
    described.workbook();
    model.dispatch(
      KEEP as never,
      { facts: [{ range: "One!A1", kind: "note", text: "noted" }], papers: {}, keys: {} } as never,
    );
    expect(described.workbook().sheets[0]!.cells[0]).toEqual({ at: "A1", value: 1, note: "noted" });
  });

  test("is the sheet that was typed in, and no other", () => {
    const { model, described } = followed();
    const [, before] = described.workbook().sheets;
    model.dispatch("UPDATE_CELL", { ...place(model, "A1"), content: "9" });
    const [one, two] = described.workbook().sheets;
    expect(one!.cells[0]).toMatchObject({ at: "A1", value: 9 });
    expect(two).toBe(before);
    expect(described.workbook().sheets[0]).toBe(one);
  });

  // Once one cell was entered, an entry is described alone; each of these is compared with all cells described anew.
  test("is a cell that was entered after another, before, between and behind the others, and one that was emptied", () => {
    const { model, described } = followed();
    const [sheetId] = model.getters.getSheetIds();
    const entries = [
      ["B2", "7"],
      ["B1", "first"],
      ["A3", "=B2*2"],
      ["Z50", "last"],
      ["B2", ""],
      ["A1", "8"],
    ] as const;
    for (const [at, content] of entries) {
      model.dispatch("UPDATE_CELL", { sheetId: sheetId!, ...o_spreadsheet.helpers.toCartesian(at), content });
      expect(shownWith(model, described.workbook())).toEqual(calculatedOf(model));
    }
    const { cells } = described.workbook().sheets[0]!;
    expect(cells.map(({ at }) => at)).toEqual(["A1", "B1", "A2", "A3", "Z50"]);
  });

  test("is a cell that was entered without a look at the others", () => {
    const { model, described } = followed();
    model.dispatch("UPDATE_CELL", { ...place(model, "A1"), content: "7" });
    described.workbook();
    for (const at of ["A1", "C4"]) model.dispatch("UPDATE_CELL", { ...place(model, at), content: "8" });
    const all = jest.spyOn(model.getters, "getCells");
    const [{ cells }] = described.workbook().sheets as [Sheet];
    expect(all).not.toHaveBeenCalled();
    expect(cells).toEqual([
      { at: "A1", value: 8 },
      { at: "A2", formula: "=Two!B2+A1" },
      { at: "C4", value: 8 },
    ]);
  });

  test("is every sheet after a row has come, since formulas of others may point behind it", () => {
    const { model, described } = followed();
    const [sheetId] = [model.getters.getSheetIds()[1]!];
    model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: "Two",
      dimension: "ROW",
      base: 0,
      quantity: 1,
      position: "before",
    });
    expect(described.workbook().sheets[0]!.cells[1]).toMatchObject({ formula: "=Two!B3+A1" });
  });
});
