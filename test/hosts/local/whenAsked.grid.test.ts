/** What the grid works out only when it is asked is as if it had worked it out at once. */
import fc from "fast-check";
import type { GridModel } from "../../../src/hosts/local/grid";
import { bookOf, gridOf, setUpGrid, sheetOf, step } from "./gridOfOurs";

beforeAll(setUpGrid);

const book = bookOf(sheetOf([{ at: "A1", value: 1 }]), { ...sheetOf([{ at: "B2", value: 2 }]), name: "Two" });

/** What moves columns and rows of a sheet, or does not. */
const deeds: readonly ((model: GridModel, sheetId: string) => unknown)[] = [
  (model, sheetId) => model.dispatch("UPDATE_CELL", { sheetId, col: 0, row: 0, content: "5" }),
  (model, sheetId) => model.dispatch("RESIZE_COLUMNS_ROWS", { sheetId, dimension: "COL", elements: [1], size: 150 }),
  (model, sheetId) => model.dispatch("RESIZE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: [0], size: 70 }),
  (model, sheetId) => model.dispatch("HIDE_COLUMNS_ROWS", { sheetId, dimension: "COL", elements: [2] }),
  (model, sheetId) => model.dispatch("UNHIDE_COLUMNS_ROWS", { sheetId, dimension: "COL", elements: [2] }),
  (model, sheetId) =>
    model.dispatch("ADD_COLUMNS_ROWS", {
      ...{ sheetId, sheetName: model.getters.getSheetName(sheetId) },
      ...{ dimension: "ROW", base: 0, quantity: 1, position: "before" },
    }),
  (model, sheetId) =>
    model.dispatch("SET_FORMATTING", {
      ...{ sheetId, target: [{ left: 0, right: 0, top: 0, bottom: 1 }] },
      style: { fontSize: 24, wrapping: "wrap" },
    }),
  (model, sheetId) =>
    model.dispatch("DUPLICATE_SHEET", {
      ...{ sheetId, sheetIdTo: `copy${model.getters.getSheetIds().length}` },
      sheetNameTo: `Copy ${model.getters.getSheetIds().length}`,
    }),
  (model) => step(model, "REQUEST_UNDO"),
  (model) => step(model, "REQUEST_REDO"),
];

/** Where columns and rows begin, by their sizes: those that are not hidden, one after the other. */
function sums({ getters }: GridModel, sheetId: string) {
  const begins = (dimension: "COL" | "ROW"): number[] => {
    let next = 0;
    return Array.from({ length: 6 }, (_, index) => {
      const begin = next;
      if (!getters.isHeaderHidden(sheetId, dimension, index)) next += getters.getHeaderSize(sheetId, dimension, index);
      return begin;
    });
  };
  return { columns: begins("COL"), rows: begins("ROW") };
}

const asked = ({ getters }: GridModel, sheetId: string) => ({
  columns: Array.from({ length: 6 }, (_, index) => getters.getColDimensions(sheetId, index).start),
  rows: Array.from({ length: 6 }, (_, index) => getters.getRowDimensions(sheetId, index).start),
});

test("law: columns and rows of every sheet begin where those before them end", async () => {
  const done = fc.array(fc.tuple(fc.nat(deeds.length - 1), fc.boolean(), fc.boolean()), { maxLength: 8 });
  await fc.assert(
    fc.asyncProperty(done, async (list) => {
      const model = gridOf(book);
      for (const [deed, second, looks] of list) {
        await deeds[deed]!(model, model.getters.getSheetIds()[second ? 1 : 0]!);
        if (looks) model.getters.getSheetIds().forEach((id) => asked(model, id));
      }
      for (const id of model.getters.getSheetIds()) {
        expect(asked(model, id)).toEqual(sums(model, id));
        const { columns, rows } = sums(model, id);
        expect(model.getters.getColRowOffset("COL", 1, 4, id)).toBe(columns[4]! - columns[1]!);
        expect(model.getters.getColRowOffset("ROW", 1, 4, id)).toBe(rows[4]! - rows[1]!);
      }
    }),
  );
});

test("the list of colors has one that came since it was asked last", () => {
  const model = gridOf(book);
  const colored = (row: number, fillColor: string): void => {
    const sheetId = model.getters.getSheetIds()[1]!;
    model.dispatch("SET_FORMATTING", {
      sheetId,
      target: [{ left: 0, right: 0, top: row, bottom: row }],
      style: { fillColor },
    });
  };
  colored(0, "#123456");
  expect(model.getters.getCustomColors()).toContain("#123456");
  colored(1, "#654321");
  expect(model.getters.getCustomColors()).toEqual(expect.arrayContaining(["#123456", "#654321"]));
});
