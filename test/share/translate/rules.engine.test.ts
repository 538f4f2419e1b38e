/** What the plain formulas do where a function refuses, skips or chooses; computed by the independent engine. */
import type { CellValue } from "../../../src/sheets/workbook";
import { ironCalc } from "../../support/ironCalc";
import { plainBook } from "./plainBook";

const rows: CellValue[][] = [
  [400, 4, "pvc pipe", "elbow 1.5; branch 30"],
  [null, null, null, null],
  [400, -4, "galv*", "elbow*"],
  ["a lot", 4, "no such thing", "no such fitting"],
  [0, 0, 0, 0.4],
  [400, 4, 500, "1/2"],
  [400, 4, "PVC-Pipe", "ELBOW 1,5 x2"],
  [400, 4, null, "-0.4"],
];

const formulas: Record<string, string> = {
  // one cell
  F1: "=DUCT.VELOCITY(A1,B1)",
  F2: "=DUCT.VELOCITY(A2,B2)",
  F3: "=DUCT.VELOCITY(A3,B3)",
  F4: "=DUCT.VELOCITY(A4,B4)",
  F5: "=DUCT.VELOCITY(A1)",
  F6: '=IF(DUCT.VELOCITY(A1,B1)>3000,"fast","slow")',
  F7: "=SUM(DUCT.AREA(B6:B8))",
  F8: "=DUCT.VELOCITY(DUCT.AIRFLOW(4000,B1),B1)",
  // ranges
  G1: "=DUCT.AREA(B1:B8)",
  H1: "=DUCT.FRICTION(A1:A8,B1:B8,C1:C8)",
  I1: "=ROUND(DUCT.AREA(B1:B8)*144,1)",
  // lists of fittings
  J1: "=DUCT.FITTINGLOSS(A1,B1,D1)",
  J3: "=DUCT.FITTINGLOSS(A1,B1,D3)",
  J4: "=DUCT.FITTINGLOSS(A1,B1,D4)",
  J5: "=DUCT.FITTINGLOSS(A1,B1,D5)",
  J6: "=DUCT.FITTINGLOSS(A1,B1,D6)",
  J7: "=DUCT.FITTINGLOSS(A1,B1,D7)",
  J8: "=DUCT.FITTINGLOSS(A1,B1,D8)",
  // a single value of a reference table, with its source
  K1: '=INDEX(DUCT.REFERENCE("materials",C1,"roughness (mm)"),1,1)',
  K3: '=INDEX(DUCT.REFERENCE("materials",C3,"roughness (mm)"),1,1)',
  K4: '=INDEX(DUCT.REFERENCE("materials",C4,"roughness (mm)"),1,1)',
};

const { workbook, translations } = plainBook([{ name: "One", rows, formulas }], "IP");
let shown: (at: string) => number | string | undefined;
beforeAll(() => {
  const values = ironCalc(workbook).get("One")!;
  shown = (at) => values.get(at);
});

const ERROR = "#N/A";
const area = Math.PI * 2 ** 2; // of 4 in, in in2

test("all of them are live", () =>
  expect([...translations.values()].filter(({ kind }) => kind !== "cells")).toEqual([]));

test("a single call with a blank, wrong or left-out cell is an error, never a number", () => {
  expect(shown("F1")).toBeCloseTo(400 / (area / 144), 6);
  expect(["F2", "F3", "F4", "F5"].map(shown)).toEqual([ERROR, ERROR, ERROR, ERROR]);
});

test("a call inside another formula or another call takes part in it", () => {
  expect(shown("F6")).toBe("fast");
  expect(shown("F7")).toBeCloseTo((3 * area) / 144, 9);
  expect(shown("F8")).toBeCloseTo(4000, 6);
});

test("in a range a blank row is blank, a wrong row is an error, and the others compute", () => {
  const column = (letter: string) => [1, 2, 3, 4, 5, 6, 7, 8].map((row) => shown(`${letter}${row}`));
  const right = expect.any(Number) as number;
  expect(column("G")).toEqual([right, "", ERROR, right, "", right, right, right]);
  expect(column("H")).toEqual([right, "", ERROR, ERROR, "", ERROR, right, ERROR]);
  expect(column("I")[0]).toBe(12.6);
});

test("a material is known by any spelling, a wildcard is none, and neither is a blank cell", () => {
  expect(shown("H7")).toBe(shown("H1"));
  expect(shown("H8")).toBe(ERROR);
});

test("a list of fittings: counts, a bare K, a decimal comma; what is not listed or looks like a date is an error", () => {
  const velocityPressure = (shown("J5") as number) / 0.4;
  expect(velocityPressure).toBeCloseTo(1.31, 2); // (4584 / 1097)^2 x 0.075, by the handbook's formula in I-P
  expect(shown("J7")).toBeGreaterThan(shown("J1") as number);
  expect(["J3", "J4", "J6", "J8"].map(shown)).toEqual([ERROR, ERROR, ERROR, ERROR]);
});

test("a value of a reference table is looked up by its key", () => {
  expect(shown("K1")).toEqual(expect.any(Number));
  expect([shown("K3"), shown("K4")]).toEqual([ERROR, ERROR]);
});
