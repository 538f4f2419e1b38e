import { bookOf, gridOf, setUpGrid, sheetOf, valueAt } from "./gridOfOurs";

beforeAll(setUpGrid);

test.each([
  ["=1+1 fills the table", "=1+1 fills the table"],
  ["=1+1", "=1+1"],
  ["5/6", "5/6"],
  ["12-6", "12-6"],
  ["50%", "50%"],
  ["007", "007"],
  ["TRUE", "TRUE"],
  ["branch 30", "branch 30"],
  [3.5, 3.5],
  [true, true],
])("of a cell with %j is pasted as a value what it holds", (value, pasted) => {
  const model = gridOf(bookOf(sheetOf([{ at: "A1", value }])));
  const zone = { left: 0, right: 0, top: 0, bottom: 0 };
  model.selection.selectZone({ cell: { col: 0, row: 0 }, zone });
  model.dispatch("COPY");
  model.dispatch("PASTE", { target: [{ left: 2, right: 2, top: 2, bottom: 2 }], pasteOption: "asValue" });
  expect(valueAt(model, "C3")).toBe(pasted);
  expect(valueAt(model, "A1")).toBe(value);
});

test("of a formula that gives a text is pasted the text, of a blank cell nothing", () => {
  const model = gridOf(
    bookOf(
      sheetOf([
        { at: "A1", formula: '="="&"1+1"' },
        { at: "C4", value: "there" },
      ]),
    ),
  );
  model.selection.selectZone({ cell: { col: 0, row: 0 }, zone: { left: 0, right: 0, top: 0, bottom: 1 } });
  model.dispatch("COPY");
  model.dispatch("PASTE", { target: [{ left: 2, right: 2, top: 2, bottom: 3 }], pasteOption: "asValue" });
  expect(["C3", "C4"].map((at) => valueAt(model, at))).toEqual(["=1+1", null]);
});
