/** Fan curves of every kind: in the grid, against the functions. */
import type { CellValue } from "../../../src/sheets/workbook";
import { afterChange, wrongCalls } from "./wrongInGrid";

test("fan laws: blanks, zeros and ratios out of their range", () => {
  const rows: CellValue[][] = [
    ["Airflow", "Pressure", 1.2],
    [0, 10, 0],
    [500, 8, -1],
    [1000, 2, 10],
    [null, null, 10.1],
    [null, null, "fast"],
    [null, null, null],
  ];
  const law = (speed: string, air: string, size: string): string => `FANLAW(A2:B5,${speed},${air},${size})`;
  const wrong = ["C3", "C5", "C6"];
  expect(
    wrongCalls(rows, {
      answered: [law("C1", "C2", "C2"), law("C1", "C7", "C4"), law("1.2", "0", ""), law("C4", "1.1", "1")],
      refused: [
        ...["C2", "C7", ...wrong, "0", "-1", "10.1", ""].map((speed) => law(speed, "", "")),
        ...[...wrong, "-1", "11"].flatMap((ratio) => [law("1.2", ratio, ""), law("1.2", "", ratio)]),
        "FANLAW(A1:B5,)", // its heading is refused with it
      ],
    }),
  ).toEqual([]);
});

/** Curves that are read at 300, row by row; a dash is a blank cell. The rest of the eight rows is blank. */
const CURVES: readonly (readonly [what: string, isRead: boolean, rows: string])[] = [
  ["two points", true, "0 9; 600 5"],
  ["three points, blanks between", true, "0 9; - -; 600 5; 0 -; 900 1"],
  ["any order", true, "900 1; 0 9; 600 5"],
  ["a heading on top", true, "flow pressure; 0 9; 600 5"],
  ["a heading below a blank row", true, "- -; flow pressure; 0 9; 600 5"],
  ["a hump", true, "0 6; 200 9; 400 9; 700 1"],
  ["a fall and a rise", true, "0 9; 250 3; 500 8; 600 1"],
  ["words between", false, "0 9; flow pressure; 600 5"],
  ["two headings", false, "flow pressure; cfm in.w.g.; 0 9; 600 5"],
  ["an airflow twice", false, "0 9; 600 5; 600 4"],
  ["half a row", false, "0 9; 400 -; 600 5"],
  ["below 0", false, "0 9; -1 9; 600 5"],
  ["a pressure below 0", false, "0 9; 600 -1"],
  ["a word for a pressure", false, "0 9; 600 low"],
  ["one point", false, "300 9"],
  ["nothing", false, "- -"],
  ["ends before", false, "0 9; 299 5"],
  ["begins behind", false, "301 9; 600 5"],
];

const cellOf = (word: string): CellValue => (word === "-" ? null : Number.isNaN(Number(word)) ? word : Number(word));
const curveOf = (rows: string): CellValue[][] => rows.split("; ").map((row) => row.split(" ").map(cellOf));

test.each(CURVES)("a curve of %s", (_, isRead, rows) => {
  const asked = ['FANPRESSURE(A1:B8,300,"IP")', 'FANPRESSURE(A1:B8,C1,"SI")'];
  const cells = curveOf(rows).map((row, at) => [...row, at === 0 ? 300 : null]);
  const ends = isRead ? ['FANPRESSURE(A1:B8,0,"IP")', `FANLAW(A1:B8,1.1)`] : [];
  expect(wrongCalls(cells, isRead ? { answered: [...asked, ...ends] } : { refused: asked })).toEqual([]);
});

/** Design points on curves, row by row: airflow, pressure, fixed part. */
test("where a curve meets a system: on a point, at its ends, nowhere, and more than once", () => {
  const rows: CellValue[][] = [
    ["Airflow", "Pressure", 500, 4, null],
    [0, 10, 900, 2, 1],
    [500, 8, 400, 12, 11],
    [1000, 2, 0, 3, 0],
    [null, null, 5000, 0.01, null],
    [0, 6, 300, 1, 2],
    [200, 9, 350, 7, null],
    [400, 9, 100, 9.5, 6.2],
    [700, 1, "far", 3, null],
  ];
  const falling = "A1:B5";
  const humped = "A6:B9";
  expect(
    wrongCalls(rows, {
      answered: [
        `OPERATINGPOINT(${falling},C1,D1)`,
        `OPERATINGPOINT(${falling},C2,D2,E2,"SI")`,
        `OPERATINGPOINT(${falling},C1:C2,D1:D2,E1:E2)`,
        `OPERATINGPOINT(${falling},500,8)`, // through an inner point
        `OPERATINGPOINT(${falling},1000,2)`, // through the last one
        `OPERATINGPOINT(${humped},C7,D7)`,
        `OPERATINGPOINT(${humped},C8,D8,E8,"SI")`, // meets it twice, and one point is stable
      ],
      refused: [
        `OPERATINGPOINT(${falling},C3,D3,E3)`, // more than the fan ever has
        `OPERATINGPOINT(${falling},C5,D5)`, // the fan still has pressure to spare at the curve's end
        `OPERATINGPOINT(${falling},C4,D4)`,
        `OPERATINGPOINT(${falling},C6,D6,E6)`, // less than its fixed part
        `OPERATINGPOINT(${falling},C9,D9)`,
      ],
    }),
  ).toEqual([]);
});

test("a curve that gets a hump after the copy was made has no answer where it is met more than once", () => {
  const rows = [
    [0, 10],
    [500, 8],
    [1000, 2],
  ];
  expect(afterChange(rows, "OPERATINGPOINT(A1:B3,400,7.5,7)", "B1", 6.9)).toBe("#N/A");
  expect(afterChange(rows, "OPERATINGPOINT(A1:B3,400,7.5,7)", "B1", 9)).toBeGreaterThan(400);
});
