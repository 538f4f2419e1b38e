import type { Calculated, ShownCell } from "../../../src/sheets/calculated";
import { copyTables } from "../../../src/share/translate/lookupTables";
import { shownReader } from "../../../src/share/translate/shownReader";
import { type FormulaTranslation, translateFormula } from "../../../src/share/translate/translateFormula";
import { newWorkings, type Workings } from "../../../src/share/translate/workings";

const cells: [string, ShownCell][] = [
  ["A1", { value: "SI" }],
  ["B1", { value: 100 }],
  ["B2", { value: 125 }],
  ["D1", { value: 1, fills: { rows: 2, columns: 1 } }],
];
const book: Calculated = {
  workbook: { name: "Book", sheets: [], names: [{ name: "units", sheet: "One", at: "A1" }] },
  shown: new Map([["One", new Map(cells)]]),
};

function translated(formula: string, sheet = "One", workings: Workings = newWorkings()): FormulaTranslation {
  const { tables } = copyTables("SI");
  const context = { sheet, at: "F1", extent: { rows: 1, columns: 1 }, tables, workings, shown: shownReader(book) };
  return translateFormula(formula, context);
}

const formulasOf = (formula: string, sheet?: string): readonly (readonly string[])[] => {
  const translation = translated(formula, sheet);
  if (translation.kind !== "cells") throw new Error(JSON.stringify(translation));
  return translation.formulas;
};

test("a formula without our calls is left to stand as it is", () => {
  expect(translated('=SUM(A1:A5)&"DUCT.AREA(4)"')).toEqual({ kind: "native" });
});

test("units come from what their cell shows, by name or address", () => {
  expect(formulasOf("=DUCT.AREA(B1,,units)")).toEqual(formulasOf("=DUCT.AREA(B1,,A1)"));
  expect(formulasOf("=DUCT.AREA(B1,,units)")).toEqual(formulasOf('=DUCT.AREA(B1,,"si")'));
  expect(formulasOf("=DUCT.AREA(B1,,units)")).not.toEqual(formulasOf("=DUCT.AREA(B1)"));
});

test("no name of ours is left in any formula", () => {
  const [[code]] = formulasOf("=IF(B1>0,DUCT.VELOCITY(DUCT.AIRFLOW(20,B1,,units),B1,,units),0)") as [[string]];
  expect(code).not.toMatch(/DUCT/i);
  expect(code).toMatch(/^=IF\(B1>0,\(/);
});

test("an answer over a range is one formula for each of its cells, each with its own cells", () => {
  const formulas = formulasOf("=DUCT.AREA(B1:B2,,units)");
  expect(formulas).toHaveLength(2);
  expect(formulas[0]![0]).toContain("B1");
  expect(formulas[0]![0]).not.toContain("B2");
  expect(formulas[1]![0]).toBe(formulas[0]![0]!.replaceAll("B1", "B2"));
});

test("arguments from other sheets keep their sheet's name", () => {
  expect(formulasOf("=DUCT.AREA('One'!B1:B2,,units)", "Two")[1]![0]).toContain("'One'!B2");
});

test("an array inside a larger formula goes to the workings", () => {
  const workings = newWorkings();
  const translation = translated("=MAX(DUCT.AREA(B1:B2,,units))", "One", workings);
  expect(translation).toEqual({
    kind: "cells",
    formulas: [["=MAX('Workings'!$A$4:$A$5)"]],
    functions: ["AREA"],
  });
  const placed = workings.sheet.cells.flatMap((cell) => ("formula" in cell ? [cell.at] : []));
  expect(placed).toEqual(["A4", "A5"]);
});

test("a text in a branch fills the first cell only, where the other branch is an array", () => {
  const formulas = formulasOf('=IF(B1=0,"fill in",DUCT.AREA(B1:B2,,units))');
  expect(formulas.map(([code]) => /^=IF\(B1=0,"(.*?)",/.exec(code!)![1])).toEqual(["fill in", ""]);
});

test("what a formula fills is spelt out, since nothing spills in a copy", () => {
  expect(formulasOf("=SUM(D1#)*DUCT.AREA(B1,,units)")[0]![0]).toMatch(/^=SUM\('One'!\$D\$1:\$D\$2\)\*\(/);
});

test.each([
  ['=DUCT.AREA(B1,,IF(B1>0,"SI","IP"))', "AREA", "its units are worked out by a formula or are none"],
  ["=DUCT.AREA(B:B)", "AREA", "it takes whole columns or rows"],
  ["=DUCT.AREA(Table1[Diameter])", "AREA", "it takes a table by its name"],
  ["=DUCT.AREA(B1:B2,B1:B3)", "AREA", "its ranges are of different sizes"],
  ["=DUCT.AREA(FILTER(B1:B2,B1:B2>0))", "AREA", "FILTER beside it may fill any number of cells"],
  ["=DUCT.ARIA(B1)", "ARIA", "there is no function of this name"],
  ["=ROUND(INDEX(DUCT.ABOUT(),1,3),1)", "ABOUT", "it says which version computed the sheet that was copied"],
])("%s stays fixed", (formula, name, why) => {
  expect(translated(formula)).toEqual({ kind: "fixed", function: name, why });
});

test("a broken call is told from a fixed one", () => {
  expect(translated("=DUCT.AREA(B1")).toEqual({ kind: "unreadable", why: "a bracket is not closed" });
});
