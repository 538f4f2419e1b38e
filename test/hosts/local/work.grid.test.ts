/** Formulas of a few characters that ask for work without end: each says so in its cell, and nothing computes with it. */
import type { SheetCell } from "../../../src/sheets/workbook";
import { measure, MOST_WORK } from "../../../src/hosts/local/limits/meter";
import { TOO_MUCH_WORK } from "../../../src/sheets/tooMuchWork";
import { bookOf, gridOf, place, setUpGrid, sheetOf, valueAt } from "./gridOfOurs";
beforeAll(setUpGrid);
afterEach(() => measure(MOST_WORK));

const grid = (...cells: readonly SheetCell[]) => gridOf(bookOf(sheetOf(cells)));
const shown = (formula: string) => {
  const model = grid({ at: "A1", formula });
  return model.getters.getEvaluatedCell(place(model, "A1"));
};
const REFUSED = { type: "error", message: TOO_MUCH_WORK };

test.each([
  ["=SUM(SEQUENCE(100000,10000))"],
  ["=IFERROR(SUM(SEQUENCE(100000,10000)),5)"],
  ["=IF(ISERROR(SEQUENCE(1E9)),5,6)"],
  ["=COUNT(SEQUENCE(1E9))"],
  ["=SUM(RANDARRAY(1E9,1))"],
  ["=MUNIT(100000)"],
  ["=EXPAND(1,1E6,1E6)"],
  ["=ROWS(WRAPROWS({1,2},1E9))"],
  ["=SUM(CHOOSEROWS(SEQUENCE(1,5000),SEQUENCE(1000)*0+1))"],
  ["=SUM(OFFSET(A2,0,0,1E6,1E3))"],
  ['=SUM(INDIRECT("A2:XFD1048576"))'],
  ["=SUM(SEQUENCE(2000)*TRANSPOSE(SEQUENCE(2000)))"],
  ["=TOY.TWICE(SEQUENCE(1E9))"],
  ["=NETWORKDAYS(1,1E12)"],
  ["=WORKDAY(1,1E13)"],
  ["=CUMIPMT(0.1,1E12,1,1,1E12,0)"],
  ["=ROWS(SORTN(SEQUENCE(20000),5,2))"],
  ["=SMALL(SEQUENCE(250000),125000)"],
  ["=MDETERM(MUNIT(400))"],
  ["=POLYFIT.FORECAST(1,SEQUENCE(1000),SEQUENCE(1000),1E6)"],
  ["=SUM(VLOOKUP(SEQUENCE(50000),SEQUENCE(50000),1,FALSE))"],
  ['=REGEXTEST("aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!","(a+)+$")'],
  ['=TEXTJOIN("",FALSE,SEQUENCE(20000))'],
])("%s has no value, and says why", (formula) => expect(shown(formula)).toMatchObject(REFUSED));

test.each([
  ["=SUM(SEQUENCE(1000))", 500500],
  ["=SUM(A2:XFD1048576)", 0],
  ["=SUM(B:XFD)", 0],
  ["=NETWORKDAYS(1,9)", 6], // from Sunday, 31 December 1899, in the count of the grid: Monday 1 to Friday 5 and Monday 8
  ['=COUNTIF(SEQUENCE(100),"1*")', 0], // numbers are no texts
  ['=SUBSTITUTE("a-b","-","+")', "a+b"],
  ["=IFERROR(1/0,5)", 5],
])("%s is computed as ever", (formula, value) => expect(shown(formula).value).toBe(value));

test("a text that doubles from cell to cell ends where no cell could hold it", () => {
  const cells: SheetCell[] = [{ at: "A1", value: "x".repeat(1000) }];
  for (let row = 2; row <= 60; row++) cells.push({ at: `A${row}`, formula: `=A${row - 1}&A${row - 1}` });
  const model = grid(...cells);
  expect(valueAt(model, "A6")).toBe("x".repeat(32_000));
  for (const at of ["A7", "A8", "A60"]) expect(model.getters.getEvaluatedCell(place(model, at))).toMatchObject(REFUSED);
});

test("a text with many places that a pattern of stars could begin at is not searched", () => {
  const model = grid({ at: "A1", value: "a".repeat(30_000) }, { at: "B1", formula: '=COUNTIF(A1:A2,"*a*a*a*b")' });
  expect(model.getters.getEvaluatedCell(place(model, "B1"))).toMatchObject(REFUSED);
});

test("no formula puts a number in the place of one that was refused, nor does one after all was spent", () => {
  const cells: SheetCell[] = [
    { at: "A1", formula: "=SUM(SEQUENCE(1E9))" },
    { at: "A2", formula: "=IFERROR(A1,5)" },
    { at: "A3", formula: "=IF(ISERROR(A1),5,6)" },
    { at: "A4", formula: "=A1+1" },
    { at: "A5", formula: '=IFNA(SUM(A1:A1),"none")' },
    { at: "A6", formula: "=COUNT(A1:A2)" },
  ];
  const model = grid(...cells);
  for (const { at } of cells)
    expect([at, model.getters.getEvaluatedCell(place(model, at))]).toMatchObject([at, REFUSED]);
});

test("sums over ever longer ranges end within the measure; a change of another cell begins a new one", () => {
  measure(MOST_WORK / 100);
  const cells: SheetCell[] = [{ at: "A1", value: 1 }];
  for (let row = 2; row <= 3_000; row++) cells.push({ at: `A${row}`, formula: `=SUM(A$1:A${row - 1})*0+1` });
  const model = grid(...cells, { at: "B1", formula: "=1+1" });
  expect(valueAt(model, "A100")).toBe(1);
  expect(model.getters.getEvaluatedCell(place(model, "A3000"))).toMatchObject(REFUSED);
  model.dispatch("UPDATE_CELL", { ...place(model, "C1"), content: "=1+2" });
  expect(valueAt(model, "C1")).toBe(3);
});
