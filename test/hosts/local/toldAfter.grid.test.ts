import { toldAfter } from "../../../src/hosts/local/toldAfter";
import { nextTurn } from "../../../src/hosts/local/nextTurn";
import { gridModel } from "../../../src/hosts/local/gridModel";
import type { GridModel } from "../../../src/hosts/local/grid";
import { library } from "../../support/gridLibrary";
import { sheetOf } from "../../support/sheetOf";
import { setUpGrid } from "./gridOfOurs";

let model: GridModel;
beforeAll(() => {
  setUpGrid();
  model = gridModel({ name: "Book", sheets: [sheetOf("S", [])], names: [] });
});

const pasted = (text: string): string | null =>
  toldAfter({ type: "PASTE_FROM_OS_CLIPBOARD", clipboardContent: { text } }, model);

// A program that writes 3,5 for three and a half writes 1.200 for twelve hundred, which is 1.2 to the grid.
test("a pasted table with decimal commas tells which of its numbers are read in the other way", () => {
  const words = pasted("lathe\t3,5\t1.200\njigsaw\t4\t1,500");
  expect(words).toMatch(
    /^This table has decimal commas \(3,5\), which stay texts,.* 1\.200 is 1\.2 here, 1,500 is 1500 here\. Type decimals with a point/,
  );
});

test("names three of many", () => {
  expect(pasted("0,125\n1.100\n1.200\n1.300\n1.400\n1.500")).toMatch(
    /: 1\.100 is 1\.1 here, 1\.200 is 1\.2 here, 1\.300 is 1\.3 here, and so on for 2 more\./,
  );
});

test.each(["lathe\t3.5\t1,200", "2.375\t1.625", "3,5\t1200", "", "elbow 1,5; branch 45\t1.200"])(
  "nothing is said of a table in which no decimal comma stands, or nothing doubtful: %j",
  (text) => {
    expect(pasted(text)).toBeNull();
  },
);

test("merging cells is told, since the others go on as blanks, and nothing else is", () => {
  expect(toldAfter({ type: "ADD_MERGE" }, model)).toMatch(/^Merged cells: formulas read what the first of them holds/);
  expect(toldAfter({ type: "UPDATE_CELL" }, model)).toBeNull();
});

test("rows that are hidden and took part of what was pasted or dragged are told", () => {
  const sheetId = model.getters.getActiveSheetId();
  const zone = library.helpers.toZone("B2:B4");
  const paste = (): string | null => {
    model.dispatch("PASTE_FROM_OS_CLIPBOARD", {
      target: [library.helpers.toZone("B2")],
      clipboardContent: { text: "1\n2\n3" },
    });
    expect(model.getters.getSelectedZone()).toEqual(zone);
    return pasted("1\n2\n3");
  };
  expect(paste()).toBeNull();
  model.dispatch("HIDE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: [2, 7] });
  const words = "Rows that are hidden were written over, too: 3. Undo takes that back.";
  expect(paste()).toBe(words);
  expect(toldAfter({ type: "PASTE" }, model)).toBe(words);
  for (const type of ["AUTOFILL", "COPY_PASTE_CELLS_ABOVE", "COPY_PASTE_CELLS_ON_LEFT"])
    expect(toldAfter({ type }, model)).toBe(words);
  expect(toldAfter({ type: "AUTOFILL_SELECT" }, model)).toBeNull();
  expect(toldAfter({ type: "UPDATE_CELL" }, model)).toBeNull();
});

/** What is told of all that is done to another grid, as the page follows it; and what does it. */
function following() {
  const other = gridModel({ name: "Book", sheets: [sheetOf("S", []), sheetOf("T", [])], names: [] });
  const [sheetId, second] = other.getters.getSheetIds() as [string, string];
  const told: string[] = [];
  other.on("command-dispatched", told, (done: object) => {
    const words = toldAfter(done as { readonly type: string }, other);
    if (words !== null) told.push(words);
  });
  const said = async (type: string, what: object = {}): Promise<string[]> => {
    other.dispatch(type as never, { sheetId, ...what } as never);
    await nextTurn(); // the grid's session takes it in
    return told.splice(0);
  };
  const target = (zone: string) => ({ target: [library.helpers.toZone(zone)] });
  return { said, target, second, sheetId };
}

test("hidden columns that took part of what was pasted are told, beside rows", async () => {
  const { said, target } = following();
  await said("HIDE_COLUMNS_ROWS", { dimension: "COL", elements: [2] });
  const paste = { ...target("B2"), clipboardContent: { text: "610\t111\t3.3" } };
  expect(await said("PASTE_FROM_OS_CLIPBOARD", paste)).toEqual([
    "Columns that are hidden were written over, too: C. Undo takes that back.",
  ]);
  await said("HIDE_COLUMNS_ROWS", { dimension: "ROW", elements: [1] });
  expect(await said("PASTE_FROM_OS_CLIPBOARD", paste)).toEqual([
    "Rows that are hidden were written over, too: 2. Undo takes that back. Columns that are hidden were written over, too: C. Undo takes that back.",
  ]);
});

test("hidden rows that were emptied or deleted along with others are told, and nothing where none is hidden", async () => {
  const { said, target } = following();
  expect(await said("DELETE_UNFILTERED_CONTENT", target("B2:B5"))).toEqual([]);
  await said("HIDE_COLUMNS_ROWS", { dimension: "ROW", elements: [2, 3] });
  expect(await said("DELETE_UNFILTERED_CONTENT", target("B2:B5"))).toEqual([
    "Rows that are hidden were emptied, too: 3, 4. Undo takes that back.",
  ]);
  expect(await said("DELETE_UNFILTERED_CONTENT", target("B5:B6"))).toEqual([]);
  const rows = { dimension: "ROW", sheetName: "S" };
  expect(await said("REMOVE_COLUMNS_ROWS", { ...rows, elements: [4, 5] })).toEqual([]);
  expect(await said("REMOVE_COLUMNS_ROWS", { ...rows, elements: [1, 2, 3] })).toEqual([
    "Rows that are hidden were deleted, too: 3, 4. Undo takes that back.",
  ]);
});

test("a hidden row or column is named once, in however many pieces it was emptied", async () => {
  const { said } = following();
  await said("HIDE_COLUMNS_ROWS", { dimension: "COL", elements: [2] });
  const pieces = { target: ["A4:Z4", "A2:Z2", "A3:Z3"].map(library.helpers.toZone) }; // as the menu clears rows
  expect(await said("DELETE_CONTENT", pieces)).toEqual([
    "Columns that are hidden were emptied, too: C. Undo takes that back.",
  ]);
  await said("HIDE_COLUMNS_ROWS", { dimension: "ROW", elements: [1, 3] });
  expect(await said("DELETE_CONTENT", pieces)).toEqual([
    "Rows that are hidden were emptied, too: 2, 4. Undo takes that back. Columns that are hidden were emptied, too: C. Undo takes that back.",
  ]);
});

test("what is undone or done again on a sheet that is not in front is told, and only that", async () => {
  const { said, sheetId, second } = following();
  await said("UPDATE_CELL", { col: 0, row: 0, content: "1" });
  expect(await said("REQUEST_UNDO")).toEqual([]);
  expect(await said("REQUEST_REDO")).toEqual([]);
  await said("ACTIVATE_SHEET", { sheetIdFrom: sheetId, sheetIdTo: second });
  expect(await said("REQUEST_UNDO")).toEqual(["Undone on the sheet S."]);
  expect(await said("REQUEST_REDO")).toEqual(["Done again on the sheet S."]);
});
