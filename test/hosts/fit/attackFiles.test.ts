/** Files of a few kilobytes that a reader would choke on: opened with a word, or refused with one. */
import { openBudget } from "../../../src/hosts/file/readBook";
import { farValue, farValueThatIsRead, heavyFormula, rawFile, wholeSheetRules } from "../../support/attackFiles";
import { bookOf, gridOf, setUpGrid, sheetOf, valueAt } from "../local/gridOfOurs";

beforeAll(setUpGrid);

const opened = async (bytes: Uint8Array) => {
  expect(bytes.length).toBeLessThan(25_000);
  const { workbook, leftOut } = await openBudget(bytes);
  return { model: gridOf(workbook), leftOut };
};

test.each(["XFD1048576", "A1048576", "XFD3"])("a value in %s", async (at) => {
  const { model, leftOut } = await opened(farValue(at));
  expect(leftOut).toEqual([`One!${at}`]);
  const id = model.getters.getSheetIds()[0]!;
  expect(model.getters.getNumberRows(id) * model.getters.getNumberCols(id)).toBeLessThan(20_000);
});

test("a value that a formula reads is not left out in silence", async () => {
  await expect(openBudget(farValueThatIsRead)).rejects.toThrow(
    "This file reaches farther than a sheet can here, to One!A1048576, and the formula in One!A2 may read that: delete what stands there or move it nearer, then open it.",
  );
});

test("a sum of a thousand million numbers opens, and has no value", async () => {
  const { model } = await opened(heavyFormula("SUM(SEQUENCE(100000,10000))"));
  expect(valueAt(model, "A2")).toBe("#ERROR");
});

test.each([
  "MAKEARRAY(100000,10000,LAMBDA(r,c,r*c))",
  "REPT(REPT(&quot;x&quot;,32767),32767)",
  "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.g,_xlpm.g(_xlpm.g)),_xlpm.f(_xlpm.f))",
])("%s opens, and is a name that the grid does not know", async (formula) => {
  const { model } = await opened(heavyFormula(formula));
  expect(valueAt(model, "A2")).toBe("#NAME?");
});

test("rules over the whole sheet end where the sheet does", async () => {
  const { model } = await opened(wholeSheetRules);
  const id = model.getters.getSheetIds()[0]!;
  expect(model.getters.getConditionalFormats(id)).toMatchObject([{ ranges: ["A1:AZ200"] }]);
});

test("a file with a text that no cell holds is refused", async () => {
  const long = `<row><c t="str"><f>_xldudf_DUCT_AREA(4)</f></c></row><row><c t="str"><v>${"x".repeat(40_000)}</v></c></row>`;
  await expect(openBudget(rawFile(long))).rejects.toThrow(
    /^This file has a text of 40000 characters in One!A2, longer than/,
  );
});

test("the grid itself takes no sheet that reaches too far, wherever it comes from", () => {
  const far = bookOf(sheetOf([{ at: "XFD1048576", value: 1 }]));
  expect(() => gridOf(far)).toThrow("the sheet One reaches to XFD1048576, farther than a grid may here");
});

test("rows and columns are added by hand as far as they could be opened again", () => {
  const model = gridOf(bookOf(sheetOf([{ at: "A1", value: 1 }])));
  const sheetId = model.getters.getActiveSheetId();
  const add = (dimension: "ROW" | "COL", quantity: number) =>
    model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: "One",
      dimension,
      base: 0,
      position: "after",
      quantity,
    });
  const refused = { isSuccessful: false, reasons: ["TooFar"] };
  const [rows, columns] = [model.getters.getNumberRows(sheetId), model.getters.getNumberCols(sheetId)];
  expect(add("ROW", 50_001 - rows)).toMatchObject(refused);
  expect(add("COL", 501 - columns)).toMatchObject(refused);
  expect(add("COL", 500 - columns).isSuccessful).toBe(true);
  expect(add("ROW", 3001 - rows)).toMatchObject(refused); // 1 500 000 cells are 3000 rows of 500
  expect(add("ROW", 300 - rows).isSuccessful).toBe(true);
  expect(model.getters.getNumberRows(sheetId)).toBe(300);
});
