import { bookOf, gridOf, place, setUpGrid, sheetOf, valueAt } from "./gridOfOurs";

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

describe("what another program copied", () => {
  const styled = () =>
    gridOf(bookOf(sheetOf([{ at: "A1", value: 111, style: "input", format: "#,##0" }, { at: "A2", value: 5 }]))); // prettier-ignore
  const paste = (model: ReturnType<typeof gridOf>, text: string, pasteOption?: "asValue" | "onlyFormat") =>
    model.dispatch("PASTE_FROM_OS_CLIPBOARD", {
      target: [{ left: 0, right: 0, top: 0, bottom: 0 }],
      clipboardContent: { text },
      ...(pasteOption === undefined ? {} : { pasteOption }),
    });
  const values = (model: ReturnType<typeof gridOf>) => ["A1", "A2", "A3", "A4"].map((at) => valueAt(model, at));
  const look = (model: ReturnType<typeof gridOf>) => {
    const { style, format } = model.getters.getCell(place(model, "A1")) ?? {};
    return { style, format };
  };

  test("is pasted as values where that is asked for, no text of it as a formula", () => {
    const model = styled();
    paste(model, "550\n7.5\n=1+1\nbranch 30", "asValue");
    expect(values(model)).toEqual([550, 7.5, "=1+1", "branch 30"]);
  });

  test("counts as typed into the cells, which keep their look and number format", () => {
    const model = styled();
    const before = look(model);
    expect(before.format).toBe("#,##0");
    paste(model, "2550\n\n=1+1\nbranch 30");
    expect(values(model)).toEqual([2550, null, 2, "branch 30"]);
    expect(look(model)).toEqual(before);
    expect(model.getters.getEvaluatedCell(place(model, "A1")).formattedValue).toBe("2,550");
  });

  test.each(["2550\n", "2550\r\n"])("leaves the row below its last line alone: %j", (text) => {
    for (const how of [undefined, "asValue"] as const) {
      const model = styled();
      paste(model, text, how);
      expect(values(model)).toEqual([2550, 5, null, null]);
      paste(model, `1\t2\n\t\n${text}`, how); // a blank row within is one
      expect(values(model)).toEqual([1, null, 2550, null]);
    }
  });

  test("has no format to paste", () => {
    const model = styled();
    const before = look(model);
    paste(model, "2550", "onlyFormat");
    expect([valueAt(model, "A1"), look(model)]).toEqual([111, before]);
  });
});
