/** Calls of single functions at their limits, with words and blanks in every place: in the grid, against the functions. */
import { referenceTables } from "../../../src/reference";
import { materials } from "../../../src/reference/materials";
import type { CellValue } from "../../../src/sheets/workbook";
import { wrongCalls } from "./wrongInGrid";

const noRows: CellValue[][] = [];

test("damp air is refused where its vapour would be most of it", () =>
  expect(
    wrongCalls(noRows, {
      answered: ['DENSITY(205,,1,"IP")', 'DENSITY(,,,"IP")', 'DENSITY(70,5000,0.5,"IP")'],
      refused: ['DENSITY(212,,1,"IP")', 'DENSITY(205,11000,1,"IP")', 'DENSITY(70,,1.1,"IP")'],
    }),
  ).toEqual([]));

test("stock sizes: a size that is met within rounding, each way and blanks for the way", () => {
  const sizes = [3.9999999999, 4.0000000001, 5.3, 0.5, 99, "wide", 0, ""];
  const ways = ["", '""', '"up"', '"down"', '"nearest"', '"down metric stock"', '"nearest drain pipe"', '"sideways"'];
  const calls = ways.flatMap((way) =>
    sizes.flatMap((size, row) => [
      `TRADESIZE(A${row + 1},${way},"IP")`,
      ...(typeof size === "number" ? [`TRADESIZE(${size},${way},"IP")`] : []),
    ]),
  );
  const words: CellValue[] = [
    null,
    0,
    " UP",
    "down",
    "Nearest",
    "sideways",
    3,
    "u*",
    "up Metric-stock",
    "down drain pipe",
    "nearest metric stock",
  ];
  const rows = words.map((word, row): CellValue[] => [sizes[row] ?? null, word]);
  const byCell = words.flatMap((_, row) => [`TRADESIZE(5.3,B${row + 1},"IP")`, `TRADESIZE(A1,B${row + 1},"IP")`]);
  expect(wrongCalls(rows, { mixed: [...calls, ...byCell, 'TRADESIZE(,,"IP")'] })).toEqual([]);
});

test("a height of nothing makes a duct round, whatever stands for nothing", () => {
  const heights: CellValue[] = [null, 0, "", "  ", 6, -6, "wide", 900, true];
  const calls = heights.flatMap((_, row) => [`AREA(4,A${row + 1},"IP")`, `VELOCITY(400,4,A${row + 1},"IP")`]);
  const typed = ["0", '""', "6", "-6", "900"].map((height) => `AREA(4,${height},"IP")`);
  expect(
    wrongCalls(
      heights.map((height) => [height]),
      { mixed: [...calls, ...typed] },
    ),
  ).toEqual([]);
});

test("units convert within a quantity only", () =>
  expect(
    wrongCalls([["in"], ["mm"], ["cfm"], ["no such unit"], [null]], {
      answered: ["CONVERTUNIT(4,A1,A2)", 'CONVERTUNIT(4,"IN","mm")', "CONVERTUNIT(4,A2,A2)"],
      refused: [
        ...["CONVERTUNIT(4,A1,A3)", 'CONVERTUNIT(4,"cfm","mm")', "CONVERTUNIT(4,A4,A2)", "CONVERTUNIT(4,A1,A5)"],
        ...['CONVERTUNIT(4,,"mm")', 'CONVERTUNIT("four","in","mm")'],
      ],
    }),
  ).toEqual([]));

test("one value of a printed table: keys by any spelling, headers in cells or typed", () => {
  const rows: CellValue[][] = [
    ["PVC-pipe"],
    ["roughness (mm)"],
    ["no such row"],
    ["source"],
    ["no such column"],
    ["pvc*"],
  ];
  const of = (key: string, column: string): string => `REFERENCE("materials",${key},${column})`;
  expect(
    wrongCalls(rows, {
      answered: [
        ...[of("A1", "A2"), of('"pvc pipe"', '"roughness (mm)"'), of('"PVC_Pipe"', '" roughness (mm) "')],
        ...[of("A1", "A4"), of('"plastic pipe"', "A2")],
      ],
      refused: [of("A3", "A2"), of("A1", "A5"), of("A6", "A2"), of('"no such row"', "A2"), of("A1", '"colour"')],
    }),
  ).toEqual([]);
});

test("classes of ducts and gates by name or number, in a cell or typed", () => {
  const rows: CellValue[][] = [["ATC 6"], [6], [-1], ["no such class"], [null], ["atc*"], ["EN-A"], ["Shut_seated"]];
  const seam = (value: string): string => `SEAMLEAK(${value},10,5,"IP")`;
  const gate = (value: string): string => `GATELEAK(${value},4,5,,"IP")`;
  expect(
    wrongCalls(rows, {
      mixed: [
        ...[
          "A1",
          "A2",
          "A3",
          "A4",
          "A5",
          "A6",
          "A7",
          '"atc 6"',
          '"atc 1"',
          '"round seal class a 2012"',
          "6",
          "-1",
          '"no such class"',
          '"EN_A"',
          "",
        ].map(seam),
        ...["A8", "A1", "A2", "A5", '"no such"', '"shut wrong-side"', ""].map(gate),
        'SEAMLEAK(6,10,0,"IP")',
      ],
    }),
  ).toEqual([]);
});

test("what a printed table leaves blank is blank", () => {
  const blanks = referenceTables.flatMap(({ name, columns, rows }) =>
    rows.flatMap((row) =>
      columns.flatMap(({ name: head, unit }, at) =>
        row[at] === null ? [[name, String(row[0]), unit === "" ? head : `${head} (${unit})`] as const] : [],
      ),
    ),
  );
  const some = blanks.filter(([name], index) => blanks.findIndex(([other]) => other === name) === index);
  expect(some.length).toBeGreaterThan(1);
  const calls = some.map(([name], index) => `REFERENCE("${name}",A${index + 1},B${index + 1})`);
  expect(
    wrongCalls(
      some.map(([, key, header]) => [key, header]),
      { answered: calls },
    ),
  ).toEqual([]);
});

test("a wall by its name, a number or nothing, in a cell or typed", () => {
  const walls: CellValue[] = [
    "galv*",
    "galv?nised steel",
    "Galvanised_Steel",
    null,
    0,
    "",
    -0.1,
    0.01,
    99,
    "no such wall",
  ];
  const typed = materials.flatMap(({ key, aliases }) => [key, ...aliases]).map((name) => `"${name}"`);
  const friction = (wall: string): string => `FRICTION(400,6,${wall},,"IP")`;
  expect(
    wrongCalls(
      walls.map((wall) => [wall]),
      {
        answered: typed.map(friction),
        mixed: [
          ...walls.map((_, row) => friction(`A${row + 1}`)),
          ...['"galv*"', '"no such"', '" "', "-0.1"].map(friction),
        ],
      },
    ),
  ).toEqual([]);
});
