import { addSheets, append } from "../../../src/hosts/local/addSheets";
import { calculatedOf } from "../../../src/hosts/local/readGrid";
import type { Watch } from "../../../src/hosts/host";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import type { SheetCell, Workbook } from "../../../src/sheets/workbook";
import { bookOf, gridOf, place, setUpGrid, sheetOf, step } from "./gridOfOurs";
beforeAll(setUpGrid);

const watch = (): Watch & { readonly heard: string[]; readonly cancel: AbortController } => {
  const heard: string[] = [];
  const cancel = new AbortController();
  return { heard, cancel, signal: cancel.signal, progress: (done, of, what) => heard.push(`${done}/${of} ${what}`) };
};

const mine: readonly SheetCell[] = [
  { at: "A1", value: "mine", style: "title", note: "keep me" },
  { at: "B2", formula: "=A1" },
];

const rich: Workbook = {
  name: "Rich",
  sheets: [
    sheetOf(
      [
        { at: "A1", value: "head", style: "header" },
        { at: "B1", value: "other", style: "header" },
        { at: "A2", value: 0.5, style: "input", format: "0.00", note: "half" },
        { at: "A3", value: null, style: "input" },
        { at: "C3", formula: "=TOY.TWICE(A2)+half+Second!A1" },
      ],
      {
        name: "First",
        columns: [12, 30.5],
        tallRows: [{ row: 2, lines: 3 }],
        frozen: { rows: 1, columns: 2 },
        gridlines: false,
        lists: [{ range: "A2:A3", choices: ["a", "b"], strict: true }],
        hints: [{ range: "A2:A3", text: "a half" }],
        flags: [{ range: "A1:C9", containsText: "see", style: "flag" }],
        tables: [{ name: "Halves", range: "A1:B3" }],
        print: { paper: "Letter", landscape: true, titleRows: { first: 1, last: 1 }, area: "A1:C9" },
        charts: [
          {
            kind: "line through points",
            over: "E2:H9",
            title: "t",
            x: { title: "x", range: "A1:A3" },
            y: { title: "y", series: [{ name: "s", range: "B1:B3", ink: "#3f5f5c" }] },
          },
        ],
      },
    ),
    sheetOf([{ at: "A1", value: 4 }], { name: "Second" }),
  ],
  names: [{ name: "half", sheet: "First", at: "A2" }],
};

describe("adding sheets", () => {
  test("everything that a description says of a sheet comes with it, and what was there stays as it was", async () => {
    const model = gridOf(bookOf(sheetOf(mine)));
    const before = calculatedOf(model).workbook;
    const outcome = await append(model, watch(), () => rich);
    expect(outcome).toEqual({ added: true, sheets: ["First", "Second"] });
    const after = calculatedOf(model);
    expect(after.workbook.sheets).toEqual([...before.sheets, ...rich.sheets]);
    expect(after.workbook.names).toEqual(rich.names);
    expect(after.shown.get("First")!.get("C3")).toEqual({ value: 0.5 * 2 + 0.5 + 4 });
  });

  test("one undo takes all of it back, and redo brings it again", async () => {
    const model = gridOf(bookOf(sheetOf(mine)));
    const before = calculatedOf(model);
    await append(model, watch(), () => rich);
    const after = calculatedOf(model);
    await step(model, "REQUEST_UNDO");
    expect(calculatedOf(model)).toEqual(before);
    await step(model, "REQUEST_REDO");
    expect(calculatedOf(model)).toEqual(after);
  });

  test("a running sum comes in one step, and the grid goes on after it", async () => {
    const model = gridOf(bookOf(sheetOf(mine)));
    const running = sheetOf(
      [
        { at: "A1", value: 3 },
        { at: "A2", value: 4 },
        { at: "B1", formula: "=SUM(A$1:A1)" },
        { at: "B2", formula: "=SUM(A$1:A2)" },
      ],
      { name: "Running" },
    );
    expect(await append(model, watch(), () => bookOf(running))).toEqual({ added: true, sheets: ["Running"] });
    await step(model, "REQUEST_UNDO");
    expect(calculatedOf(model).workbook.sheets.map(({ name }) => name)).toEqual(["One"]);
    await step(model, "REQUEST_REDO");
    const sheetId = model.getters.getSheetIdByName("Running")!;
    model.dispatch("UPDATE_CELL", { ...place(model, "A1"), sheetId, content: "10" });
    expect(calculatedOf(model).shown.get("Running")!.get("B2")).toEqual({ value: 10 + 4 });
  });

  test.each([0, 1])("cancelled after step %d, it leaves nothing behind", async (steps) => {
    const model = gridOf(bookOf(sheetOf(mine)));
    const before = calculatedOf(model);
    const watching = watch();
    const progress: Watch["progress"] = (done) => {
      if (done === steps) watching.cancel.abort();
    };
    expect(await append(model, { ...watching, progress }, () => rich)).toEqual({
      added: false,
      why: "Cancelled: nothing was added.",
    });
    expect(calculatedOf(model)).toEqual(before);
  });

  test("where the grid refuses a part, all of it goes again and one sentence says so", async () => {
    const complain = jest.spyOn(console, "error").mockImplementation(() => undefined);
    const model = gridOf(bookOf(sheetOf(mine)));
    const before = calculatedOf(model);
    const clash: Workbook = { ...rich, sheets: [...rich.sheets, sheetOf([], { name: "One" })] };
    expect(await append(model, watch(), () => clash)).toEqual({
      added: false,
      why: "The sheet refused a part of what was to be added, so nothing was.",
    });
    expect(complain).toHaveBeenCalledTimes(1);
    expect(calculatedOf(model)).toEqual(before);
    complain.mockRestore();
  });

  test("a budget's sheets take other names where theirs are taken, say how far they are, and are the ones told", async () => {
    const model = gridOf(bookOf(sheetOf(mine, { name: "Start" })));
    const watching = watch();
    const outcome = await addSheets(model, { units: "SI", sheets: ["start"], contents: "empty" }, watching);
    expect(outcome).toEqual({ added: true, sheets: ["Start 2"] });
    expect(calculatedOf(model).workbook.sheets.map(({ name }) => name)).toEqual(["Start", "Start 2"]);
    expect(watching.heard).toEqual(["0/2 Laying out the sheets", "1/2 Writing Start 2", "2/2 Done"]);
  });

  test("a sheet that is added later reads those of the budget that is there, not sheets of somebody else's", async () => {
    const book = budgetBook(
      { units: "SI", sheets: ["start", "runs", "fan", "budget", "flow"], contents: "example" },
      { sheets: [], names: [] },
    );
    const model = gridOf({ ...book, sheets: [...book.sheets, sheetOf(mine, { name: "Fan 2" })] });
    const outcome = await addSheets(model, { units: "SI", sheets: ["summary"], contents: "empty" }, watch());
    expect(outcome).toEqual({ added: true, sheets: ["Summary"] });
    const added = calculatedOf(model).workbook.sheets.at(-1)!;
    const formulas = added.cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []));
    expect(formulas.some((formula) => formula.includes("Flow!"))).toBe(true);
    expect(formulas.filter((formula) => formula.includes("Fan 2"))).toEqual([]);
  });

  test("a sheet that the user gave another name is used all the same; one that was copied by hand is not", async () => {
    const order = { units: "SI", sheets: ["start", "cautions"], contents: "empty" } as const;
    const model = gridOf(budgetBook(order, { sheets: [], names: [] }));
    const sheetId = model.getters.getSheetIdByName("Start")!;
    model.dispatch("RENAME_SHEET", { sheetId, oldName: "Start", newName: "Begin here" });
    model.dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo: "Start" });
    const outcome = await addSheets(model, { units: "SI", sheets: ["readings"], contents: "empty" }, watch());
    expect(outcome).toEqual({ added: true, sheets: ["Readings"] });
    const { sheets } = calculatedOf(model).workbook;
    expect(sheets.map(({ name, key }) => [name, key])).toEqual([
      ["Begin here", "start"],
      ["Start", undefined],
      ["Cautions", "cautions"],
      ["Readings", "readings"],
    ]);
    const formulas = sheets.at(-1)!.cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []));
    expect(formulas.filter((formula) => /\bStart!/.test(formula))).toEqual([]);
  });
});
