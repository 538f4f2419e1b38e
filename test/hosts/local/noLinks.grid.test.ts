/** A text of a file, of the browser's store or of the clipboard is a text, whatever it looks like. */
import { library } from "../../support/gridLibrary";
import { bookOf, gridOf, place, setUpGrid, sheetOf, valueAt } from "./gridOfOurs";

beforeAll(setUpGrid);

const TEXTS = [
  "https://example.org/x",
  "http://www.example.org",
  "[label](https://example.org)",
  "[5](https://example.org)",
  "[5](o-spreadsheet://sheet1)",
  "[x](javascript:alert(1))",
];

const texts = () => gridOf(bookOf(sheetOf(TEXTS.map((value, index) => ({ at: `A${index + 1}`, value })))));

test("a text that looks like an address or like a link with a label is the text that it is, and no link", () => {
  const model = texts();
  TEXTS.forEach((text, index) => {
    const cell = model.getters.getEvaluatedCell(place(model, `A${index + 1}`));
    expect(cell).toMatchObject({ type: "text", value: text });
    expect(cell).not.toHaveProperty("link");
  });
});

test("a number between the brackets of a link is no number of a sum", () => {
  const model = gridOf(
    bookOf(
      sheetOf([
        { at: "A1", value: "[5](https://example.org)" },
        { at: "A2", formula: "=SUM(A1:A1)" },
      ]),
    ),
  );
  expect(valueAt(model, "A2")).toBe(0);
});

test("a text that is written into a cell later is no link either, and another text takes its place whole", () => {
  const model = texts();
  model.dispatch("UPDATE_CELL", { ...place(model, "A1"), content: "https://example.org/y" });
  expect(model.getters.getEvaluatedCell(place(model, "A1"))).not.toHaveProperty("link");
  model.dispatch("UPDATE_CELL", { ...place(model, "A1"), content: "5" });
  expect(valueAt(model, "A1")).toBe(5);
});

test.each([
  ['=HYPERLINK("https://example.org/","the page")', "the page"],
  ['=HYPERLINK("https://example.org/",5)', 5],
  ['=HYPERLINK("https://example.org/")', "https://example.org/"],
])("%s shows %p and is no link", (formula, shown) => {
  const model = gridOf(bookOf(sheetOf([{ at: "A1", formula }])));
  expect(valueAt(model, "A1")).toBe(shown);
  expect(model.getters.getEvaluatedCell(place(model, "A1"))).not.toHaveProperty("link");
});

test("nothing of the grid offers, shows or opens a link", () => {
  const { registries } = library;
  expect(registries.cellPopoverRegistry.getKeys()).not.toEqual(expect.arrayContaining(["LinkCell"]));
  expect(registries.cellPopoverRegistry.getKeys()).not.toEqual(expect.arrayContaining(["LinkEditor"]));
  expect(registries.clickableCellRegistry.getKeys()).not.toContain("link");
  const menus = JSON.stringify([registries.topbarMenuRegistry.content, registries.cellMenuRegistry.content]);
  expect(menus).toContain("insert_function"); // so it would be seen
  expect(menus).not.toContain("insert_link");
  expect(registries.urlRegistry.getKeys()).toEqual(["none"]);
});
