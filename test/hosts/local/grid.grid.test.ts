import type { GridModel } from "../../../src/hosts/local/grid";
import { localHost } from "../../../src/hosts/local/localHost";
import { cellWords } from "../../../src/hosts/local/status";
import type { SheetCell } from "../../../src/sheets/workbook";
import { bookOf, deskOf, gridOf, place, setUpGrid, sheetOf, step, valueAt } from "./gridOfOurs";

beforeAll(setUpGrid);

const modelOf = (cells: readonly SheetCell[]): GridModel =>
  gridOf({ ...bookOf(sheetOf(cells)), names: [{ name: "given", sheet: "One", at: "A1" }] });

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

  test.each([
    ["=TOY.TWICE(1", "a bracket ( is never closed"],
    ["=TOY.TWICE((1", "brackets ( are never closed"],
    ["=TOY.TWICE(1))", "a bracket ) closes that was never opened"],
    ['=TOY.TWICE("1)', 'a quote " is missing or stands too much: a text begins with one and ends with one, as in "SI"'],
    ["=TOY.TWICE(1;2)", "a semicolon stands in it: values are set apart by a comma here"],
    ["=TOY.TWICE(A1 2)", "between A1 and 2 a comma is missing, or a blank stands too much"],
    ['=TOY.TWICE("a b" 2)', "between a text and 2 a comma is missing, or a blank stands too much"],
    ["=TOY.TWICE(1*/2)", "it cannot be read as a formula: look at its commas, brackets and quotes"],
  ])("the slip in %s is told", (formula, words) => {
    const model = modelOf([{ at: "B1", formula }]);
    expect(cellWords(model, place(model, "B1"))).toBe(`B1 shows #BAD_EXPR: ${words}`);
  });

  test.each([
    ["=TOY.TWISE(1)", "no function is called TOY.TWISE; the nearest is TOY.TWICE"],
    ["=TWICE(1)", "no function is called TWICE; the nearest is TOY.TWICE"],
    ["=SUMM(1)", "no function is called SUMM; the nearest is SUM"],
    ["=XYZZYQ(1)", "no function is called XYZZYQ"],
  ])("%s names the function that was meant, if one is near", (formula, words) => {
    const model = modelOf([{ at: "B1", formula }]);
    expect(cellWords(model, place(model, "B1"))).toBe(`B1 shows #NAME?: ${words}`);
  });

  test("a note belongs to its cell: it moves with rows, comes back with undo, and goes with its row", async () => {
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
    await step(model, "REQUEST_UNDO");
    expect([said("B3"), said("B5")]).toEqual(["B3: why one", ""]);
    expect(model.exportData()).toMatchObject({ kept: { facts: [{ range: "One!B3", kind: "note", text: "why one" }] } });
    model.dispatch("REMOVE_COLUMNS_ROWS", { sheetId, sheetName: "One", dimension: "ROW", elements: [2] });
    expect([said("B2"), said("B3")]).toEqual(["", ""]);
  });

  test("the pane's host writes beside, not over, what is there", async () => {
    const model = modelOf([{ at: "A1", value: 1 }]);
    const host = localHost(deskOf(model));
    expect(await host.selectionAddress()).toBe("One!A1");
    expect(await host.insert({ value: 2 })).toEqual({ written: false, at: "One!A1", why: "filled" });
    expect(valueAt(model, "A1")).toBe(1);
    model.selection.selectCell(2, 4);
    expect(await host.insert({ value: "=1+1" })).toEqual({ written: true, at: "C5", isBlocked: false });
    expect(valueAt(model, "C5")).toBe("=1+1");
    model.selection.selectCell(0, 0);
    expect(await host.insert({ formula: "=1+1" }, "One!C5")).toEqual({ written: true, at: "C5", isBlocked: false });
    expect(valueAt(model, "A1")).toBe(1);
    expect(valueAt(model, "C5")).toBe(2);
    await expect(host.insert({ value: 3 }, "Gone!C5")).rejects.toThrow("there is no sheet called Gone any more");
  });
});
