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
  expect(formulasOf("=DUCT.AREA(One!B1:B2,,units)", "Two")[1]![0]).toContain("One!B2");
});

test("an array inside a larger formula goes to the workings", () => {
  const workings = newWorkings();
  const translation = translated("=MAX(DUCT.AREA(B1:B2,,units))", "One", workings);
  expect(translation).toEqual({
    kind: "cells",
    formulas: [["=MAX(Workings!$A$4:$A$5)"]],
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
  expect(formulasOf("=SUM(D1#)*DUCT.AREA(B1,,units)")[0]![0]).toMatch(/^=SUM\(One!\$D\$1:\$D\$2\)\*\(/);
});

test.each([
  ['=DUCT.AREA(B1,,IF(B1>0,"SI","IP"))', "AREA", "its units are worked out by a formula or are none"],
  ["=DUCT.AREA(B:B)", "AREA", "it takes whole columns or rows"],
  ["=DUCT.AREA(Table1[Diameter])", "AREA", "it takes a table by its name"],
  ["=DUCT.AREA(B1:B2,B1:B3)", "AREA", "its ranges are of different sizes"],
  ["=DUCT.AREA(B1:C1,B1:D1)", "AREA", "its ranges are of different sizes"],
  ["=DUCT.AREA(B1:C2,B1:D2)", "AREA", "its ranges are of different sizes"],
  ["=DUCT.AREA(_xlfn.FILTER(B1:B2,B1:B2>0))", "AREA", "FILTER beside it may fill any number of cells"],
  ["=DUCT.AREA(B1,,A1:B1)", "AREA", "its units are worked out by a formula or are none"],
  ["=DUCT.AREA(B1,,A1:A2)", "AREA", "its units are worked out by a formula or are none"],
  ["=DUCT.AREA(B1,,B1)", "AREA", "its units are worked out by a formula or are none"],
  ['=DUCT.AREA(B1,,"metric")', "AREA", "its units are worked out by a formula or are none"],
  ["=DUCT.TRAVERSEPOINTS(DUCT.DIAMETER(B1:B2,20))", "TRAVERSEPOINTS", "how many points it has hangs on a formula"],
  ["=DUCT.AREA(FILTER(B1:B2,B1:B2>0))", "AREA", "FILTER beside it may fill any number of cells"],
  ["=DUCT.ARIA(B1)", "ARIA", "there is no function of this name"],
  ["=ROUND(INDEX(DUCT.ABOUT(),1,3),1)", "ABOUT", "it says which version computed the sheet that was copied"],
])("%s stays fixed", (formula, name, why) => {
  expect(translated(formula)).toEqual({ kind: "fixed", function: name, why });
});

test("a broken call is told from a fixed one", () => {
  expect(translated("=DUCT.AREA(B1")).toEqual({ kind: "unreadable", why: "a bracket is not closed" });
});

test("blanks around a call and its arguments change nothing", () => {
  expect(formulasOf("=  DUCT.AREA( B1 , , units ) ")).toEqual(formulasOf("=DUCT.AREA(B1,,units)"));
});

test.each(["4", "12", "4.", ".25", "4.25", "1e2", "1E-12", "2.5e+3", "+4"])(
  "a typed %s is a number, which needs no condition",
  (typed) => expect(formulasOf(`=DUCT.AREA(${typed})`)[0]![0]).not.toContain("ISNUMBER"),
);

test.each(["4%", "4+1", "e2", "2^2", "B1", "-B1", "4e"])(
  "%s is worked out, so it is asked whether it is a number",
  (typed) => expect(formulasOf(`=DUCT.AREA(${typed})`)[0]![0]).toContain("ISNUMBER"),
);

test("a negative number stands in brackets, another does not", () => {
  const written = (typed: string): string => formulasOf(`=DUCT.CONVERTUNIT(${typed},"in","mm")`)[0]![0]!;
  expect(written("-4")).toContain("(-4)*");
  expect(written("4")).toContain("4*");
  expect(written("4")).not.toContain("(4)");
  expect(written("0")).not.toContain("(0)");
});

test("what stands in the workings is written for their sheet", () => {
  const workings = newWorkings();
  translated("=MAX(DUCT.AREA(B1:B2,,units))", "One", workings);
  const placed = workings.sheet.cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []));
  expect(placed.map((code) => /One!B\d/.exec(code)?.[0])).toEqual(["One!B1", "One!B2"]);
  expect(placed.join()).not.toMatch(/[^!]\bB\d/);
});

test("ranges in brackets are taken cell by cell, single cells stay as they are written", () => {
  const each = (code: string): string[][] => formulasOf(code).map((row) => [...row]);
  expect(each("=DUCT.AREA(B1,,units)*(B1:B2)").map(([code]) => /\*\((B\d)\)$/.exec(code!)?.[1])).toEqual(["B1", "B2"]);
  expect(each("=ABS((B1:B2))+DUCT.AREA(B1)").map(([code]) => /^=ABS\(\((B\d)\)\)/.exec(code!)?.[1])).toEqual([
    "B1",
    "B2",
  ]);
  expect(each("=$B$1*B1:B2+DUCT.AREA(B1)").map(([code]) => code!.slice(0, 9))).toEqual(["=$B$1*B1+", "=$B$1*B2+"]);
});

test("a text in a branch fills the first cell of a table, a text in an expression each of its cells", () => {
  const texts = (code: string): (string | undefined)[] =>
    formulasOf(code)
      .flat()
      .map((one) => /^=IF\(B1=0, ?(.*?) ?, ?B\d/.exec(one)?.[1]);
  expect(texts('=IF(B1=0, "fill in" , B1:B2*DUCT.AREA(B1))')).toEqual(['"fill in"', '""']);
  expect(texts('=IF(B1=0,"a"&"b",B1:B2*DUCT.AREA(B1))')).toEqual(['"a"&"b"', '"a"&"b"']);
  const table = formulasOf('=IF(B1=0,"fill in",B1:C2*DUCT.AREA(B1))').flat();
  expect(table.map((code) => code.includes("fill in"))).toEqual([true, false, false, false]);
});

test.each([
  ["=DUCT.AREA(B1:B2+SUM(C:C))", "it takes whole columns"],
  ["=DUCT.AREA(B1:B2+SUM(C:$D))", "it takes whole columns"],
  ["=B1:B3+DUCT.AREA(B1:B2)", "its ranges are of different sizes"],
  ["=B1:C1+B1:D1+DUCT.AREA(B1)", "its ranges are of different sizes"],
])("%s stays fixed, too", (formula, why) => {
  expect(translated(formula)).toEqual({ kind: "fixed", function: "AREA", why });
});

test("units that are blank are I-P, in whatever way they are blank or written", () => {
  const [[usual]] = formulasOf("=DUCT.AREA(B1)") as [[string]];
  for (const units of ["C9", "C1", "C2", "0", '""', '" "', '"IP"', '"i-p"', '"I-P "'])
    expect([units, formulasOf(`=DUCT.AREA(B1,,${units})`)]).toEqual([units, [[usual]]]);
});

const shapeOf = (formula: string): readonly [rows: number, columns: number] => {
  const formulas = formulasOf(formula);
  return [formulas.length, formulas[0]!.length];
};

test("an answer has the shape of its ranges together", () => {
  expect(shapeOf("=B1:C1*DUCT.AREA(B1)")).toEqual([1, 2]);
  expect(shapeOf("=B1:B2*DUCT.AREA(B1)")).toEqual([2, 1]);
  expect(shapeOf("=B1:C1*B1:B2*DUCT.AREA(B1)")).toEqual([2, 2]);
  expect(shapeOf("=DUCT.AREA(B1:C1)")).toEqual([1, 2]);
  expect(shapeOf("=SUM(B1:B2)*DUCT.AREA(B1)")).toEqual([1, 1]);
  for (const lifted of ['SEARCH("a",B1:C1)', 'FIND("a",B1:C1)', 'REPLACE(B1:C1,1,1,"")', 'SUBSTITUTE(B1:C1,"a","b")'])
    expect([lifted, shapeOf(`=IF(ISNUMBER(${lifted}),1,DUCT.AREA(B1))`)]).toEqual([lifted, [1, 2]]);
});

test("a row of answers inside a larger formula goes to the workings, too", () =>
  expect(formulasOf("=MAX(DUCT.AREA(B1:C1))")).toEqual([["=MAX(Workings!$A$4:$B$4)"]]));

test("only a text that is a branch of IF stands in one cell alone", () => {
  const second = (code: string): string => formulasOf(code)[1]![0]!;
  expect(second('=ROUND(B1:B2,1)&TEXT(DUCT.AREA(B1),"0.0")')).toMatch(/,"0\.0"\)$/);
  expect(second('=IF(B1>0,B1:B2*DUCT.AREA(B1),"fill in")')).toMatch(/,""\)$/);
  expect(second('=IF(B1>0,B1:B2*DUCT.AREA(B1),"fill in" )')).toMatch(/,"" \)$/);
  expect(second("=IF(B1=0,7,B1:B2*DUCT.AREA(B1))")).toMatch(/^=IF\(B1=0,7,/);
});

test("what fills nothing, or is not known to, keeps its sign", () => {
  expect(formulasOf("=SUM(B2#)*DUCT.AREA(B1,,units)")[0]![0]).toMatch(/^=SUM\(B2#\)\*/);
  expect(formulasOf("=SUM(J9#)*DUCT.AREA(B1,,units)")[0]![0]).toMatch(/^=SUM\(J9#\)\*/);
});

test("a cell of a sheet that is not in the book is taken as it stands", () =>
  expect(formulasOf("=DUCT.AREA('Gone'!B1,,units)")[0]![0]).toContain("ISNUMBER('Gone'!B1)"));

test("every function of ours in a formula is named, those inside others too", () => {
  expect(translated("=DUCT.AREA(B1+DUCT.DIAMETER(B1,B2))")).toMatchObject({ functions: ["AREA", "DIAMETER"] });
  expect(translated("=DUCT.AREA(B1)+DUCT.AREA(B2)")).toMatchObject({ functions: ["AREA"] });
});

test("a formula of 8192 characters is the longest that a cell takes", () => {
  const padded = (length: number): string => `="${"x".repeat(length)}"&DUCT.AREA(B1)`;
  const own = formulasOf(padded(0))[0]![0]!.length;
  expect(formulasOf(padded(8192 - own))[0]![0]).toHaveLength(8192);
  const tooLong = { kind: "fixed", function: "AREA", why: "as a plain formula it is too long for a cell" };
  expect(translated(padded(8193 - own))).toEqual(tooLong);
  // the text fills the first cell only, and one is enough
  expect(translated(`=IF(B1=0,"${"x".repeat(8192)}",B1:B2*DUCT.AREA(B1))`)).toEqual(tooLong);
  expect(translated(`=IF(B1:C1=0,"${"x".repeat(8192)}",B1:C1*DUCT.AREA(B1))`)).toEqual(tooLong);
});

test("long arguments go to the workings, so that a formula stays readable", () => {
  const READABLE = 3000;
  const code = formulasOf('=DUCT.FRICTION(B1,B2,D1,C1,"IP")')[0]![0]!;
  expect(code.length).toBeLessThanOrEqual(READABLE);
  expect(code).toMatch(/Workings'?!\$A\$4/);
  expect(formulasOf("=DUCT.AREA(B1+B2)")[0]![0]).toContain("(B1+B2)");
  expect(formulasOf("=DUCT.AREA(B1+B2+B1+B2+B1+B2+B1+B2+B1)")[0]![0]).toMatch(/Workings'?!\$A\$4/);
});

test("a mistake of a translator is not taken for a formula that stays", () => {
  const { tables } = copyTables("SI");
  const translators = new Map([
    [
      "AREA",
      () => {
        throw new TypeError("ours");
      },
    ],
  ]);
  const context = { sheet: "One", at: "F1", extent: { rows: 1, columns: 1 }, tables, workings: newWorkings() };
  const translate = () => translateFormula("=DUCT.AREA(B1)", { ...context, shown: shownReader(book), translators });
  expect(translate).toThrow(new TypeError("ours"));
});

test("the sheet of workings says what it is, and holds cells only where there is something to work out", () => {
  const workings = newWorkings();
  workings.place(2, 2, () => [
    ["1", ""],
    ["", "2"],
  ]);
  expect(workings.sheet).toMatchObject({
    name: "Workings",
    columns: [22, 16, 16, 16, 16, 16],
    frozen: { rows: 0, columns: 0 },
    lists: [],
    flags: [],
    tallRows: [],
  });
  expect(workings.sheet.cells).toEqual([
    { at: "A1", value: "Workings", style: "title" },
    { at: "A2", value: "Steps of the formulas on the other sheets. Change nothing here.", style: "note" },
    expect.objectContaining({ at: "A4", formula: "=1" }),
    expect.objectContaining({ at: "B5", formula: "=2" }),
  ]);
});
