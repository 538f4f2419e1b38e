import { differencesOf } from "../../src/share/differences";
import type { Shown, ShownCell } from "../../src/sheets/calculated";
import { sampleBook, type SampleSheet } from "./sampleBooks";

const formula = (shows: ShownCell["value"]) => ({ code: "=X1", shows: [[shows]] });
const one = (sheet: SampleSheet) => sampleBook({ One: sheet });
const shows = (cells: Readonly<Record<string, ShownCell["value"]>>): Shown =>
  new Map([["One", new Map(Object.entries(cells).map(([at, value]) => [at, { value }]))]]);

/** The cells that differ where a formula in A1 showed one thing in the book and another in its copy. */
const differ = (inBook: ShownCell["value"], inCopy: ShownCell["value"]): boolean => {
  const book = one({ formulas: { A1: formula(inBook) } });
  return differencesOf(book, book.workbook, shows({ A1: inCopy })).length > 0;
};

// A number may be off by a thousand-millionth of itself: 480 by 4.8e-7.
test.each<[inBook: ShownCell["value"], inCopy: ShownCell["value"], isOther: boolean]>([
  [480, 480 + 4e-7, false],
  [480, 480 - 4e-7, false],
  [480, 480 + 5e-7, true],
  [480, 480 - 5e-7, true],
  [-480, 480, true],
  [1e-8, 1.1e-8, true],
  [0, 1e-13, false],
  [0, 1e-11, true],
  [480, "480", true],
  [480, "", true],
  [480, null, true],
  [480, { error: "#N/A" }, true],
  ["settles", "too fast", true],
  ["settles", "settles", false],
  ["ok: 21,3 m/s, 4,5 of 1,20", "ok: 21.3 m/s, 4.5 of 1.20", false], // by the country that Excel is set to
  ["ok: 21,3 m/s", "ok: 21.4 m/s", true],
  ["ok: 21,3 m/s", "ok: 213 m/s", true],
  ["2, 3", "2. 3", true],
  ["", null, false],
  [null, "", false],
  ["", 0, true],
  [true, "TRUE", true],
  [{ error: "#VALUE!", message: "Run must be a name" }, { error: "#N/A" }, false],
  [{ error: "#VALUE!" }, 0, true],
  [{ error: "#VALUE!" }, "", true],
])("%j in the book and %j in its copy: %p", (inBook, inCopy, isOther) => {
  expect(differ(inBook, inCopy)).toBe(isOther);
});

test("what differs is told with its cell and with both values", () => {
  const book = one({ rows: [[null, "width"]], formulas: { A1: formula(4), A2: formula(7) } });
  expect(differencesOf(book, book.workbook, shows({ A1: 4, A2: 8, B1: "width" }))).toEqual([
    { sheet: "One", at: "A2", inCopy: 8, inBook: 7 },
  ]);
});

test("where the book has nothing a copy may say a word, but show no number and no error", () => {
  const book = one({ rows: [[1]] });
  const found = differencesOf(
    book,
    book.workbook,
    shows({ A1: 1, B1: "as of 2026-11-25", B2: 3, B3: { error: "#N/A" } }),
  );
  expect(found.map(({ at }) => at)).toEqual(["B2", "B3"]);
});

test("a word typed in place of the book's is the copy's own; what a formula says is compared", () => {
  const book = one({ formulas: { A1: formula("Choose the units") } });
  const typed = one({ rows: [["The units are fixed"]] }).workbook;
  const said = shows({ A1: "The units are fixed" });
  expect(differencesOf(book, typed, said)).toEqual([]);
  expect(differencesOf(book, book.workbook, said)).toHaveLength(1);
});
