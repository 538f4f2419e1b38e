/** What revive makes of the cells of a copy, and of a record that somebody changed. */
import { clubCopy } from "../../src/share/clubCopy";
import { markFixed } from "../../src/share/marks";
import { ORIGINALS_MARK, originalsSheet } from "../../src/share/originals";
import { revive } from "../../src/share/revive/revive";
import type { ChoiceList, Sheet, SheetCell, Workbook } from "../../src/sheets/workbook";
import { type SampleSheet, sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const looks = { style: "total", format: "0.0", note: "mine" } as const;
const SOLVE = "=DUCT.SOLVE($A$1:B$2,Other!A1:A3)";

const copyOf = (sheet: SampleSheet, names: Parameters<typeof sampleBook>[1] = []): Workbook =>
  clubCopy(sampleBook({ S: sheet, Other: { rows: [[1], [2], [3]] } }, names), ORDER).book.workbook;
const again = (workbook: Workbook): Workbook | null => revive({ workbook, shown: new Map() }).workbook;
const cellsOf = (workbook: Workbook | null, sheet = "S"): Record<string, SheetCell> =>
  Object.fromEntries(workbook!.sheets.find(({ name }) => name === sheet)!.cells.map((cell) => [cell.at, cell]));

/** The workbook with a sheet's cells changed. */
const edited = (workbook: Workbook, sheet: string, edit: (cell: SheetCell) => SheetCell | null): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((one): Sheet =>
    one.name === sheet ? { ...one, cells: one.cells.flatMap((cell) => edit(cell) ?? []) } : one,
  ),
});
const RECORD = "Original formulas";
const withFormula = (workbook: Workbook, from: string, to: string): Workbook =>
  edited(workbook, RECORD, (cell) => ("formula" in cell && cell.formula === from ? { ...cell, formula: to } : cell));

const sample: SampleSheet = {
  rows: [[4, 5]],
  formulas: { A4: { code: "=DUCT.AREA(A1)", shows: [[0.0872664626]] }, A6: { code: SOLVE, shows: [["Run", 3]] } },
};

test("the record says what it is and holds each formula, how far it reached, its place and its ranges", () => {
  const sheet = originalsSheet(
    [{ sheet: "S", at: "A6", formula: SOLVE, written: { rows: 2, columns: 3 } }],
    ["About this copy", "Lookups"],
    "Record",
  );
  expect(sheet.cells.map((cell) => [cell.at, "formula" in cell ? cell.formula : cell.value, cell.style])).toEqual([
    ["A1", "Original formulas, as of copy format 1", "title"],
    ["A2", "Whoever has the add-in turns this copy back into a live budget with these. Change nothing here.", "note"],
    ["A3", "sheets of this copy", "note"],
    ["B3", "=ROWS('About this copy'!$A$1)", "result"],
    ["C3", "=ROWS(Lookups!$A$1)", "result"],
    ["A4", "formula", "header"],
    ["B4", "rows", "header"],
    ["C4", "columns", "header"],
    ["D4", "where", "header"],
    ["E4", "its ranges", "header"],
    ["A5", SOLVE, "text"],
    ["B5", 2, undefined],
    ["C5", 3, undefined],
    ["D5", "=ROWS('S'!$A$6)", "result"],
    ["E5", "=ROWS('S'!$A$1:B$2)", "result"],
    ["F5", "=ROWS(Other!A1:A3)", "result"],
  ]);
  expect(sheet).toMatchObject({
    name: "Record",
    columns: [70, 8, 8, 8, 8],
    tallRows: [],
    frozen: { rows: 4, columns: 0 },
    lists: [],
    flags: [],
  });
});

test("cells come back with their looks, formats and notes, also those that an answer had filled", () => {
  const given: SampleSheet = {
    rows: [[4, 5]],
    formulas: { A9: { code: SOLVE, shows: [[1, 2, 3]] } },
    with: {
      cells: [
        { at: "A4", formula: "=DUCT.AREA(A1)", ...looks },
        { at: "A6", formula: SOLVE, ...looks },
        { at: "B9", value: null, ...looks },
        { at: "E1", value: "typed", ...looks },
        { at: "E2", formula: "=A1+1", ...looks },
        { at: "E3", value: 1, note: "two\nlines" },
      ],
    },
  };
  const back = cellsOf(again(copyOf(given)));
  expect(back.A4).toEqual({ at: "A4", formula: "=DUCT.AREA(A1)", ...looks });
  const { italic, ...solid } = markFixed("total");
  expect(italic).toBe(true);
  expect(back.A6).toMatchObject({
    at: "A6",
    formula: SOLVE,
    format: "0.0",
    note: "mine",
    style: { ink: solid.ink, bold: true },
  });
  expect(back.A6!.style).not.toHaveProperty("italic");
  expect(back.B9).toMatchObject({ at: "B9", value: null, format: "0.0", note: "mine" });
  expect(back.C9).toMatchObject({ at: "C9", value: null });
  expect(Object.keys(back.C9!)).toEqual(["at", "style", "value"]);
  for (const at of ["E1", "E2", "E3"]) expect(back[at]).toEqual(given.with!.cells!.find((cell) => cell.at === at));
});

test.each([
  ["value", { at: "B1", value: "SI", ...looks }],
  ["formula", { at: "B1", formula: '="SI"', ...looks }],
  ["bare value", { at: "B1", value: "SI" }],
] as const)("the units cell, a %s, loses the copy's sentence alone and offers both systems again", (_, cell) => {
  const lists: ChoiceList[] = [
    { range: "B1", choices: ["IP", "SI"], strict: true },
    { range: "C1", choices: ["3"], strict: true },
    { range: "C2", choices: ["SI"], strict: false },
    { range: "C3", choices: ["SI", "IP", "US"], strict: true },
  ];
  const book = sampleBook(
    { S: { formulas: { A4: { code: "=DUCT.AREA(4)", shows: [[1]] } }, with: { cells: [cell], lists } } },
    [{ name: "Units", sheet: "S", at: "B1" }],
  );
  (book.shown.get("S") as Map<string, { value: string }>).set("B1", { value: " si " });
  const copy = clubCopy(book, ORDER).book.workbook;
  expect(cellsOf(copy).B1!.note).toMatch(
    /Fixed in this copy: the formulas were made for SI\. For other units make another copy\.$/,
  );
  expect(copy.sheets.find(({ name }) => name === "S")!.lists.find(({ range }) => range === "B1")!.choices).toEqual([
    "SI",
  ]);
  const back = again(copy)!;
  expect(cellsOf(back).B1).toEqual(cell);
  expect([...back.sheets[0]!.lists].sort((a, b) => a.range.localeCompare(b.range))).toEqual(lists);
});

test("the book's own flags stay, and names on sheets of the copy go with them", () => {
  const flag = { range: "A1", containsText: "x", style: "flag" } as const;
  const copy = copyOf({ ...sample, with: { flags: [flag] } }, [{ name: "mine", sheet: "S", at: "A1" }]);
  const named = { ...copy, names: [...copy.names, { name: "theirs", sheet: "LOOKUPS", at: "A1" }] };
  const back = again(named)!;
  expect(back.sheets[0]!.flags).toEqual([flag]);
  expect(back.names).toEqual([{ name: "mine", sheet: "S", at: "A1" }]);
});

test("a formula whose cell is blank in the copy comes back all the same", () => {
  const cut = edited(copyOf(sample), "S", (cell) => (cell.at === "A4" ? null : cell));
  expect(cellsOf(again(cut)).A4).toEqual({ at: "A4", formula: "=DUCT.AREA(A1)" });
});

test.each(["=ROWS(#REF!)", "=ROWS(#REF!A1:A3)", "=ROWS(Other!A1:A3)+1", "=1+ROWS(Other!A1:A3)"])(
  "a formula whose range became %s is left out, with what its cell showed",
  (broken) => {
    const back = cellsOf(again(withFormula(copyOf(sample), "=ROWS(Other!A1:A3)", broken)));
    expect(back.A6).toMatchObject({ value: "Run" });
    expect(back.A4).toEqual({ at: "A4", formula: "=DUCT.AREA(A1)" });
  },
);

test("a reference is read in any letters, with blanks before it", () => {
  const copy = withFormula(copyOf(sample), "=ROWS(Other!A1:A3)", "=  rows(Others!A2:A4)");
  const sheets = copy.sheets.map((sheet) => (sheet.name === "Other" ? { ...sheet, name: "Others" } : sheet));
  const back = again({ ...copy, sheets });
  expect(cellsOf(back).A6).toMatchObject({ formula: "=DUCT.SOLVE($A$1:B$2,Others!A2:A4)" });
});

test("a record that lost its references, its sizes or its row of sheets gives what is left", () => {
  const rowOf = (at: string): number => Number(/\d+/.exec(at)![0]);
  const typedOver = edited(copyOf(sample), RECORD, (cell) =>
    /^D[567]$/.test(cell.at) ? { at: cell.at, value: "x" } : cell,
  );
  expect(again(typedOver)).toBeNull();
  const noSizes = edited(copyOf(sample), RECORD, (cell) => (/^[BC]5$/.test(cell.at) ? null : cell));
  expect(cellsOf(again(noSizes)).A4).toEqual({ at: "A4", formula: "=DUCT.AREA(A1)" });
  const noSheets = edited(copyOf(sample), RECORD, (cell) => (rowOf(cell.at) === 3 ? null : cell));
  expect(again(noSheets)!.sheets.map(({ name }) => name)).toContain("Lookups");
});

test("a record of nothing but added cells, or with its mark elsewhere, is none", () => {
  const copy = copyOf(sample);
  const added = edited(copy, RECORD, (cell) => (/^[A-F][56]$/.test(cell.at) ? null : cell));
  expect(cellsOf(copy, RECORD).D7).toMatchObject({ formula: "=ROWS('S'!$C$6)" }); // the word beside SOLVE
  expect(again(added)).toBeNull();
  const moved = edited(copy, RECORD, (cell) => (cell.at === "A1" ? { at: "B1", value: ORIGINALS_MARK } : cell));
  expect(again(moved)).toBeNull();
  expect(again(copyOf({ rows: [[1]] }))).toBeNull();
});

test("whole columns come back, too", () => {
  const code = "=DUCT.SOLVE(A:B,Other!1:3)";
  const back = again(copyOf({ formulas: { D4: { code, shows: [[1]] } } }));
  expect(cellsOf(back).D4).toMatchObject({ formula: code });
});
