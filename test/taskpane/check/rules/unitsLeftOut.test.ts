import { readFileSync } from "node:fs";
import path from "node:path";
import { budgetBook } from "../../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../../src/sheets/sheetKeys";
import { unitsLeftOut, WITHOUT_UNITS } from "../../../../src/taskpane/check/rules/unitsLeftOut";
import { seenIn } from "../../../../src/taskpane/check/seenIn";
import { seenOf } from "../../../support/books";

const NAMES = [{ name: "units", sheet: "Set", at: "A1" }];

/** What is said of a book with this in its cell named units, and these formulas on a sheet of somebody's own. */
const told = (units: string, ...formulas: readonly string[]) =>
  unitsLeftOut(
    seenOf(
      {
        Set: { rows: [[units]] },
        Mine: {
          rows: formulas.map(() => [1]),
          formulas: Object.fromEntries(formulas.map((formula, row) => [`A${row + 1}`, formula])),
        },
      },
      NAMES,
    ),
  ).map(({ what, sheet, at }) => ({ what, sheet, at }));

test("a call that leaves the units out in a book in SI is told, once for its sheet", () => {
  const what = "A1 calls VELOCITY without units, so in I-P, and this book is in SI.";
  expect(told("SI", "=DUCT.VELOCITY(500,125)")).toEqual([{ what, sheet: "Mine", at: "A1" }]);
  expect(told("SI", "=DUCT.VELOCITY(1,2,,units)", "=2*DUCT.AREA(4)", "=DUCT.AREA(5)", "=DUCT.AREA(6)")).toEqual([
    {
      what: "A2 calls AREA without units, so in I-P, and this book is in SI; so do 2 cells more.",
      sheet: "Mine",
      at: "A2",
    },
  ]);
  expect(told("SI", "=DUCT.AREA(DUCT.DIAMETER(9,8),,units)")).toEqual([
    { what: "A1 calls DIAMETER without units, so in I-P, and this book is in SI.", sheet: "Mine", at: "A1" },
  ]);
});

test.each([
  ["SI", '=DUCT.VELOCITY(500,125,,"SI")'],
  ["SI", '=DUCT.VELOCITY(500,4,,"ip")'], // whoever says so means it
  ["SI", "=DUCT.VELOCITY(500,125,,Set!$A$1)"],
  ["SI", "=DUCT.VELOCITY(500,125,,UNITS)"],
  ["SI", '=DUCT.VELOCITY(500,125,,IF(A9>0,"SI","IP"))'],
  ["SI", '=DUCT.CONVERTUNIT(3,"in","mm")'],
  ["SI", "=DUCT.LEAKAT(3,4,5)"],
  ["IP", "=DUCT.VELOCITY(350,4)"],
  ["metric", "=DUCT.VELOCITY(350,4)"], // nobody knows then
])("in a book with %s %s is none", (units, formula) => expect(told(units, formula)).toEqual([]));

describe("a budget in SI as it is made", () => {
  const made = (contents: "empty" | "example", formula = (one: string): string => one) => {
    const workbook = budgetBook({ units: "SI", contents, sheets: sheetKeys }, { sheets: [], names: [] });
    const sheets = workbook.sheets.map((one) => ({
      ...one,
      cells: one.cells.map((cell) => ("formula" in cell ? { ...cell, formula: formula(cell.formula) } : cell)),
    }));
    const shown = new Map(
      sheets.map(({ name, cells }) => [
        name,
        new Map(cells.flatMap((cell) => ("value" in cell ? [[cell.at, { value: cell.value }]] : []))),
      ]),
    );
    return unitsLeftOut(seenIn({ workbook: { ...workbook, sheets }, shown }));
  };

  test.each(["empty", "example"] as const)("leaves none out: %s", (contents) => expect(made(contents)).toEqual([]));

  test.each(["empty", "example"] as const)("is told wherever they are taken out: %s", (contents) => {
    const without = made(contents, (formula) => formula.replace(/,units\b(?=[,)])/g, ","));
    expect(without.map(({ sheet }) => sheet)).toEqual(expect.arrayContaining(["Start", "Budget", "Flow", "Sizes"]));
  });
});

test("the functions without units are those of which no argument is called so", () => {
  const list = readFileSync(path.join(__dirname, "../../../../docs/functions.md"), "utf8");
  const calls = [...list.matchAll(/^\| `DUCT\.([A-Z]+)\(([^)]*)\)`/gm)].map(([, name, args]) => ({
    name: name!,
    args: args!,
  }));
  expect(calls.length).toBeGreaterThan(30);
  for (const { name, args } of calls) expect([name, WITHOUT_UNITS.has(name)]).toEqual([name, !/\bunits\b/.test(args)]);
});
