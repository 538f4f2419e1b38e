/** Calls of single functions at their limits, with words and blanks in every place: in the grid, against the functions. */
import { referenceTables } from "../../../src/reference";
import { materials } from "../../../src/reference/materials";
import type { CellValue } from "../../../src/sheets/workbook";
import { afterChange, wrongCalls, wrongIn } from "./wrongInGrid";

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
  const ways = ["", '""', '"up"', '"down"', '"nearest"', '"sideways"'];
  const calls = ways.flatMap((way) =>
    sizes.flatMap((size, row) => [
      `TRADESIZE(A${row + 1},${way},"IP")`,
      ...(typeof size === "number" ? [`TRADESIZE(${size},${way},"IP")`] : []),
    ]),
  );
  const words: CellValue[] = [null, 0, " UP", "down", "Nearest", "sideways", 3, "u*"];
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

/** Curves that are read at 300: the first rows are taken, and the rest of the eight is blank. */
const CURVES: readonly (readonly [what: string, isRead: boolean, curve: readonly (readonly CellValue[])[]])[] = [
  [
    "two points",
    true,
    [
      [0, 9],
      [600, 5],
    ],
  ],
  [
    "three points, blanks between",
    true,
    [
      [0, 9],
      [null, null],
      [600, 5],
      [0, null],
      [900, 1],
    ],
  ],
  [
    "any order",
    true,
    [
      [900, 1],
      [0, 9],
      [600, 5],
    ],
  ],
  [
    "a heading on top",
    true,
    [
      ["flow", "pressure"],
      [0, 9],
      [600, 5],
    ],
  ],
  [
    "a heading below a blank row",
    true,
    [
      [null, null],
      ["flow", "pressure"],
      [0, 9],
      [600, 5],
    ],
  ],
  [
    "a hump",
    true,
    [
      [0, 6],
      [200, 9],
      [400, 9],
      [700, 1],
    ],
  ],
  [
    "a fall and a rise",
    true,
    [
      [0, 9],
      [250, 3],
      [500, 8],
      [600, 1],
    ],
  ],
  [
    "words between",
    false,
    [
      [0, 9],
      ["flow", "pressure"],
      [600, 5],
    ],
  ],
  [
    "two headings",
    false,
    [
      ["flow", "pressure"],
      ["cfm", "in.w.g."],
      [0, 9],
      [600, 5],
    ],
  ],
  [
    "an airflow twice",
    false,
    [
      [0, 9],
      [600, 5],
      [600, 4],
    ],
  ],
  [
    "half a row",
    false,
    [
      [0, 9],
      [400, null],
      [600, 5],
    ],
  ],
  [
    "below 0",
    false,
    [
      [0, 9],
      [-1, 9],
      [600, 5],
    ],
  ],
  [
    "a pressure below 0",
    false,
    [
      [0, 9],
      [600, -1],
    ],
  ],
  [
    "a word for a pressure",
    false,
    [
      [0, 9],
      [600, "low"],
    ],
  ],
  ["one point", false, [[300, 9]]],
  ["nothing", false, [[null, null]]],
  [
    "ends before",
    false,
    [
      [0, 9],
      [299, 5],
    ],
  ],
  [
    "begins behind",
    false,
    [
      [301, 9],
      [600, 5],
    ],
  ],
];

test.each(CURVES)("a curve of %s", (_, isRead, curve) => {
  const asked = ['FANPRESSURE(A1:B8,300,"IP")', 'FANPRESSURE(A1:B8,C1,"SI")'];
  const rows = curve.map((row, at) => [...row, at === 0 ? 300 : null]);
  const ends = isRead ? ['FANPRESSURE(A1:B8,0,"IP")', `FANLAW(A1:B8,1.1)`] : [];
  expect(wrongCalls(rows, isRead ? { answered: [...asked, ...ends] } : { refused: asked })).toEqual([]);
});

test("a mean of readings: each kind as it may be typed, blanks between, and what is no reading", () => {
  const rows: CellValue[][] = [
    [20, 22, "velocity", -1],
    [null, 0, "Velocity-Pressure ", "fast"],
    [21, "", "pressure", 61],
    [null, null, 0, 0.001],
    [null, null, "", 60],
    [null, null, "speed", null],
    [null, null, 3, null],
  ];
  const of = (kind: string, density = ""): string => `TRAVERSE(A1:B3,${kind},${density},"SI")`;
  const kinds = ["C1", "C2", "C3", "C4", "C5", "A5", "", '""', "0", '"velocity"', '"PRESSURE"'];
  expect(
    wrongCalls(rows, {
      answered: [...kinds.map((kind) => of(kind)), of("C2", "1.1"), of('"pressure"', "0"), 'TRAVERSE(D4:D6,,,"SI")'],
      refused: [
        ...["C6", '"speed"'].map((kind) => of(kind)),
        ...['"heavy"', "9", "C1"].flatMap((density) => [of("C1", density), of("C2", density)]),
        ...["D1:D1", "D1:D4", "D2:D4", "D3:D5", "A4:B6"].map((readings) => `TRAVERSE(${readings},,,"SI")`),
        'TRAVERSE(,,,"SI")',
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
