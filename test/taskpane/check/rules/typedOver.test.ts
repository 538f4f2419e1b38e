import { clubCopy } from "../../../../src/share/clubCopy";
import type { Calculated } from "../../../../src/sheets/calculated";
import { budgetBook } from "../../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../../src/sheets/sheetKeys";
import type { CellValue } from "../../../../src/sheets/workbook";
import { typedOver } from "../../../../src/taskpane/check/rules/typedOver";
import { seenIn } from "../../../../src/taskpane/check/seenIn";

const whole = (units: "IP" | "SI") =>
  budgetBook({ units, contents: "example", sheets: sheetKeys }, { sheets: [], names: [] });
const examples = { IP: whole("IP"), SI: whole("SI") };

/** The example as it was made, with these values typed into its cells. */
function example(typed: Readonly<Record<string, CellValue>>, units: "IP" | "SI" = "IP"): Calculated {
  const touched = new Set(Object.keys(typed).map((cell) => cell.split("!")[0]));
  const sheets = examples[units].sheets.map((sheet) => {
    if (!touched.has(sheet.name)) return sheet;
    const cells = sheet.cells.map((cell) => {
      const value = typed[`${sheet.name}!${cell.at}`];
      const { at, style, format } = cell;
      return value === undefined ? cell : { at, ...(style && { style }), ...(format && { format }), value };
    });
    return { ...sheet, cells };
  });
  return { workbook: { ...examples[units], sheets }, shown: new Map() };
}

const found = (book: Calculated) => typedOver(seenIn(book)).map(({ what, sheet, at }) => ({ what, sheet, at }));

describe("what is typed over a formula of a budget", () => {
  test.each([
    ["Start!B9", 0.06, "B9 holds 0.06, typed where this sheet computes."],
    ["Budget!F4", 9999, "F4 holds 9,999, typed where this sheet computes."],
    ["Fan!D10", 400, "D10 holds 400, typed where this sheet computes."],
    ["Flow!C9", "planer", 'C9 holds "planer", typed where this sheet computes.'],
    ["Runs!A11", "ok", 'A11 holds "ok", typed where this sheet computes.'],
  ])("is told at its cell: %s", (cell, value, what) => {
    const [sheet, at] = cell.split("!");
    expect(found(example({ [cell]: value }))).toEqual([{ what, sheet, at }]);
  });

  test("is told once for a sheet, at the first cell", () => {
    const two = { "Fan!D9": 0, "Fan!E9": 11 };
    expect(found(example(two))).toMatchObject([{ what: "D9 holds 0, typed where this sheet computes; so does E9." }]);
    const six = { ...two, "Fan!D10": 1, "Fan!E10": 2, "Fan!D11": 3, "Fan!E11": 4 };
    expect(found(example(six))).toMatchObject([
      { what: "D9 holds 0, typed where this sheet computes; so do E9, D10, E10 and 2 more." },
    ]);
  });

  test.each(["IP", "SI"] as const)("is none in a budget as it is made, %s", (units) => {
    expect(found(example({}, units))).toEqual([]);
    const empty = budgetBook({ units, contents: "empty", sheets: sheetKeys }, { sheets: [], names: [] });
    expect(found({ workbook: empty, shown: new Map() })).toEqual([]);
  });

  test("is none where numbers stand for good: in inputs, in a search's sizes, on a sheet of one's own", () => {
    expect(found(example({ "Runs!E9": 5, "Fan!A9": 3, "Sizes!A47": 4 }))).toEqual([]);
    const mine = example({ "Budget!F4": 9999 });
    const sheets = mine.workbook.sheets.map((sheet) => {
      const { key, ...own } = sheet;
      expect(key).toBeDefined();
      return own;
    });
    expect(found({ ...mine, workbook: { ...mine.workbook, sheets } })).toEqual([]);
  });

  test.each(["formulas", "values"] as const)("is none in a copy with %s", (kind) => {
    const workbook = budgetBook({ units: "IP", contents: "empty", sheets: ["budget"] }, { sheets: [], names: [] });
    const ones = new Map(
      workbook.sheets.map(({ name, cells }) => [name, new Map(cells.map(({ at }) => [at, { value: 1 }]))]),
    );
    const { book } = clubCopy({ workbook, shown: ones }, { kind, date: "2026-11-29", version: "1" });
    expect(found(book)).toEqual([]);
  });
});
