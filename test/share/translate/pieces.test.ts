/** The small pieces of which plain formulas are put together, as text; and what the workings are called by. */
import {
  both,
  fromSIText,
  inSI,
  isListed,
  num,
  plainName,
  times,
  within,
} from "../../../src/share/translate/expressions/text";
import { plainBook } from "./plainBook";

test.each([
  [0, "0"],
  [0.1, "0.1"],
  [1, "1"],
  [101325, "101325"],
  [0.0000025, "0.0000025"],
  [2.5e-7, "0.00000025"], // without an exponent, which an operator in front could tear apart
  [4.1764768e-5, "0.000041764768"],
  [9.484024e-13, "0.0000000000009484024"],
  [1e21, "1E+21"],
])("%d is written %s", (value, text) => expect(num(value)).toBe(text));

test("a factor of 1 is not written", () => {
  expect([times("A1", 1), times("A1", 2)]).toEqual(["A1", "(A1*2)"]);
  expect([inSI("A1", "pressure", "SI"), inSI("A1", "diameter", "SI")]).toEqual(["A1", "(A1*0.001)"]);
  expect([fromSIText("A1", "pressure", "SI"), fromSIText("A1", "diameter", "SI")]).toEqual(["A1", "A1/0.001"]);
});

test("a temperature is shifted, too", () => {
  expect(inSI("A1", "temperature", "SI")).toBe("(A1*1+273.15)");
  const [, factor, offset] = /^\(A1\*([\d.]+)\+([\d.]+)\)$/.exec(inSI("A1", "temperature", "IP"))!.map(Number);
  expect(factor).toBeCloseTo(5 / 9, 12);
  expect(offset).toBeCloseTo(459.67 / 1.8, 9);
});

test("one condition stands alone, several stand together", () => {
  expect([both(["A1>0"]), both(["A1>0", "A1<9"])]).toEqual(["A1>0", "AND(A1>0,A1<9)"]);
});

test("limits in the user's unit", () => {
  expect(within("A1", { above: 0, atLeast: 1, below: 2, atMost: 3 }, "ratio", "IP")).toEqual([
    "A1>0",
    "A1>=1",
    "A1<2",
    "A1<=3",
  ]);
  expect(within("A1", { atMost: 0.254 }, "diameter", "IP")).toEqual(["A1<=10"]);
  expect(within("A1", {}, "ratio", "IP")).toEqual([]);
});

test("a name is compared without hyphens and blanks, and found only as it stands", () => {
  expect(plainName("A1")).toBe('TRIM(SUBSTITUTE(SUBSTITUTE(A1,"-"," "),"_"," "))');
  expect(isListed("A1", "B1:B9")).toBe("IFERROR(INDEX(B1:B9,MATCH(A1,B1:B9,0))=A1,FALSE)");
});

/** The texts on the workings, as a reader finds them. */
function wordsOf(call: string): string[] {
  const { workbook } = plainBook([{ name: "S", rows: [[400, 6, "elbow"]], formulas: { H1: `=DUCT.${call}` } }], "SI");
  const { cells } = workbook.sheets.find(({ name }) => name === "Workings")!;
  return cells.slice(2).flatMap((cell) => ("value" in cell && typeof cell.value === "string" ? [cell.value] : [])); // below the head
}

test("the workings say what their cells are", () => {
  expect(wordsOf('FITTINGLOSS(A1,B1,C1,,,"IP")').slice(0, 20)).toEqual([
    "K of the list",
    "of which mitres",
    "branch at",
    "its K",
    "no name",
    ...[
      "list from here",
      "entry",
      "its last x",
      "times",
      "name",
      "row of the table",
      "last word",
      "number at its end",
      "on the line",
      "at",
      "K of one",
      "K",
      "K of mitres",
      "branch so far at",
      "its K",
    ],
  ]);
  expect(wordsOf('FANPRESSURE(A1:B3,5,"IP")')).toEqual([
    "Points of a fan curve",
    ...["row is", "airflow", "pressure", "sorted airflow", "sorted pressure", "width", "secant", "slope"],
  ]);
});
