/**
 * The words beside fixed numbers, computed in the grid of the local sheet (an engine that is not ours): a small cut of what the
 * other engines are asked, quick enough for `npm run mutate`.
 */
import { clubCopy } from "../../../src/share/clubCopy";
import type { Calculated } from "../../../src/sheets/calculated";
import type { CellValue, Chart, Sheet, SheetCell, Workbook } from "../../../src/sheets/workbook";
import { inGrid } from "../../support/grid";
import { type SampleSheet, sampleBook } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const OLD = "inputs changed since: these numbers are old";
const AS_OF = "as of 2026-11-25";

/** A copy with other cells on one of its sheets, typed after it was made. */
const changed = (book: Calculated, sheet: string, cells: readonly SheetCell[]): Workbook => {
  const { workbook } = clubCopy(book, ORDER).book;
  return { ...workbook, sheets: workbook.sheets.map((one) => (one.name === sheet ? { ...one, cells } : one)) };
};
const sheetOf = ({ sheets }: Workbook, name: string): Sheet => sheets.find((one) => one.name === name)!;
const contents = (sheet: Sheet): Record<string, CellValue> =>
  Object.fromEntries(sheet.cells.map((cell) => [cell.at, "formula" in cell ? cell.formula : cell.value]));

const KINDS: readonly CellValue[] = [
  null,
  0,
  1,
  -1,
  0.1,
  0.1000000000001,
  "1",
  "a",
  "A",
  " a",
  "á",
  "=1",
  true,
  "true",
];
/** The grid, as other programs do, keeps no truth value apart from a number in some places. */
const pairs = KINDS.flatMap((before) =>
  KINDS.flatMap((after) => ((before === true || after === true) && before !== after ? [] : [[before, after] as const])),
);

test("a typed input of every kind turns the word once it differs, and only then", () => {
  const book = sampleBook({
    Inputs: { rows: pairs.map(([before]) => [before]) },
    Answers: {
      formulas: Object.fromEntries(
        pairs.map((_, row) => [`A${row + 1}`, { code: `=DUCT.SOLVE(Inputs!A${row + 1})`, shows: [[row]] }]),
      ),
    },
  });
  const after = pairs.flatMap(([, value], row) => (value === null ? [] : [{ at: `A${row + 1}`, value }]));
  const values = inGrid(changed(book, "Inputs", after));
  const said = pairs.map(([before, value], row) => [before, value, values.get("Answers")!.get(`B${row + 1}`)]);
  expect(said).toEqual(pairs.map(([before, value]) => [before, value, before === value ? AS_OF : OLD]));
});

test("an empty text that stands in the book, which a file does not keep, is no change", () => {
  const book = sampleBook({
    Inputs: { rows: [["a", ""]] },
    Answers: { formulas: { A1: { code: "=DUCT.SOLVE(Inputs!A1:B1)", shows: [[1]] } } },
  });
  const said = (cells: readonly SheetCell[]): unknown =>
    inGrid(changed(book, "Inputs", cells))
      .get("Answers")!
      .get("B1");
  expect(said([{ at: "A1", value: "a" }])).toBe(AS_OF);
  expect(said([{ at: "A1", value: "a" }, { at: "B1", value: "b" }])).toBe(OLD); // prettier-ignore
});

/** What each of these typed inputs makes of the check on what is computed from it. */
test.each([
  ["=A1*2", 4, 8, 4, AS_OF],
  ["=A1*2", 4, 8, 5, OLD],
  ["=A1/3", 1, 1 / 3 + 1e-11, 1, AS_OF], // the last digits may differ from one program to the next: 1e-9 of the number
  ["=A1/3", 1, 1 / 3 + 1e-9, 1, OLD],
  ["=-A1/3", 1, -1 / 3 - 1e-11, 1, AS_OF],
  ['=IF(A1>3,"","x")', 4, "", 4, AS_OF],
  ['=IF(A1>3,"","x")', 4, "", 3, OLD],
  ["=1/A1", 0, { error: "#DIV/0!" }, 0, AS_OF],
  ["=1/A1", 0, { error: "#DIV/0!" }, 1, OLD],
  ["=1/A1", 1, 1, 0, OLD],
] as const)("of %s with %s, shown as %s, and %s later: %s", (code, typed, shows, later, word) => {
  const book = sampleBook({
    T: { rows: [[typed]], formulas: { B1: { code, shows: [[shows]] } } },
    F: { formulas: { A1: { code: "=DUCT.SOLVE(T!B1)", shows: [[1]] } } },
  });
  const { cells } = sheetOf(clubCopy(book, ORDER).book.workbook, "T");
  const copy = changed(
    book,
    "T",
    cells.map((cell) => (cell.at === "A1" ? { at: "A1", value: later } : cell)),
  );
  // What came from another formula is compared by itself here: the input below it is taken out of the sum.
  const checks = sheetOf(copy, "Fixed numbers");
  const computed = checks.cells.find((cell) => "formula" in cell && cell.formula.includes("'T'!$B$1"))!;
  const values = inGrid(copy).get("Fixed numbers")!;
  expect(values.get(computed.at)).toBe(word === OLD ? 1 : 0);
});

test("where the sheet of checks is deleted, nobody can tell any more, and the numbers are marked as old", () => {
  const book = sampleBook({
    T: { rows: [[4]] },
    F: { formulas: { A1: { code: "=DUCT.GAINS(T!A1)", shows: [[1]] } } },
  });
  const { workbook } = clubCopy(book, ORDER).book;
  const head = sheetOf(workbook, "F").flags.find(({ range }) => range !== "B1")!.range;
  const state = sheetOf(workbook, "F").oldMarks![0]!.state.replaceAll("$", "");
  const said = (copy: Workbook) => [state, head].map((at) => inGrid(copy).get("F")!.get(at));
  expect(said(workbook)).toEqual(["as made", "what is slanted is as of 2026-11-25"]);
  expect(said({ ...workbook, sheets: workbook.sheets.filter(({ name }) => name !== "Fixed numbers") })).toEqual([
    "changed",
    "inputs changed since: what is struck out is old",
  ]);
});

test("the sheet of checks says what it is, and of each number its cell, its function, its state and the reason", () => {
  const book = sampleBook({
    T: {
      rows: [
        [4, 5],
        ["x", null],
      ],
    },
    F: {
      rows: [[1]],
      formulas: {
        A3: { code: "=DUCT.GAINS(T!A1:B2)", shows: [[1]] },
        A9: { code: '=DUCT.SCENARIOS(T!A1,INDIRECT("T!A1"),OFFSET(T!A1,1,1),none,Other[x])', shows: [[1]] },
        A15: { code: "=DUCT.CAUTIONS()", shows: [[1]] },
      },
    },
  });
  const { workbook } = clubCopy(book, ORDER).book;
  const sheet = sheetOf(workbook, "Fixed numbers");
  const root = "it is the root of a system of equations, which plain formulas cannot find honestly";
  expect(contents(sheet)).toMatchObject({
    A1: "Fixed numbers",
    A2: "These numbers are as of 2026-11-25: plain formulas cannot compute them. Each is compared with the inputs it was made from.",
    A3: "Below stand the inputs as they were, and beside them a 1 for each cell that has changed since. Change nothing here.",
    A5: "Cell",
    B5: "Function",
    C5: "State",
    D5: "Inputs changed",
    E5: "Why it is fixed",
    A6: "F!A3",
    B6: "GAINS",
    C6: `=IF(IFERROR(D6,1)=0,"${AS_OF}","${OLD}")`,
    E6: root,
    A7: "F!A9",
    B7: "SCENARIOS",
    E7: "INDIRECT beside it may fill any number of cells. Not all of its inputs can be compared (INDIRECT, OFFSET, none).",
    A8: "F!A15",
    B8: "CAUTIONS",
    D8: "=0",
    E8: "a printed table, which nothing in the sheet changes",
    A11: "T!A1", // of both
    A14: "T!A2", // of the first alone
    A17: "T!B1:B2",
  });
  expect(sheet).toMatchObject({
    columns: [26, 16, 44, 16, 60],
    frozen: { rows: 0, columns: 0 },
    tallRows: [],
    lists: [],
    flags: [{ range: "C6:C8", containsText: "inputs changed since", style: "flag" }],
  });
  const styleOf = (at: string) => sheet.cells.find((cell) => cell.at === at)?.style;
  expect(["A1", "A2", "A3", "A5", "A6", "A11", "A12"].map(styleOf)).toEqual([
    "title",
    "text",
    "note",
    "header",
    "text",
    "section",
    "text",
  ]);
  const values = inGrid(workbook).get("Fixed numbers")!;
  expect(["C6", "C7", "C8"].map((at) => values.get(at))).toEqual([AS_OF, AS_OF, AS_OF]);
});

test("a book without fixed numbers has a sheet of checks that flags nothing", () => {
  const { workbook } = clubCopy(sampleBook({ T: { rows: [[4]] } }), ORDER).book;
  expect(sheetOf(workbook, "Fixed numbers").flags).toEqual([]);
});

const SOLVE = {
  code: "=DUCT.SOLVE(T!A1)",
  shows: [
    [1, 2],
    [3, 4],
  ],
};
const placeOfWord = (sheet: SampleSheet, more: Record<string, SampleSheet> = {}): string[] => {
  const { workbook } = clubCopy(sampleBook({ T: { rows: [[4]] }, F: sheet, ...more }), ORDER).book;
  return sheetOf(workbook, "F").cells.flatMap((cell) =>
    "formula" in cell && cell.formula.startsWith("='Fixed numbers'!") ? [cell.at] : [],
  );
};

test("the word stands right of the answer, else above it, else under it, else nowhere", () => {
  const at = (...taken: string[]) =>
    placeOfWord({
      formulas: { C3: SOLVE },
      with: { cells: taken.map((one) => ({ at: one, value: "mine" })) },
    });
  expect(at()).toEqual(["E3"]);
  expect(at("E3")).toEqual(["C2"]);
  expect(at("E3", "C2")).toEqual(["C5"]);
  expect(at("E3", "C2", "C5")).toEqual([]);
  expect(placeOfWord({ formulas: { A1: SOLVE }, with: { cells: [{ at: "C1", value: "mine" }] } })).toEqual(["A3"]);
  expect(
    placeOfWord({ formulas: { C3: SOLVE }, with: { cells: [{ at: "E3", value: null, style: "input" }] } }),
  ).toEqual(["E3"]);
});

test("it stands neither in a range that a formula reads nor under a chart", () => {
  const reads = (code: string): string[] =>
    placeOfWord({ formulas: { C3: SOLVE } }, { R: { formulas: { A1: { code, shows: [[0]] } } } });
  expect(reads("=SUM(F!E3:F3)")).toEqual(["C2"]);
  expect(reads("=SUM(F!C1:E3)")).toEqual(["C5"]);
  const chart = { over: "E2:F4" } as Chart;
  expect(placeOfWord({ formulas: { C3: SOLVE }, with: { charts: [chart] } })).toEqual(["C2"]);
});
