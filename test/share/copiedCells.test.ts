/** What stands in the cells of a copy in place of what stood there, cell by cell. */
import { clubCopy } from "../../src/share/clubCopy";
import { replacementsOf } from "../../src/share/copiedSheet";
import type { Calculated } from "../../src/sheets/calculated";
import type { SheetCell } from "../../src/sheets/workbook";
import { markFixed } from "../../src/share/marks";
import { type SampleSheet, sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const ROOT = "it is the root of a system of equations, which plain formulas cannot find honestly";

const sheetCells = ({ workbook }: Calculated, sheet = "S"): Record<string, SheetCell> =>
  Object.fromEntries(workbook.sheets.find(({ name }) => name === sheet)!.cells.map((cell) => [cell.at, cell]));
const copied = (sheet: SampleSheet, names: Parameters<typeof sampleBook>[1] = []) =>
  sheetCells(clubCopy(sampleBook({ S: sheet }, names), ORDER).book);

const looks = { style: "total", format: "0.0", note: "mine" } as const;

test("a fixed answer: what it showed, slanted, with the reason behind the first cell's note", () => {
  const cells = copied({
    formulas: {
      A3: {
        code: "=DUCT.SCENARIOS(D1:E2)",
        shows: [
          ["Run", 3],
          ["", { error: "#N/A" }],
          [null, true],
        ],
      },
    },
    with: { cells: [{ at: "B3", value: null, ...looks }] },
  });
  const look = markFixed(undefined);
  expect(cells.A3).toEqual({
    at: "A3",
    style: look,
    value: "Run",
    note: `Fixed in this copy: SCENARIOS stays as it was, since ${ROOT}. The sheet "Fixed numbers" tells whether its inputs have changed.`,
  });
  expect(cells.B3).toEqual({ at: "B3", style: markFixed("total"), format: "0.0", note: "mine", value: 3 });
  expect(cells.A4).toEqual({ at: "A4", style: look, formula: '=""' });
  expect(cells.B4).toEqual({ at: "B4", style: look, formula: "=NA()" });
  expect(cells.A5).toEqual({ at: "A5", style: look, value: null });
  expect(cells.B5).toEqual({ at: "B5", style: look, value: true });
});

test("a fixed formula keeps its look, and its note stands before the copy's", () => {
  const formula = { at: "A3", formula: "=DUCT.SCENARIOS(D1:E2)", ...looks };
  const cells = copied({ with: { cells: [formula] } });
  expect(cells.A3).toEqual({
    at: "A3",
    style: markFixed("total"),
    format: "0.0",
    value: null,
    note: `mine\nFixed in this copy: SCENARIOS stays as it was, since ${ROOT}. The sheet "Fixed numbers" tells whether its inputs have changed.`,
  });
});

test("a formula that is fixed as a whole names the call in it", () => {
  const cells = copied({ formulas: { A3: { code: "=SUM(A:A)*1+B1:B2+DUCT.AREA(4)+C1:C3", shows: [[1]] } } });
  expect(cells.A3!.note).toBe(
    'Fixed in this copy: AREA stays as it was, since its ranges are of different sizes. The sheet "Fixed numbers" tells whether its inputs have changed.',
  );
});

test("what could not be translated keeps its last values, as they looked, with the reason", () => {
  const cells = copied({
    formulas: { A3: { code: "=OTHER.THING(D1)", shows: [[5, "x"]] } },
    with: { cells: [{ at: "A5", formula: "=DUCT.AREA(4", ...looks }] },
  });
  expect(cells.A3).toEqual({
    at: "A3",
    value: 5,
    note: "Fixed in this copy: the last value; it could not be translated: a function of another add-in.",
  });
  expect(cells.B3).toEqual({ at: "B3", value: "x" });
  expect(cells.A5).toEqual({
    at: "A5",
    ...looks,
    value: null,
    note: "mine\nFixed in this copy: the last value; it could not be translated: a bracket is not closed.",
  });
});

test("an answer that is nothing but a text or a number stands as that, and looks as the formula did", () => {
  const table = [
    ["Run", "To", "Diameter", "Length", "Airflow"],
    ["saw", "fan", 4, 5, 400],
  ] as const;
  const cells = copied({
    rows: table,
    formulas: { A9: { code: "=DUCT.BUDGET(A1:E2)", shows: [[1]] } },
    with: { cells: [{ at: "B9", value: null, ...looks }] },
  });
  expect(cells.B9).toEqual({ at: "B9", ...looks, value: "Airflow (cfm)" });
  expect(cells.C9).toEqual({ at: "C9", value: "Velocity (fpm)" });
  expect(cells.A10).toMatchObject({ formula: expect.stringMatching(/^=IF\(/) as string });
});

test.each([
  ["=-12", { value: -12 }],
  ["=3.5", { value: 3.5 }],
  ['="a ""b"""', { value: 'a "b"' }],
  ['=""', { formula: '=""' }],
  ["=1e5", { formula: "=1e5" }],
  ['="a"&"b"', { formula: '="a"&"b"' }],
  ["=12.", { formula: "=12." }],
  ["=x12", { formula: "=x12" }],
  ["=12+1", { formula: "=12+1" }],
])("a plain answer of %s", (code, content) => {
  const replacement = replacementsOf(
    { live: [{ sheet: "S", at: "B2", formula: "=DUCT.X()", cells: [[code]] }], fixed: [], untranslated: [], units: [] },
    sampleBook({}),
    "Fixed numbers",
  );
  expect(replacement.get("S")!.get("B2")!({ at: "B2", value: null })).toEqual({ at: "B2", ...content });
});

test("a copy of values: blanks, errors, truth values, spilled cells and looks", () => {
  const book = sampleBook({
    S: {
      rows: [[1, "IP"]],
      formulas: {
        A3: {
          code: "=X()",
          shows: [
            [{ error: "#N/A" }, true],
            ["", null],
          ],
        },
        A6: { code: "=Y()", shows: [[7]] },
      },
      with: {
        cells: [
          { at: "B3", value: null, ...looks },
          { at: "D1", value: null, style: "input" },
          { at: "D2", formula: "=Z()", ...looks },
          { at: "D3", value: 0, ...looks },
        ],
      },
    },
  });
  const copy = clubCopy(book, { ...ORDER, kind: "values" });
  expect(Object.values(sheetCells(copy.book))).toEqual([
    { at: "A1", value: 1 },
    { at: "B1", value: "IP" },
    { at: "A3", value: "#N/A" },
    { at: "A6", value: 7 },
    { at: "B3", ...looks, value: true },
    { at: "D1", style: "result", value: null },
    { at: "D2", ...looks, value: null },
    { at: "D3", ...looks, value: 0 },
    { at: "A4", value: "" },
    { at: "B4", value: null },
    { at: "A2", style: "note", value: `values of ${ORDER.date}: nothing here recalculates` },
  ]);
  const why = "the copy was asked to have values only";
  expect(copy.fixed).toEqual(["A3", "A6", "D2"].map((at) => ({ sheet: "S", at, function: "", why })));
  expect([copy.live, copy.untranslated]).toEqual([0, []]);
  expect(copy.book.shown.get("S")!.get("A3")).toEqual({ value: "#N/A" });
  expect(copy.book.shown.get("S")!.get("A6")).toEqual({ value: 7 });
});

const TABLE = "=DUCT.AREA(D1:D4)";
const areas = (sheet: SampleSheet): string[] =>
  Object.keys(
    copied({ rows: [[null, null, null, 4], ...[5, 6, 7].map((size) => [null, null, null, size])], ...sheet }),
  ).filter((at) => at.startsWith("A"));

test("an answer takes the rows below it that it filled before, and blank ones as far as nothing is in the way", () => {
  const shows = [[1], [2]];
  expect(areas({ formulas: { A2: { code: TABLE, shows } } })).toEqual(["A2", "A3", "A4", "A5"]);
  expect(areas({ formulas: { A2: { code: TABLE, shows }, A4: { code: "=1", shows: [[1]] } } })).toEqual([
    "A2",
    "A4",
    "A3",
  ]);
  expect(
    areas({ formulas: { A2: { code: TABLE, shows: [[1]] } }, with: { cells: [{ at: "A3", value: "mine" }] } }),
  ).toEqual(["A2", "A3"]);
  const blank = { with: { cells: [{ at: "A4", value: null, style: "input" } as const] } };
  expect(areas({ formulas: { A2: { code: TABLE, shows } }, ...blank })).toEqual(["A2", "A4", "A3", "A5"]);
});

test("two answers never write into one cell, nor into what another formula fills", () => {
  const [first, second] = [
    { code: TABLE, shows: [[1]] },
    { code: TABLE, shows: [[1]] },
  ];
  const cells = copied({ rows: [[null, null, null, 4]], formulas: { A2: first, A4: second } });
  expect(["A2", "A3", "A4", "A5", "A6", "A7"].map((at) => /D\d/.exec(JSON.stringify(cells[at]))?.[0])).toEqual([
    "D1",
    "D2",
    "D1",
    "D2",
    "D3",
    "D4",
  ]);
  const filled = { code: "=FILTER(D1:D2,D1:D2>0)", shows: [[1], [2]] };
  expect(areas({ formulas: { A5: first, A7: filled } })).toEqual(["A5", "A7", "A6"]);
});

test("an answer of one row that is blocked to the right leaves its first cell", () => {
  const cells = copied({
    rows: [[4, 5, 6]],
    formulas: { A3: { code: "=DUCT.AREA(A1:C1)", shows: [[1]] } },
    with: { cells: [{ at: "C3", value: "mine" }] },
  });
  expect(Object.keys(cells).filter((at) => at.endsWith("3"))).toEqual(["A3", "C3"]);
  expect(cells.C3).toEqual({ at: "C3", value: "mine" });
});
