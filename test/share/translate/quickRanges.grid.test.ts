/** Arguments that are worked out, rows, columns and tables of them: in the grid, against the functions. */
import type { CellValue } from "../../../src/sheets/workbook";
import { wrongCalls, wrongIn } from "./wrongInGrid";

test("arguments that are worked out, one by one and over ranges, short and long", () => {
  const rows: CellValue[][] = [
    [4, 400, "pvc "],
    [5, 500, "pvc pipe"],
    [null, null, null],
    [6, 600, "x"],
  ];
  expect(
    wrongCalls(rows, {
      answered: ["AREA(4)"],
      worked: [
        ["AREA(A1+1)", "AREA(5)"],
        ["AREA((A1+A2+A1+A2)/2-A1/2-A2/2)", "AREA(4.5)"],
        ["AREA(-A1+8)", "AREA(4)"],
        ["AREA(A3)", "AREA()"],
        ["AREA(A3+0)", "AREA(0)"],
        ["AREA(TRUE)", 'AREA("TRUE")'],
        ["AREA(A1:A2*1)", "AREA(A1:A2)"],
        ['FRICTION(B1,A1,C1&"pipe",,"IP")', 'FRICTION(B1,A1,C2,,"IP")'],
        ['FRICTION(B1,A1,"pvc"&" pipe",,"IP")', 'FRICTION(B1,A1,C2,,"IP")'],
      ],
    }),
  ).toEqual([]);
});

test("an answer inside a call, over a range", () => {
  // 200 cfm at 4000 fpm need 0.05 ft2, which is what the area of that diameter must be again
  const rows: CellValue[][] = [[200], [400]];
  const expected = [0.05, 0.1].map((answer, row) => ({ sheet: "S", at: `H${row + 1}`, call: "area", answer }));
  const formulas = { H1: "=DUCT.AREA(DUCT.DIAMETER(A1:A2,4000))", J1: "=SUM(DUCT.AREA(DUCT.DIAMETER(A1:A2,4000)*1))" };
  expect(
    wrongIn([{ name: "S", rows, formulas }], [...expected, { sheet: "S", at: "J1", call: "sum", answer: 0.15 }], "IP"),
  ).toEqual([]);
});

test("an answer inside a call, over a row, and a row that is worked out", () => {
  const rows: CellValue[][] = [[200, 400]];
  const formulas = { H1: "=DUCT.AREA(DUCT.DIAMETER(A1:B1,4000))", H2: "=DUCT.AIRPOWER(A1:B1*2,0)" };
  const expected = [
    { sheet: "S", at: "H1", call: "area", answer: 0.05 },
    { sheet: "S", at: "I1", call: "area", answer: 0.1 },
    { sheet: "S", at: "H2", call: "power", answer: 0 },
    { sheet: "S", at: "I2", call: "power", answer: 0 },
  ];
  expect(wrongIn([{ name: "S", rows, formulas }], expected, "IP")).toEqual([]);
});

test("a row, a table beside a column and a table beside a row, with blanks", () => {
  const rows: CellValue[][] = [
    [400, 500, 4, null, 6],
    [null, 300, 5, 7, null],
    [null, null, null, 8, 9],
  ];
  expect(
    wrongCalls(rows, {
      mixed: [
        "AREA(C1:E1)",
        "VELOCITY(A1:B3,C1:C3)",
        "VELOCITY(A1:B3,D1:E1)",
        "VELOCITY(A1:A3,C1:E1)",
        "VELOCITY(A1:B1,C1:C3)",
      ],
    }),
  ).toEqual([]);
});

test("names of fittings in a column beside shapes in a row, and the other way", () => {
  const rows: CellValue[][] = [
    ["elbow smooth", "elbow 3-piece", "contraction", null],
    ["elbow 4-piece", 1, 1.5, 2],
    ["bell mouth", 0.1, 0.05, 9],
    [null, 2, null, null],
  ];
  expect(
    wrongCalls(rows, {
      mixed: [
        'LOSSCOEFFICIENT(A1:A3,B2:D2,,"SI")',
        'LOSSCOEFFICIENT(A1:C1,B2:B4,,"SI")',
        'LOSSCOEFFICIENT(A1:A3,B2:B4,,"SI")',
        'LOSSCOEFFICIENT(A1:A3,B2,60,"SI")',
      ],
    }),
  ).toEqual([]);
});
