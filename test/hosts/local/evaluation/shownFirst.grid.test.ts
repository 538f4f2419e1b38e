/** Cells computed after a change, the shown sheet's first: whatever is done meanwhile, a cell shows what it shows in a book that is opened anew. */
import fc from "fast-check";
import { computedByLibrary, gridOf, setUpGrid, shownOn, step } from "../gridOfOurs";
import { book, change, computeMore, finishing, idOf, NAMES, show, type } from "./toyBooks";
import type { GridModel } from "../../../../src/hosts/local/grid";
import { lawRuns } from "../../../support/lawRuns";
import { sheetOf } from "../../../support/sheetOf";

beforeAll(setUpGrid);

/**
 * All at once, in the library's own way. What INDIRECT and names read it learns only in computing, and where that is computed again
 * later in the same go, it leaves their formula behind. So these are computed once more, when all of it is known.
 */
const openedAnew = (model: GridModel): GridModel =>
  computedByLibrary(() => {
    const anew = new o_spreadsheet.Model(model.exportData());
    const { getters } = anew;
    const cells = getters.getSheetIds().flatMap((id) => getters.getCells(id));
    const isLate = new RegExp(["INDIRECT", ...NAMES.map(({ name }) => name)].join("|"));
    const late = cells.filter((cell) => cell.isFormula && isLate.test(cell.compiledFormula.toFormulaString(getters)));
    void anew.dispatch("EVALUATE_CELLS", { cellIds: late.map(({ id }) => id) });
    return anew;
  });

test("a book that is opened shows it, whatever is shown or asked for first", async () => {
  let times = 0;
  await fc.assert(
    fc.asyncProperty(book, fc.array(fc.oneof(show, computeMore), { maxLength: 4 }), async (made, looks) => {
      const model = gridOf(made);
      const anew = openedAnew(model);
      for (const { act } of [{ act: () => undefined }, ...looks]) {
        await act(model);
        if (finishing(model).isLeft()) times++;
        const shown = model.getters.getActiveSheetId();
        expect(shownOn(model, shown)).toEqual(shownOn(anew, shown));
      }
      finishing(model).finish();
      for (const id of model.getters.getSheetIds()) expect(shownOn(model, id)).toEqual(shownOn(anew, id));
    }),
    lawRuns(200),
  );
  expect(times).toBeGreaterThan(0);
});

test("a book that is edited shows what it shows when it is opened anew", async () => {
  let times = 0;
  await fc.assert(
    fc.asyncProperty(book, fc.array(change, { minLength: 1, maxLength: 12 }), async (made, changes) => {
      const model = gridOf(made);
      for (const { act } of changes) {
        await act(model);
        if (finishing(model).isLeft()) times++;
        const shown = model.getters.getActiveSheetId();
        expect(shownOn(model, shown)).toEqual(shownOn(openedAnew(model), shown));
      }
      const anew = openedAnew(model);
      for (const id of model.getters.getSheetIds()) expect(shownOn(model, id)).toEqual(shownOn(anew, id));
    }),
    lawRuns(100),
  );
  expect(times).toBeGreaterThan(0);
});

// Two formulas, the upper one blocked by the lower; once that is gone the upper one fills its cell, and clearing the cell again changes nothing.
test.each([1, 2])("a cell that a formula fills keeps its value when it is cleared (%d times)", (times) => {
  const numbers = [{ at: "K1", formula: "=SEQUENCE(2)" }, { at: "K2", formula: "=SEQUENCE(2)" }]; // prettier-ignore
  const model = gridOf({ name: "Toy", names: [], sheets: [sheetOf("One", []), sheetOf("Two", numbers)] });
  for (let time = 0; time < times; time++) void type("Two", "K2", "")(model);
  expect(shownOn(model, idOf(model, "Two"))).toEqual(["K1 1 ", "K2 2 "]);
});

test("a sheet that was just duplicated and is undone while it is computed leaves the others as they were", async () => {
  const formulas = [1, 2, 3, 4].map((row) => ({ at: `B${row}`, formula: `=A${row}+1` }));
  const model = gridOf({ name: "Toy", names: [], sheets: [sheetOf("One", formulas), sheetOf("Two", formulas)] });
  void model.dispatch("DUPLICATE_SHEET", { sheetId: idOf(model, "Two"), sheetIdTo: "copy", sheetNameTo: "Copy" });
  let cells = 0;
  finishing(model).finish(() => cells++ === 6); // those of Two, and two of the copy
  expect(finishing(model).isLeft()).toBe(true);
  await step(model, "REQUEST_UNDO");
  expect(model.getters.getSheetIds()).toHaveLength(2);
  for (const id of model.getters.getSheetIds())
    expect(shownOn(model, id)).toEqual(["B1 1 ", "B2 1 ", "B3 1 ", "B4 1 "]);
});
