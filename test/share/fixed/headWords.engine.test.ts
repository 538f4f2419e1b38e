/** The word at the head of a sheet whose numbers rest on fixed numbers of another sheet. */
import { clubCopy } from "../../../src/share/clubCopy";
import { revive } from "../../../src/share/revive/revive";
import type { CellValue, Sheet, Workbook } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { ironCalc } from "../../support/ironCalc";
import { sampleBook } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

/** T is typed, F holds a fixed number, Between reads it, Page reads Between; Alone reads only what is typed. */
const book = sampleBook({
  T: { rows: [[4]] },
  F: { rows: [["title"]], formulas: { A3: { code: "=DUCT.SOLVE(T!A1,T!A1)", shows: [[7]] } } },
  Between: { formulas: { A9: { code: "=F!A3*2", shows: [[14]] } } },
  Page: { rows: [["title"], ["text"]], formulas: { B9: { code: "=Between!A9+1", shows: [[15]] } } },
  Alone: { formulas: { A9: { code: "=T!A1", shows: [[4]] } } },
});

const copyWith = (typed: CellValue): Workbook => {
  const { workbook } = clubCopy(book, ORDER).book;
  const sheets = workbook.sheets.map((sheet) =>
    sheet.name === "T" ? { ...sheet, cells: [{ at: "A1", value: typed }] } : sheet,
  );
  return { ...workbook, sheets };
};

/** What the engine computes of the copy, asked once for each value that is typed. */
const computed = new Map<CellValue, EngineValues>();
function valuesWith(typed: CellValue): EngineValues {
  const values = computed.get(typed) ?? ironCalc(copyWith(typed));
  computed.set(typed, values);
  return values;
}

/** The texts that a sheet shows besides those of its own. */
const said = (typed: CellValue, sheet: string): [string, unknown][] =>
  [...(valuesWith(typed).get(sheet) ?? [])].filter(([, value]) => /as of|old/.test(String(value)));

test("it says where the numbers come from and of when they are, in the first free row under the title", () => {
  expect(said(4, "Between")).toEqual([["A2", "what comes from F is as of 2026-11-25"]]);
  expect(said(4, "Page")).toEqual([["A3", "what comes from F is as of 2026-11-25"]]);
});

test("it says that they are old, also through a sheet between, once an input differs", () => {
  expect(said(5, "Between")).toEqual([["A2", "inputs changed since: what is struck out is old"]]);
  expect(said(5, "Page")).toEqual([["A3", "inputs changed since: what is struck out is old"]]);
});

test("a sheet whose numbers all follow says nothing", () => {
  expect(said(5, "Alone")).toEqual([]);
  expect(said(5, "F")).toEqual([
    ["B3", "inputs changed since: these numbers are old"],
    ["A2", "inputs changed since: what is struck out is old"],
  ]);
});

test("the live budget that comes back from the copy has none of these words", () => {
  const back = revive(clubCopy(book, ORDER).book).workbook!;
  const filled = ({ cells }: Sheet): string[] =>
    cells.flatMap((cell) => ("value" in cell && cell.value === null ? [] : [cell.at]));
  const cells = Object.fromEntries(back.sheets.map((sheet) => [sheet.name, filled(sheet)]));
  expect(cells).toEqual({ T: ["A1"], F: ["A1", "A3"], Between: ["A9"], Page: ["A1", "A2", "B9"], Alone: ["A9"] });
});
