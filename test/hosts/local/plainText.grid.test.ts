import { localHost } from "../../../src/hosts/local/localHost";
import { deskOf, gridOf, setUpGrid } from "./gridOfOurs";

beforeAll(setUpGrid);

const texts = ["95%", "5/6", "007", "1.200", "true", "oak"];

// A cell formatted as text holds the letters, whatever they look like, and so does all that is read of it: a file, a copy, Check, what is kept.
test.each(["typed", "opened"])(
  "a text that looks like a number stays that text in a cell formatted as text: %s",
  async (how) => {
    const cells = texts.map((text, index) => ({
      at: `A${index + 1}`,
      value: how === "opened" ? text : null,
      format: "@",
    }));
    const model = gridOf({ name: "", sheets: [{ name: "One", columns: [], tallRows: [], frozen: { rows: 0, columns: 0 }, cells, lists: [], flags: [] }], names: [] }); // prettier-ignore
    const sheetId = model.getters.getActiveSheetId();
    if (how === "typed")
      texts.forEach((content, row) => model.dispatch("UPDATE_CELL", { sheetId, col: 0, row, content }));
    const book = await localHost(deskOf(model)).readBook();
    const evaluated = texts.map((_, row) => model.getters.getEvaluatedCell({ sheetId, col: 0, row }).value);
    const read = book.workbook.sheets[0]!.cells.map((cell) => ("value" in cell ? cell.value : cell.formula));
    expect({ evaluated, read }).toEqual({ evaluated: texts, read: texts });
  },
);

test("in such a cell a text that begins as a formula is none when a file is opened", async () => {
  const cells = [{ at: "A1", value: "=1+1", format: "@" }];
  const model = gridOf({ name: "", sheets: [{ name: "One", columns: [], tallRows: [], frozen: { rows: 0, columns: 0 }, cells, lists: [], flags: [] }], names: [] }); // prettier-ignore
  const sheetId = model.getters.getActiveSheetId();
  expect(model.getters.getEvaluatedCell({ sheetId, col: 0, row: 0 }).value).toBe("'=1+1");
  const [cell] = (await localHost(deskOf(model)).readBook()).workbook.sheets[0]!.cells;
  expect(cell).toMatchObject({ at: "A1", value: "=1+1" });
});
