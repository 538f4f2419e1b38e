/** What a plain formula looks like: typed arguments are settled when the copy is made; and which calls stay numbers, with the reason. */
import type { CellValue } from "../../../src/sheets/workbook";
import type { FormulaTranslation } from "../../../src/share/translate/translateFormula";
import { plainBook } from "./plainBook";

const rows: CellValue[][] = [
  [4, 10, "velocity", "materials", "SI"],
  [5, 300, 3, "pvc pipe", "IP"],
  [6, 200, "elbow smooth 1.5", "roughness (mm)", null],
];

function translated(call: string): FormulaTranslation {
  const { translations } = plainBook([{ name: "S", rows, formulas: { H1: `=DUCT.${call}` } }], "SI");
  return translations.get("S!H1")!;
}

function plainOf(call: string): string {
  const translation = translated(call);
  if (translation.kind !== "cells") throw new Error(JSON.stringify(translation));
  return translation.formulas.flat().join("\n");
}

test.each([
  "AREA(4,0,E2)",
  'FRICTION(400,6,"pvc pipe",,"IP")',
  'FRICTION(400,6,"",0,"IP")',
  'HOODSUCTION(400,6,"plain end",,"IP")',
  'SEAMLEAK("atc 6",10,5,"IP")',
  'GATELEAK("shut seated",4,5,,"IP")',
  'TRADESIZE(5.3,"up","IP")',
  'TRADESIZE(5.3,"","IP")',
  'LOSSCOEFFICIENT("elbow smooth",1.5,60,"SI")',
  'CONVERTUNIT(4,"in","mm")',
])("%s asks of nothing what it is, since all of it is typed", (call) =>
  expect(plainOf(call)).not.toMatch(/ISNUMBER|TRIM/),
);

test("a typed way of rounding leaves only its own formula", () => {
  const ways = ["down", "up", "nearest"].map((way) => plainOf(`TRADESIZE(5.3,"${way}","IP")`));
  expect(new Set(ways).size).toBe(3);
  for (const way of ways) expect(way).not.toMatch(/"(up|down|nearest)"/);
  expect(plainOf('TRADESIZE(5.3,"","IP")')).toBe(ways[0]);
  expect(plainOf('TRADESIZE(5.3,,"IP")')).toBe(ways[0]);
});

test("a height of 0 or nothing is none", () =>
  expect(new Set(["", "0"].map((height) => plainOf(`AREA(A1,${height},"IP")`))).size).toBe(1));

test("dry air needs no vapour, and a typed list of fittings no workings", () => {
  expect(plainOf("DENSITY(A1,B1)")).not.toContain("EXP(");
  expect(plainOf("DENSITY(A1,B1,0.5)")).toContain("EXP(");
  for (const list of ["0.4", '"elbow 1.5; branch 30"'])
    expect(plainOf(`FITTINGLOSS(400,6,${list},,,"IP")`)).not.toContain("Workings");
});

test("a typed fitting takes its K from its cell of the tables, a figure between them stands in the formula", () => {
  const lookups = (call: string): (string | undefined)[] => {
    const { workbook, translations } = plainBook([{ name: "S", rows, formulas: { H1: `=DUCT.${call}` } }], "SI");
    const translation = translations.get("S!H1")!;
    const code = translation.kind === "cells" ? translation.formulas.flat().join() : "";
    const { cells } = workbook.sheets.find(({ name }) => name === "Lookups")!;
    return [...code.matchAll(/Lookups'?!\$B\$(\d+)/g)].map(([, row]) =>
      cells.flatMap((cell) => (cell.at === `A${row}` && "value" in cell ? [String(cell.value)] : [])).join(),
    );
  };
  expect(lookups('FITTINGLOSS(400,6,"Elbow 1.5; branch 30 x2",,,"IP")')).toEqual(["elbow 4 piece 1.5", "branch 30"]);
  expect(lookups('FITTINGLOSS(400,6,"elbow 1.5 60",,,"IP")')).toEqual(["elbow 4 piece 1.5 60"]);
  expect(lookups('FITTINGLOSS(400,6,"plain end",,,"IP")')).toEqual(["plain end"]);
  expect(lookups('FITTINGLOSS(400,6,"elbow 1.71",,,"IP")')).toEqual([]);
});

const TABLE = "a printed table, which nothing in the sheet changes";
const UNITS = "its units are worked out by a formula or are none";
const CURVE = "its curve is not two columns of cells";
const KIND = "its units or its kind are worked out by a formula";
const COUNT = "how many points it has hangs on a formula";

test.each([
  ['FANPRESSURE(A1:B3,5,E1&"")', UNITS],
  ["FANPRESSURE(A1:B3,5,A1)", UNITS],
  ["FANPRESSURE(A1:C3,5)", CURVE],
  ["FANPRESSURE(A1:A3,5)", CURVE],
  ["FANPRESSURE(4,5)", CURVE],
  ["FANPRESSURE(,5)", CURVE],
  ["FANLAW(A1:C3,1.2)", CURVE],
  ["FANLAW(4,1.2)", CURVE],
  ["FANLAW(,1.2)", CURVE],
  ['TRAVERSE(A1:B3,C1,,E1&"")', KIND],
  ["TRAVERSE(A1:B3,C1,,A1)", KIND],
  ['TRAVERSE(A1:B3,C1&"")', KIND],
  ["TRAVERSE(A1:B3,C1:C2)", KIND],
  ["TRAVERSE(A1:B3,D1:E1)", KIND],
  ["TRAVERSE(A1:B3,C2)", KIND],
  ["TRAVERSE(20)", "its readings are no range of cells"],
  ["TRAVERSE(A1+1)", "its readings are no range of cells"],
  ['TRAVERSEPOINTS(A1,,,E1&"")', COUNT],
  ["TRAVERSEPOINTS(A1,,,A1)", COUNT],
  ["TRAVERSEPOINTS(A1+1)", COUNT],
  ["TRAVERSEPOINTS(A1,A3+0)", COUNT],
  ["TRAVERSEPOINTS(A1:A2+1)", COUNT],
  ['TRAVERSEPOINTS(A1,,C1&"")', COUNT],
  ["TRAVERSEPOINTS(A1,,C2)", COUNT],
  ['REFERENCE("materials")', TABLE],
  ['REFERENCE("materials",D2)', TABLE],
  ['REFERENCE("materials",,D3)', TABLE],
  ['REFERENCE("materials",D2:D3,D3)', TABLE],
  ['REFERENCE("materials",D2:E2,D3)', TABLE],
  ['REFERENCE("materials",D2,D2:D3)', TABLE],
  ['REFERENCE("no such table",D2,D3)', TABLE],
  ["REFERENCE(D1,D2,D3)", TABLE],
  ["REFERENCE(A1,D2,D3)", TABLE],
  ["REFERENCE(4,D2,D3)", TABLE],
  ["REFERENCE()", TABLE],
])("%s stays as it is: %s", (call, why) =>
  expect(translated(call)).toEqual({ kind: "fixed", function: call.split("(")[0], why }),
);

test("a table of references has every spelling of its names, and its words are no inputs", () => {
  const formulas = { H1: '=DUCT.REFERENCE("materials",D2,D3)' };
  const { workbook } = plainBook([{ name: "S", rows, formulas }], "SI");
  const { cells } = workbook.sheets.find(({ name }) => name === "Lookups")!;
  const names = cells.flatMap((cell) => ("value" in cell && cell.at.startsWith("A") ? [cell.value] : []));
  expect(names.at(-1)).toEqual(expect.stringMatching(/[a-z]/));
  expect(names.filter((name) => name === "pvc pipe")).toHaveLength(1);
  expect(names).not.toContain("");
  expect(cells.filter(({ style }) => style === "input")).toEqual([]);
});
