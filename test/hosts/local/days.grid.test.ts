import { fractionIn, groupedIn, hasDecimalComma } from "../../../src/hosts/local/days";
import { bookOf, gridOf, setUpGrid, sheetOf, valueAt } from "./gridOfOurs";

beforeAll(setUpGrid);

const DAY = "m/d";
const grid = () => gridOf(bookOf(sheetOf([{ at: "A1", value: 46000, format: DAY }, { at: "A2", value: "", format: "@" }, { at: "B1", value: null, formula: "=TOY.TWICE(A1)" }]))); // prettier-ignore

/** As the field hands over what was typed: with the look of a day where the grid took it for one. */
function typed(model: ReturnType<typeof gridOf>, at: string, content: string, format?: string): unknown[] {
  const { col, row } = o_spreadsheet.helpers.toCartesian(at);
  const sheetId = model.getters.getActiveSheetId();
  model.dispatch("UPDATE_CELL", { sheetId, col, row, content, ...(format === undefined ? {} : { format }) });
  const cell = model.getters.getEvaluatedCell({ sheetId, col, row });
  return [cell.value, cell.formattedValue];
}

describe("what looks like a day", () => {
  test.each([
    ["1/2", 0.5],
    ["4 1/2", 4.5],
    ["12 15/16", 12.9375],
    [" 3/64 ", 0.046875],
    ["11/28", null],
    ["1/3", null],
    ["3/2", null],
    ["0/2", null],
    ["1/2/26", null],
    ["1/2 in", null],
    ["-1/2", null],
    ["4.5 1/2", null],
  ])("%p as a fraction of an inch is %p", (text, number) => {
    expect(fractionIn(text)).toBe(number);
  });

  test("a fraction that is typed or pasted is its number, in a cell that showed numbers before", () => {
    const model = grid();
    expect(typed(model, "D1", "1/2", DAY)).toEqual([0.5, "0.5"]);
    expect(typed(model, "D1", "4 1/2", DAY)).toEqual([4.5, "4.5"]);
    const target = [{ left: 4, right: 4, top: 0, bottom: 0 }];
    model.dispatch("PASTE_FROM_OS_CLIPBOARD", { target, clipboardContent: { text: "3/4\t5 1/8" } });
    expect(["E1", "F1"].map((at) => valueAt(model, at))).toEqual([0.75, 5.125]);
  });

  test.each([
    ["1 200", 1200],
    ["12 500.5", 12500.5],
    ["1\u00a0200\u202f000", 1_200_000],
    ["-2\u2009000", -2000],
    ["8 6", null],
    ["1 20", null],
    ["1 2000", null],
    ["1200 300", null],
    ["1 200 cfm", null],
  ])("%p as a number in groups of three digits is %p", (text, number) => {
    expect(groupedIn(text)).toBe(number);
  });

  test.each([
    ["0,125", true],
    ["0,0005", true],
    ["-0,500", true],
    ["1,2345", true],
    ["1234,567", true],
    ["0,125%", true],
    ["€0,500", true],
    ["1,200", false],
    ["12,500.5", false],
    ["1,200,000", false],
    ["-1,200", false],
    ["1,25", false], // no number to the grid at all
    ["elbow 1,5000", false],
    ["125", false],
  ])("%p as a number whose comma the grid would drop: %p", (text, is) => {
    expect(hasDecimalComma(text)).toBe(is);
  });

  test("a decimal comma that is typed or pasted stays the text that it was: 0,125 never becomes 125", () => {
    const model = grid();
    expect(typed(model, "D1", "0,125")).toEqual(["0,125", "0,125"]);
    const target = [{ left: 4, right: 4, top: 0, bottom: 0 }];
    model.dispatch("PASTE_FROM_OS_CLIPBOARD", { target, clipboardContent: { text: "0,500\t1,200\t1,2345" } });
    expect(["E1", "F1", "G1"].map((at) => valueAt(model, at))).toEqual(["0,500", 1200, "1,2345"]);
  });

  test("a number in groups that is typed or pasted is that number, over a day, too", () => {
    const model = grid();
    expect(typed(model, "D1", "1 200", DAY)).toEqual([1200, "1200"]);
    expect(typed(model, "A1", "8 000")).toEqual([8000, "8000"]);
    const target = [{ left: 4, right: 4, top: 0, bottom: 0 }];
    model.dispatch("PASTE_FROM_OS_CLIPBOARD", { target, clipboardContent: { text: "8\u202f000\t10\u00a0000" } });
    expect(["E1", "F1"].map((at) => valueAt(model, at))).toEqual([8000, 10_000]);
    expect(typed(model, "A2", "1 200")).toEqual(["1 200", "1 200"]);
  });

  test("a text stays a text, and a cell that shows days takes days", () => {
    const model = grid();
    expect(typed(model, "A2", "1/2")).toEqual(["1/2", "1/2"]);
    expect(typed(model, "A1", "1/2")[1]).toBe("1/2");
    expect(valueAt(model, "A1")).toBeGreaterThan(40_000);
  });

  test("a plain number over a day is that number, and looks so", () => {
    expect(typed(grid(), "A1", "4")).toEqual([4, "4"]);
  });

  test("a function of ours gets a day as the text that its cell shows", () => {
    const { col, row } = o_spreadsheet.helpers.toCartesian("B1");
    const model = grid();
    const { value, message } = model.getters.getEvaluatedCell({ sheetId: model.getters.getActiveSheetId(), col, row });
    expect([value, message]).toEqual(["#VALUE!", "a number is needed; got 12/9"]); // 46,023 is the first day of 2026
  });
});

// 3% is typed, kept as 0.03 and shown as 3%: what a function makes of it hangs on its unit, so it gets what is shown.
test("a function of ours gets a percentage as it is shown", () => {
  const { col, row } = o_spreadsheet.helpers.toCartesian("B1");
  const model = gridOf(bookOf(sheetOf([{ at: "B1", value: null, formula: "=TOY.TWICE(A1)" }])));
  const sheetId = model.getters.getActiveSheetId();
  expect(typed(model, "A1", "3%", "0%")).toEqual([0.03, "3%"]);
  expect(model.getters.getEvaluatedCell({ sheetId, col, row }).message).toBe("a number is needed; got 3%");
});

test("a plain number over a percentage is that number, and looks so; a percentage stays one", () => {
  const model = grid();
  expect(typed(model, "D1", "3%", "0%")).toEqual([0.03, "3%"]);
  expect(typed(model, "D1", "8%")).toEqual([0.08, "8%"]);
  expect(typed(model, "D1", "8")).toEqual([8, "8"]);
});
