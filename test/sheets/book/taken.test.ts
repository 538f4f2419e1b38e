import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { takenIn } from "../../../src/sheets/book/parts/taken";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";
import { sheetOf } from "../../support/sheetOf";

const book = budgetBook(
  { units: "SI", sheets: ["start", "runs", "fan", "budget", "flow"], contents: "example" },
  { sheets: [], names: [] },
);
const usual = { start: "Start", runs: "Runs", fan: "Fan", budget: "Budget", flow: "Flow" };

/** As version 1.0.0 kept a book. */
function withoutKeys(sheet: Sheet): Sheet {
  const copy: { -readonly [Part in keyof Sheet]: Sheet[Part] } = { ...sheet };
  delete copy.key;
  return copy;
}

describe("what a workbook has already", () => {
  test("the sheets of a budget say which they are, whatever they are called", () => {
    expect(book.sheets.map(({ key }) => key)).toEqual(["start", "runs", "fan", "budget", "flow"]);
    const renamed: Workbook = {
      ...book,
      sheets: book.sheets.map((sheet) => (sheet.key === "runs" ? { ...sheet, name: "My ducts" } : sheet)),
    };
    expect(takenIn(renamed)).toMatchObject({
      sheets: ["Start", "My ducts", "Fan", "Budget", "Flow"],
      ours: { ...usual, runs: "My ducts" },
      ourNames: { units: "units", density: "density", dust: "dust", transport: "transport" },
    });
  });

  test("of two sheets of a kind the later one counts, and a user's sheet that is called like ours is none", () => {
    const again = { ...book.sheets[1]!, name: "Runs 2" };
    const mine = sheetOf("Fan", [{ at: "A1", value: "mine" }]);
    const sheets = [...book.sheets.slice(0, 2), again, mine];
    expect(takenIn({ ...book, sheets }).ours).toEqual({ start: "Start", runs: "Runs 2" });
  });

  test("a book whose sheets say nothing is known by names and by what its formulas ask for", () => {
    const mine = sheetOf("Fan 2", [{ at: "A1", formula: "=1+1" }]);
    const old = { ...book, sheets: [...book.sheets.map(withoutKeys), mine] };
    expect(takenIn(old).ours).toEqual(usual);
  });

  test("nothing is taken for ours where no cell called units is where ours is", () => {
    const names = book.names.map((name) => (name.name === "units" ? { ...name, at: "Z1" } : name));
    expect(takenIn({ ...book, names, sheets: book.sheets.map(withoutKeys) })).toMatchObject({ ours: {}, ourNames: {} });
  });
});
