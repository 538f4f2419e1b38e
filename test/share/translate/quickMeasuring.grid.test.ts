/** Means of readings and points of a traverse, and what becomes of them when a cell changes: in the grid, against the functions. */
import type { CellValue } from "../../../src/sheets/workbook";
import { afterChange, wrongCalls } from "./wrongInGrid";

test("a mean of readings: each kind as it may be typed, blanks between, and what is no reading", () => {
  const rows: CellValue[][] = [
    [20, 22, "velocity", -1],
    ["still", "Not-read", "Velocity-Pressure ", "fast"],
    [21, "not read", "pressure", 61],
    [null, null, 0, 0.001],
    [null, 0, "", 60],
    ["not read", null, "speed", "STILL"],
    [null, null, 3, null],
  ];
  const of = (kind: string, density = ""): string => `TRAVERSE(A1:B3,${kind},${density},"SI")`;
  const kinds = ["C1", "C2", "C3", "C4", "C5", "A5", "", '""', "0", '"velocity"', '"PRESSURE"'];
  expect(
    wrongCalls(rows, {
      answered: [
        ...kinds.map((kind) => of(kind)),
        of("C2", "1.1"),
        of('"pressure"', "0"),
        'TRAVERSE(D4:D6,,,"SI")',
        'TRAVERSE(D6:D6,,,"SI")',
      ],
      refused: [
        ...["C6", '"speed"'].map((kind) => of(kind)),
        ...['"heavy"', "9", "C1"].flatMap((density) => [of("C1", density), of("C2", density)]),
        ...["D1:D1", "D1:D4", "D2:D4", "D3:D5", "A4:B6", "A1:B4", "B1:B5", "A6:A6"].map(
          (readings) => `TRAVERSE(${readings},,,"SI")`,
        ),
        'TRAVERSE(,,,"SI")',
      ],
    }),
  ).toEqual([]);
});

test("a change: few readings, known and shown scatter, and what is no reading", () => {
  const rows: CellValue[][] = [
    [20, 22, 5, "less", "still"],
    [21, 27, 5, "More", "not read"],
    [23, 26, 5, 0, 30],
    [null, 0, "x", "sideways", 12],
    [19, 24, 1, -1, 14],
  ];
  const of = (rest: string): string => `DIFFERENCE(A1:A3,B1:B3${rest})`;
  expect(
    wrongCalls(rows, {
      answered: [
        ...[
          "",
          ",5",
          ",,0.4",
          ",9,2",
          ",0,0",
          ",0.1",
          ",,,E3:E5",
          ",,,A1:B3",
          ",,,,D1",
          ",,,,D2",
          ",,,,D3",
          ',,,,"less"',
        ].map(of),
        ...["DIFFERENCE(A1,B1)", "DIFFERENCE(20,25,3)", "DIFFERENCE(A1,B1,,1)", "DIFFERENCE(A1,B2,,,A1:A3)"],
        ...["DIFFERENCE(C1:C3,C1:C3)", "DIFFERENCE(C1:C2,C2:C3,1)", "DIFFERENCE(E1:E3,A1:A3)", "DIFFERENCE(E1,E1,5)"],
        ...[
          "DIFFERENCE(A1:A3,A1:A3)",
          "DIFFERENCE(A5,A1:A3,2)",
          "DIFFERENCE(D5,A1:A3,2)",
          "DIFFERENCE(A1:A3,D5,,3)",
          "DIFFERENCE(A1,B1,,,D5:E5)",
          'DIFFERENCE(A1:A3,B1:B2,,,,"more")',
        ],
      ],
      refused: [
        ...["DIFFERENCE(A1:A4,B1:B3)", "DIFFERENCE(A1:A3,B1:B4)", "DIFFERENCE(A1:A3,C3:C4)", "DIFFERENCE(E2,A1)"],
        ...["DIFFERENCE(,A1)", "DIFFERENCE(A1,)", "DIFFERENCE(A1,B1,,,A1)", "DIFFERENCE(A1,B1,,,D5)"],
        ...[",101", ",-1", ",C4", ",,-1", ",5,,A1:A3", ",,,,D4", ",,,,D5", ',,,,"up"'].map(of),
      ],
    }),
  ).toEqual([]);
});

test("points of a traverse: how many there are by the size, at its limits, and asked for", () => {
  const sizes: CellValue[] = [100, 254, 254.001, 500, 0, -1, 20_000, 20_001, "wide", null];
  const counts: CellValue[] = [null, 0, 4, 6, 8, 10, 7, "", "six"];
  const rules: CellValue[] = [null, 0, "", "Log_Linear", "log-Tchebycheff", "guess"];
  const sides: CellValue[] = [761.999, 762, 914.4, 914.401];
  const rows = sizes.map((size, row): CellValue[] => [
    size,
    counts[row] ?? null,
    rules[row] ?? null,
    sides[row] ?? null,
  ]);
  const calls = [
    ...sizes.map((_, row) => `TRAVERSEPOINTS(A${row + 1},,,"SI")`),
    ...counts.flatMap((_, row) => [`TRAVERSEPOINTS(A1,B${row + 1},,"SI")`, `TRAVERSEPOINTS(400,B${row + 1},C1,"SI")`]),
    ...rules.map((_, row) => `TRAVERSEPOINTS(A1,,C${row + 1},"SI")`),
    ...sides.map((_, row) => `TRAVERSEPOINTS(D${row + 1},,C5,"SI")`),
    ...["6", "0", '""', "7", "-4"].map((count) => `TRAVERSEPOINTS(100,${count},"log-linear","SI")`),
    ...['"guess"', '""', "0", '"LOG-TCHEBYCHEFF"'].map((rule) => `TRAVERSEPOINTS(100,,${rule},"SI")`),
    ...['TRAVERSEPOINTS(,,,"SI")', 'TRAVERSEPOINTS("wide",,,"SI")', 'TRAVERSEPOINTS(9.9,,,"IP")'],
  ];
  expect(wrongCalls(rows, { mixed: calls })).toEqual([]);
});

/** A formula that was made for a word or a number says nothing once another stands there. */
test.each<[string, CellValue, string, CellValue]>([
  ['TRAVERSE(A2:A2,A1,,"SI")', "velocity", "A1", "pressure"],
  ['TRAVERSE(A2:A2,A1,,"SI")', "pressure", "A1", null],
  ['TRAVERSE(A2:A2,A1,,"SI")', null, "A1", "pressure"],
  ['TRAVERSEPOINTS(A2,A1,,"SI")', 6, "A1", 8],
  ['TRAVERSEPOINTS(A2,A1,,"SI")', 6, "A1", null],
  ['TRAVERSEPOINTS(A2,A1,,"SI")', null, "A1", 8],
  ['TRAVERSEPOINTS(A2,,A1,"SI")', "log-linear", "A1", "log-Tchebycheff"],
  ['TRAVERSEPOINTS(A2,,A1,"SI")', null, "A1", "log-Tchebycheff"],
  ['TRAVERSEPOINTS(A2,,,"SI")', null, "A2", 300],
  ['TRAVERSEPOINTS(A2,6,,"SI")', null, "A2", "wide"],
  ['TRAVERSEPOINTS(A2,6,,"SI")', null, "A2", 20_001],
  ['LOSSCOEFFICIENT(A1,1.5,A3,"SI")', "elbow smooth", "A1", "elbow 3-piece"],
])("%s with %j: when %s becomes %j it is no answer", (call, word, at, value) => {
  const rows = [[word], [20], [60]];
  expect(afterChange(rows, call, "B9", 1)).toEqual(expect.any(Number));
  expect(afterChange(rows, call, at, value)).toBe("#N/A");
});

test("a word that becomes another spelling of itself, and a blank that becomes 0, change nothing", () => {
  const kind = 'TRAVERSE(A2:A2,A1,,"SI")';
  const points = 'TRAVERSEPOINTS(A2,A1,,"SI")';
  expect(afterChange([["velocity-pressure"], [20]], kind, "A1", " Velocity  Pressure")).toEqual(expect.any(Number));
  expect(afterChange([[null], [20]], kind, "A1", 0)).toBeCloseTo(20, 9);
  expect(afterChange([[null], [100]], points, "A1", 0)).toEqual(expect.any(Number));
  expect(afterChange([[null], [100]], points, "A1", "")).toEqual(expect.any(Number));
});
