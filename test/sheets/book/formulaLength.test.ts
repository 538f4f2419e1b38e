import { demoBook } from "../../../src/sheets/demo";

const demo = demoBook();

// The grid in the browser breaks a shown formula into lines by calling itself once a word. One of 6,900 characters was too much
// for it when its cell was selected, and the whole sheet went; 3,600 are shown. Excel takes 8,192.
test("no formula of a book is so long that its cell cannot be selected in the browser", () => {
  const long = demo.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) =>
      "formula" in cell && cell.formula.length > 4000 ? [`${name}!${cell.at}: ${cell.formula.length}`] : [],
    ),
  );
  expect(long).toEqual([]);
});
