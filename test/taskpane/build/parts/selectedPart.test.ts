import { selectedPart } from "../../../../src/taskpane/build/parts/selectedPart";
import { bookOf } from "../../../support/books";

const book = bookOf({
  "My runs": {
    rows: [
      ["Run", "To", "Diameter (in)", "Fittings", "Hood"],
      ["saw", "fan", 4, "elbow 1.5 x2", null],
    ],
  },
});

test("a cell under Fittings or Hood is one of its run, whatever the sheet is called", () => {
  expect(selectedPart(book, "'My runs'!D2:E2")).toEqual({ sheet: "My runs", at: "D2", column: "Fittings", run: "saw", runAt: "A2", content: "elbow 1.5 x2", formula: null }); // prettier-ignore
  expect(selectedPart(book, "'My runs'!E3")).toEqual({
    sheet: "My runs",
    at: "E3",
    column: "Hood",
    run: "",
    runAt: "A3",
    content: "",
    formula: null,
  });
});

test("a formula there is told, also one that shows nothing", () => {
  const { workbook, shown } = book;
  const [sheet] = workbook.sheets;
  const cells = [...sheet!.cells.filter(({ at }) => at !== "D2"), { at: "D2", formula: '=""' }];
  const emptied = new Map([...shown.get("My runs")!].filter(([at]) => at !== "D2"));
  const withFormula = {
    workbook: { ...workbook, sheets: [{ ...sheet!, cells }] },
    shown: new Map([["My runs", emptied]]),
  };
  expect(selectedPart(withFormula, "'My runs'!D2")).toMatchObject({ content: "", formula: '=""' });
});

test.each(["'My runs'!D1", "'My runs'!C2", "Other!D2", "D2", "no range"])("%s is none", (reference) => {
  expect(selectedPart(book, reference)).toBeNull();
});
