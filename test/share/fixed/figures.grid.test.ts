/** A figure of the look-up tables that is changed in a copy makes the numbers that rest on it old. */
import { clubCopy } from "../../../src/share/clubCopy";
import type { CellValue, Sheet, Workbook } from "../../../src/sheets/workbook";
import { placeOf } from "../../../src/sheets/address";
import { inGrid } from "../../support/grid";
import { sampleBook } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

/** The tables come onto the sheet by the formulas in T: roughness, gates, a hood's and a fitting's coefficient. */
const book = sampleBook({
  T: {
    rows: [[4]],
    formulas: {
      A2: { code: '=DUCT.LOSSCOEFFICIENT("elbow",1.5)', shows: [[0.24]] },
      A3: { code: '=DUCT.GATELEAK("shut packed",6,4)', shows: [[1]] },
      A4: { code: '=DUCT.FRICTION(400,5,"spiral duct")', shows: [[1]] },
    },
  },
  F: {
    formulas: {
      A3: { code: "=DUCT.GAINS(T!A1)", shows: [[7]] },
      C3: { code: "=DUCT.CLAIM(T!A1)", shows: [["holds"]] },
    },
  },
});
const { workbook } = clubCopy(book, ORDER).book;
const lookups = workbook.sheets.find(({ name }) => name === "Lookups")!;
const boxed = lookups.cells.filter(({ style }) => style === "input");

const states = (copy: Workbook): unknown[] => ["C6", "C7"].map((at) => inGrid(copy).get("Fixed numbers")!.get(at));
const withLookups = (edit: (sheet: Sheet) => Sheet): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => (sheet === lookups ? edit(sheet) : sheet)),
});
const typed = (at: string, value: CellValue): Workbook =>
  withLookups((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => (cell.at === at ? { ...cell, value } : cell)),
  }));

const AS_OF = "as of 2026-11-25";
const OLD = "inputs changed since: these numbers are old";

test("as they were, nothing is old", () => {
  expect(boxed.length).toBeGreaterThan(50);
  expect(states(workbook)).toEqual([AS_OF, AS_OF]);
});

/** The first, the last and some between, by lot of their place. */
const places = [0, 1, 57, Math.floor(boxed.length / 2), boxed.length - 2, boxed.length - 1];

test.each(places.map((place) => boxed[place]!.at))(
  "figure %s changed makes what looks it up old, and a claim not",
  (at) => {
    const cell = boxed.find((one) => one.at === at)!;
    const value = "value" in cell ? cell.value : null;
    expect(states(typed(at, Number(value) * (1 + 1e-12) + 1e-12))).toEqual([OLD, AS_OF]);
  },
);

test("a figure that is no number any more, and a row taken out, count too", () => {
  const { at } = boxed[3]!;
  expect(states(typed(at, "0.1 or so"))).toEqual([OLD, AS_OF]);
  const { row } = placeOf(at);
  const without = withLookups((sheet) => ({
    ...sheet,
    cells: sheet.cells.filter((cell) => placeOf(cell.at).row !== row),
  }));
  expect(states(without)).toEqual([OLD, AS_OF]);
});

test("a figure typed over one that a table takes from another of its rows counts", () => {
  const taken = lookups.cells.find((cell) => "formula" in cell && /^=Lookups!\$B\$\d+$/.test(cell.formula))!;
  expect(
    states(
      withLookups((sheet) => ({
        ...sheet,
        cells: sheet.cells.map((cell) => (cell === taken ? { at: cell.at, value: 9.9 } : cell)),
      })),
    ),
  ).toEqual([OLD, AS_OF]);
});

/** As a program does it over all sheets and in formulas: wherever these letters stand, in part of a number, too. */
function replaced(from: string, to: string): Workbook {
  const inText = (text: string): string => text.replaceAll(from, to);
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => {
        if ("formula" in cell) return { ...cell, formula: inText(cell.formula) };
        if (typeof cell.value === "number") return { ...cell, value: Number(inText(String(cell.value))) };
        return typeof cell.value === "string" ? { ...cell, value: inText(cell.value) } : cell;
      }),
    })),
  };
}

/** Figures of several digits, which stand in no formula's syntax. */
const figures = boxed.flatMap((cell) => ("value" in cell && String(cell.value).length > 3 ? [String(cell.value)] : []));

test.each([figures[0]!, figures.at(-1)!])("%s replaced over all sheets makes old what looks it up", (figure) =>
  expect(states(replaced(figure, `${figure}9`))[0]).toBe(OLD),
);
