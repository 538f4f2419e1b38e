/** The word at the head of a sheet whose numbers rest on fixed numbers of others: a quick cut, computed in the grid. */
import { clubCopy } from "../../../src/share/clubCopy";
import type { CellValue, Sheet } from "../../../src/sheets/workbook";
import { inGrid } from "../../support/grid";
import { sampleBook, type SampleSheet } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const solve = {
  code: "=DUCT.SOLVE(T!A1,T!A1)",
  shows: [
    [7, 8],
    [9, 10],
  ],
};
const STRUCK = "inputs changed since: what is struck out is old";
const other = { code: "=DUCT.GAINS(T!B1)", shows: [[7]] };

/** What the sheets say besides what stood on them, once something else is typed into T. */
function said(sheets: Record<string, SampleSheet>, typed: Record<string, CellValue> = {}): Record<string, unknown> {
  const { workbook } = clubCopy(sampleBook({ T: { rows: [[4, 5]] }, ...sheets }), ORDER).book;
  const retyped = workbook.sheets.map((sheet): Sheet =>
    sheet.name === "T"
      ? {
          ...sheet,
          cells: sheet.cells.map((cell) => (cell.at in typed ? { at: cell.at, value: typed[cell.at]! } : cell)),
        }
      : sheet,
  );
  const values = inGrid({ ...workbook, sheets: retyped });
  const words = Object.keys(sheets).flatMap((name) =>
    [...(values.get(name) ?? [])]
      .filter(([, value]) => /as of|old/.test(String(value)))
      .map(([at, value]) => [`${name}!${at}`, value]),
  );
  return Object.fromEntries(words) as Record<string, unknown>;
}

const reads = (code: string): SampleSheet => ({ formulas: { A9: { code, shows: [[1]] } } });
const F: SampleSheet = { formulas: { A3: solve } };

test("it tells the sheet and the day, through sheets between and cells that an answer fills, and turns once an input differs", () => {
  const sheets = { F, Between: reads("=SUM(F!B4:B5)"), Page: reads("=Between!A9+1"), Alone: reads("=T!A1") };
  expect(said(sheets)).toEqual({
    "F!A2": "what is slanted is as of 2026-11-25",
    "F!C3": "as of 2026-11-25",
    "Between!A2": "what comes from F is as of 2026-11-25",
    "Page!A2": "what comes from F is as of 2026-11-25",
  });
  expect(said(sheets, { A1: 5 })).toEqual({
    "F!A2": STRUCK,
    "F!C3": "inputs changed since: these numbers are old",
    "Between!A2": STRUCK,
    "Page!A2": STRUCK,
  });
});

test("of two sheets either makes it old; those on the sheet itself are told beside them", () => {
  const G = { formulas: { C3: other } };
  const sheets = { F, G, Page: { formulas: { A9: { code: "=F!A3+G!C3+C9", shows: [[1]] }, C9: solve } } };
  const page = {
    "Page!A2": "what is slanted and what comes from F, G is as of 2026-11-25",
    "Page!E9": "as of 2026-11-25",
  };
  expect(said(sheets)).toMatchObject(page);
  expect(said(sheets, { B1: 6 })).toMatchObject({
    ...page,
    "Page!A2": STRUCK,
    "F!C3": "as of 2026-11-25",
  });
});

test.each([
  [4, "A, B, C, D"],
  [5, "other sheets"],
])("of %d sheets it names %s", (count, names) => {
  const letters = ["A", "B", "C", "D", "E"].slice(0, count);
  const sheets = Object.fromEntries(letters.map((name) => [name, F]));
  const page = reads(`=${letters.map((name) => `${name}!A3`).join("+")}`);
  expect(said({ ...sheets, Page: page })).toMatchObject({ "Page!A2": `what comes from ${names} is as of 2026-11-25` });
});

test("a printed table is compared with nothing, so nothing is said of it", () => {
  const table = { formulas: { A3: { code: "=DUCT.CAUTIONS( )", shows: [["x"]] } } };
  expect(said({ F: table, Page: reads("=F!A3") })).toEqual({});
  const inside = { formulas: { A3: { code: "=DUCT.SOLVE(T!A1)+PI()", shows: [[1]] } } };
  expect(said({ F: inside })).toEqual({ "F!A2": "what is slanted is as of 2026-11-25", "F!B3": "as of 2026-11-25" });
});

test("where columns are wide, fewer cells have room for it", () => {
  const wide = (columns: readonly number[]): string[] => {
    const page = { ...reads("=F!A3"), with: { columns, cells: [{ at: "C2", value: "mine" }] } };
    return Object.keys(said({ F, Page: page })).filter((place) => place.startsWith("Page!"));
  };
  expect(wide([23, 22])).toEqual(["Page!A2"]);
  expect(wide([23, 21])).toEqual(["Page!A3"]);
});

/** It needs three blank cells beside each other, in rows 2 to 6 of the first column, else behind the title. */
test.each([
  [[], "A2"],
  [["A2"], "A3"],
  [["C2"], "A3"],
  [["D2"], "A2"],
  [["A2", "B3", "C4", "A5"], "A6"],
  [["A2", "A3", "A4", "A5", "A6"], "C1"],
  [["A2", "A3", "A4", "A5", "A6", "C1"], "D1"],
  [["A2", "A3", "A4", "A5", "A6", "E1"], "F1"],
  [["A2", "A3", "A4", "A5", "A6", "E1", "F1", "G1"], "H1"],
  [["A2", "A3", "A4", "A5", "A6", "E1", "H1"], "I1"],
  [["A2", "A3", "A4", "A5", "A6", "E1", "H1", "K1"], undefined],
])("with %j taken it stands in %s", (taken, at) => {
  const page = { ...reads("=F!A3"), with: { cells: taken.map((one) => ({ at: one, value: "mine" })) } };
  const found = Object.keys(said({ F, Page: page })).filter((place) => place.startsWith("Page!"));
  expect(found).toEqual(at === undefined ? [] : [`Page!${at}`]);
});

test("it is a note, is flagged once old, and takes the place of a blank cell", () => {
  const page = { ...reads("=F!A3"), with: { cells: [{ at: "A2", value: null, style: "input" } as const] } };
  const { workbook } = clubCopy(sampleBook({ T: { rows: [[4, 5]] }, F, Page: page }), ORDER).book;
  const sheet = workbook.sheets.find(({ name }) => name === "Page")!;
  expect(sheet.cells.filter(({ at }) => at === "A2")).toEqual([
    { at: "A2", style: "note", formula: expect.stringMatching(/^=IF\(IFERROR\(SUM\(/) as string },
  ]);
  expect(sheet.flags).toEqual([{ range: "A2", containsText: "inputs changed since", style: "flag" }]);
});
