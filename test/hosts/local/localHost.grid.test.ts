import type { CopyMaker } from "../../../src/hosts/copyInWorker";
import type { Watch } from "../../../src/hosts/host";
import { makeCopy } from "../../../src/hosts/makeCopy";
import { readBook } from "../../../src/hosts/file/readBook";
import { calculatedOf } from "../../../src/hosts/local/readGrid";
import { localHost } from "../../../src/hosts/local/localHost";
import { wholeBudget } from "../../../src/hosts/local/newForm";
import type { OpenBook } from "../../../src/hosts/local/openBook";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import type { SheetKey } from "../../../src/sheets/sheetKeys";
import type { Workbook } from "../../../src/sheets/workbook";
import { bookOf, deskOf, gridOf, setUpGrid, sheetOf } from "./gridOfOurs";
beforeAll(setUpGrid);

const watch = (signal = new AbortController().signal): Watch => ({ progress: () => undefined, signal });

/** The functions are not there, so what a copy shows cannot be compared with what the budget shows. */
const copier: CopyMaker = (book, order, step) => makeCopy(book, order, () => book.shown, step);

const twoSheets = bookOf(
  sheetOf([{ at: "A1", value: 1 }]),
  sheetOf([{ at: "B2", formula: "=DUCT.NOSUCH(One!A1)" }], { name: "Two words" }),
);

/** The example with these sheets and what they read; a whole one goes the same way in test/browser/paneBeside.test.ts. */
const exampleWith = (units: "IP" | "SI", ...sheets: readonly SheetKey[]): Workbook =>
  budgetBook({ units, sheets, contents: "example" }, { sheets: [], names: [] });

describe("the local sheet, as the pane sees it", () => {
  test("goes to a cell of any sheet, and refuses one of a sheet that is gone", async () => {
    const model = gridOf(twoSheets);
    const host = localHost(deskOf(model));
    await host.goTo("Two words", "B7");
    expect(model.getters.getSheetName(model.getters.getActiveSheetId())).toBe("Two words");
    expect(await host.selectionAddress()).toBe("'Two words'!B7");
    await expect(host.goTo("Three", "A1")).rejects.toThrow("there is no sheet called Three any more");
    expect(await host.selectionAddress()).toBe("'Two words'!B7");
  });

  test("has nothing to repair, and names what stands at #NAME? because no function is called so", async () => {
    const host = localHost(deskOf(gridOf(twoSheets)));
    expect(await host.repair(watch())).toEqual({
      repaired: 0,
      stillWrong: ["'Two words'!B2"],
      protectedSheets: [],
      textCells: [],
    });
  });

  test("tells of changed cells and selections, until it is told to stop", async () => {
    const model = gridOf(twoSheets);
    const host = localHost(deskOf(model));
    const changed = jest.fn();
    const stop = host.follow(changed);
    await host.insert({ value: 2 }, "'Two words'!A1");
    const afterCell = changed.mock.calls.length;
    expect(afterCell).toBeGreaterThan(0);
    model.selection.selectCell(3, 3);
    const afterSelection = changed.mock.calls.length;
    expect(afterSelection).toBeGreaterThan(afterCell);
    stop();
    await host.insert({ value: 3 }, "'Two words'!A1");
    expect(changed).toHaveBeenCalledTimes(afterSelection);
  });

  test("reads the whole book", async () => {
    const model = gridOf(twoSheets);
    expect(await localHost(deskOf(model)).readBook()).toEqual(calculatedOf(model));
  });

  const VALUES_FILE = /^a luthiers' shared workroom \d{4}-\d\d-\d\d values\.xlsx$/; // Summary names the workshop

  test("a values copy is a file with no formula in it, and the open budget is as it was", async () => {
    const model = gridOf(exampleWith("SI", "summary"));
    const before = calculatedOf(model);
    const desk = deskOf(model);
    const outcome = await localHost(desk, copier).shareCopy("values", watch());
    expect(outcome).toMatchObject({ made: true, name: expect.stringMatching(VALUES_FILE), live: 0 });
    expect(desk.sent.map(({ name }) => name)).toEqual([expect.stringMatching(VALUES_FILE)]);
    const { workbook } = await readBook(desk.sent[0]!.bytes);
    expect(workbook.sheets.flatMap(({ cells }) => cells).filter((cell) => "formula" in cell)).toEqual([]);
    expect(calculatedOf(model)).toEqual(before);
  });

  test("a cancelled copy hands out nothing", async () => {
    const desk = deskOf(gridOf(twoSheets));
    const cancelled = new AbortController();
    cancelled.abort();
    expect(await localHost(desk, copier).shareCopy("formulas", watch(cancelled.signal))).toEqual({
      made: false,
      why: "Cancelled: no copy was made.",
    });
    expect(desk.sent).toEqual([]);
  });

  test("a club copy that was opened comes back as a live budget with its formulas; another budget does not", async () => {
    const live = exampleWith("IP", "budget");
    const desk = deskOf(gridOf(live));
    await localHost(desk, copier).shareCopy("formulas", watch());
    const copy = (await readBook(desk.sent[0]!.bytes)).workbook;
    const opened: Workbook[] = [];
    const open = async ({ workbook }: OpenBook): Promise<boolean> => opened.push(workbook) > 0;
    expect(await localHost({ ...deskOf(gridOf(copy)), open }).revive(watch())).toMatchObject({ added: true });
    const calls = ({ sheets }: Workbook): number =>
      sheets.flatMap(({ cells }) => cells).filter((cell) => "formula" in cell && cell.formula.includes("DUCT.")).length;
    expect(calls(copy)).toBe(0);
    expect(calls(opened[0]!)).toBe(calls(live));
    expect(await localHost({ ...deskOf(gridOf(twoSheets)), open }).revive(watch())).toEqual({
      added: false,
      why: "This is no club copy that says what its formulas were, so nothing changed.",
    });
    expect(opened).toHaveLength(1);
  });

  test("the example is a budget of its own, opened in place of the one that is open if its user agrees", async () => {
    const asked: [OpenBook, string][] = [];
    const mine = gridOf(twoSheets);
    const agreeing = (isAgreed: boolean) => ({
      ...deskOf(mine),
      open: async (...book: [OpenBook, string]): Promise<boolean> => asked.push(book) > 0 && isAgreed,
    });
    const outcome = await localHost(agreeing(true)).openExample("SI", watch());
    expect(outcome).toMatchObject({ added: true, sheets: expect.arrayContaining(["Runs", "Budget"]) });
    const [[{ workbook, unsaved }, what]] = asked as [[OpenBook, string]];
    expect({ what, unsaved }).toEqual({ what: "The example", unsaved: false });
    expect(workbook).toEqual(wholeBudget("SI", "example"));
    expect(await localHost(agreeing(false)).openExample("IP", watch())).toEqual({
      added: false,
      why: "You kept the budget that is open.",
    });
    expect(mine.getters.getSheetIds()).toHaveLength(twoSheets.sheets.length);
  });
});
