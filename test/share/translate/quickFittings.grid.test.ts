/** Fittings, hoods and lists of them in a copy, at the ends of what is printed and beyond: in the grid, against the functions. */
import { lossFamilies } from "../../../src/reference/lossFamilies";
import type { LossFamily } from "../../../src/reference/schema";
import type { CellValue } from "../../../src/sheets/workbook";
import { inGrid } from "../../support/grid";
import { withFewEntries } from "./fewEntries";
import { plainBook } from "./plainBook";
import { wrongCalls } from "./wrongInGrid";

/** On an axis: the first printed place, one on the way to the second, one on the way to the last, the last, and one beyond. */
function placesOf(printed: readonly (number | null)[]): readonly (number | null)[] {
  const [first, second, ...more] = [...new Set(printed)].sort((a, b) => Number(a) - Number(b));
  if (first === null || first === undefined) return [null];
  const last = more.at(-1) ?? second ?? first;
  return [
    first,
    first + 0.3 * ((second ?? first) - first),
    first + 0.6 * (last - first),
    last,
    last + 0.01,
    first - 0.01,
  ];
}

/** Shapes at a middle angle, angles at a middle shape; a diameter is typed in mm. */
function askedOf({ points, shape, angle, rule }: LossFamily): readonly (readonly [number | null, number | null])[] {
  const unit = shape?.quantity === "diameter" ? 0.001 : 1;
  const places = rule === "expansion" ? [-0.01, 0, 0.5, 1, 1.01, 0.01] : placesOf(points.map((one) => one.shape));
  const shapes = places.map((at) => (at === null ? null : at / unit));
  const angles = rule === "elbow" ? [20, 30, 75, 90, 100] : placesOf(points.map((one) => one.angle));
  const middle = angles[2] ?? null;
  return [
    ...shapes.map((x): [number | null, number | null] => [x, angle === null ? null : middle]),
    ...angles.map((turn): [number | null, number | null] => [shapes[2] ?? null, turn]),
  ];
}

const text = (value: CellValue): string => (value === null ? "" : String(value));

test.each(lossFamilies)("$key at its printed points, between and beyond them, typed into the call", (family) => {
  const asked = askedOf(family).filter(([x, turn]) => x !== null || turn !== null);
  const calls = asked.map(([x, turn]) => `LOSSCOEFFICIENT("${family.key}",${text(x)},${text(turn)},"SI")`);
  // a number for an axis that the fitting lacks is refused
  const lacked = [
    ...(family.shape === null ? [`LOSSCOEFFICIENT("${family.key}",2,${family.angle === null ? "" : 60},"SI")`] : []),
    ...(family.angle === null
      ? [`LOSSCOEFFICIENT("${family.key}",${text(askedOf(family)[2]?.[0] ?? null)},30,"SI")`]
      : []),
  ];
  expect(wrongCalls([], { mixed: calls, refused: lacked })).toEqual([]);
});

const rows: CellValue[][] = [
  ["elbow 1,5"],
  ["branch 30°"],
  ["0.3 × 2"],
  ["elbow 1.5\nbranch 30"],
  ["elbow pleated"],
  ["elbow pleated 45; 0.2"],
  ["plain end"],
  ["elbow* 1.5"],
  ["elbow? 1.5"],
  ["elbow~ 1.5"],
  ["elbow pleated 30"],
  ["branch"],
  [null],
  [" ; ; "],
  ["."],
  ["0.3 x 0"],
  ["0.3 xx2"],
  [-0.2],
  ["tee; tee; tee; tee; tee; tee; tee; tee;"],
  ["tee; tee; tee; tee; tee; tee; tee; tee; tee"],
  ["no such word"],
  ["elbow stamped 100 mm 45"],
];

/** How one argument is written, in a call for each row or text. */
const lossOf = (list: string): string => `FITTINGLOSS(400,6,${list},,,"IP")`;
const coefficientOf = (list: string): string => `LOSSCOEFFICIENT(${list})`;
const cell = (row: number): string => `A${row}`;

test("lists in cells, with a comma, a degree sign, a cross and lines of their own", () =>
  expect(
    wrongCalls(rows, {
      answered: [1, 2, 3, 4, 5, 6, 7, 12, 19, 22].map((row) => lossOf(cell(row))),
      refused: [8, 9, 10, 11, 13, 14, 15, 16, 17, 18, 20, 21].flatMap((row) => {
        // a list of nine is read by the function alone
        return row === 20 ? [] : [lossOf(cell(row))];
      }),
    }),
  ).toEqual([]));

test("a coefficient without a duct: what goes by its diameter has none", () =>
  expect(
    wrongCalls(rows, {
      answered: [1, 2, 3, 4, 7, 12, 19].map((row) => coefficientOf(cell(row))),
      refused: [5, 6, 8, 9, 11, 13, 14, 18, 21].map((row) => coefficientOf(cell(row))),
    }),
  ).toEqual([]));

test("mitres lose more in slow air, typed or in a cell, below, between and beyond the printed Reynolds numbers", () => {
  const lists: CellValue[][] = [
    ["mitre 60 x2; elbow 1.5"],
    ["Mitered-Elbow"],
    ["mitre saw"],
    [0.5],
    ["0.3; miter 20; mitre 75 x3"],
  ];
  const flows = [0, 10, 60, 150, 300, 500, 900, 3000];
  const calls = flows.flatMap((flow) => [
    ...lists.map((_, row) => `FITTINGLOSS(${flow},6,A${row + 1},,,"IP")`),
    `FITTINGLOSS(${flow},6,"mitre 60 x2; 0.4",,,"IP")`,
  ]);
  const lengths = flows
    .filter((flow) => flow > 0)
    .flatMap((flow) => [`EQUIVLENGTH(A1,${flow},6,,,"IP")`, `EQUIVLENGTH("mitre 45",${flow},6,,,"IP")`]);
  expect(wrongCalls(lists, { answered: [...calls, ...lengths] })).toEqual([]);
});

test("one list in ducts of two diameters", () =>
  expect(
    wrongCalls(rows, {
      answered: ['FITTINGLOSS(400,6,A5,,,"IP")', 'FITTINGLOSS(400,8,A5,,,"IP")', 'FITTINGLOSS(0.2,150,A5,,,"SI")'],
      refused: ['FITTINGLOSS(400,60,A5,,,"IP")', 'FITTINGLOSS(400,2,A5,,,"IP")', "LOSSCOEFFICIENT(A5)"],
    }),
  ).toEqual([]));

test("lists that are typed into the call", () =>
  expect(
    wrongCalls(rows, {
      answered: [
        ...['"plain end"', '"elbow 1.5 60"', '"elbow 1.71; branch 33 x2; 0.4"', '"elbow pleated 45 x3"'],
        ...['"elbow pleated"', '"elbow stamped 100 mm 45"', '"0.4"', "0.4", "0"],
      ].map(lossOf),
      refused: ['""', '" ; "', '"elbow 99"', '"elbow pleated 30"', "-0.4", '"cheese"', ""].map(lossOf),
    }),
  ).toEqual([]));

test("a hood is one entry, in a cell or typed", () => {
  const suction = (hood: string): string => `HOODSUCTION(400,6,${hood},,"IP")`;
  expect(
    wrongCalls(rows, {
      answered: ["A7", '"plain end"', '"bell mouth 0.1"', "0.5", "0"].map(suction),
      refused: ["A1", "A13", "A18", '"elbow 1.5"', '""', "-0.5", '"plain end*"', "", "A21"].map(suction),
    }),
  ).toEqual([]);
});

test("a fitting by its name in a cell, its numbers in the text or beside it", () => {
  const names: CellValue[][] = [
    ["elbow smooth 1.5", 1.5, 60],
    ["elbow smooth 1.5 60", null, 0],
    ["elbow smooth x2", "", "wide"],
    ["Elbow-Smooth", 9, 100],
    ["elbow stamped 100 mm", 125, 45],
    ["elbow smooth; branch 30", 4, -1],
    [0.4, null, null],
    ["branch", null, null],
    ["contraction", 2, 60],
    ["no such fitting", null, null],
    ["bell mouth 0.07", null, null],
    ['elbow "wide"', null, null],
    [true, null, null],
  ];
  const shapes = ["", "B2", "B3", "B1", "B4", "B5", "1.5", "0", '""'];
  const angles = ["", "C2", "C1", "C3", "C4", "45", "0", '""', "C5"];
  const calls = names.flatMap((_, row) =>
    shapes.flatMap((shape) => angles.map((angle) => `LOSSCOEFFICIENT(A${row + 1},${shape},${angle},"SI")`)),
  );
  // typed names go by the same rules
  const typed = names.flatMap(([name]) =>
    typeof name === "string" && !name.includes('"')
      ? shapes.flatMap((shape) => ["", "C1", "60"].map((angle) => `LOSSCOEFFICIENT("${name}",${shape},${angle},"SI")`))
      : [],
  );
  const inches = ["", "B5", "4"].flatMap((shape) =>
    ['"elbow stamped"', "A5", '"elbow stamped 100 mm"'].map((name) => `LOSSCOEFFICIENT(${name},${shape},45,"IP")`),
  );
  expect(wrongCalls(names, { mixed: [...calls, ...typed, ...inches] })).toEqual([]);
});

test("a column that is filled below the first rows of the table, where nobody reads it, leaves no K that lacks it", () => {
  const call = { name: "S", rows: [["elbow 1.5"]], formulas: { H1: `=DUCT.${lossOf("A1")}` } };
  const { workbook } = plainBook([call], "SI");
  const shown = (more: string | null): unknown => {
    const sheets = workbook.sheets.map((sheet) => {
      const entry = sheet.cells.find(
        (cell) => "value" in cell && cell.value === "elbow 1.5" && cell.at.startsWith("A"),
      );
      if (sheet.name !== "Lookups" || more === null) return sheet;
      return { ...sheet, cells: [...sheet.cells, { at: entry!.at.replace("A", "D"), value: more }] };
    });
    return inGrid(withFewEntries({ ...workbook, sheets }))
      .get("S")!
      .get("H1");
  };
  expect(shown(null)).toEqual(expect.any(Number));
  expect(shown("yes")).toBe("#N/A");
});
