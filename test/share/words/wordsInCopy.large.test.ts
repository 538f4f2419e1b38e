/** What a club's copy says of itself, cell by cell, as somebody without the add-in reads it. */
import { clubCopy } from "../../../src/share/clubCopy";
import { makerOf } from "../../../src/share/words/maker";
import { triesIn } from "../../../src/share/words/tries";
import { revive } from "../../../src/share/revive/revive";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import type { Calculated } from "../../../src/sheets/calculated";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import type { Sheet } from "../../../src/sheets/workbook";

const bookOf = (units: "IP" | "SI", contents: "example" | "empty"): Calculated => ({
  workbook: budgetBook({ sheets: sheetKeys, units, contents }, { sheets: [], names: [] }),
  shown: new Map([["Start", new Map([["B6", { value: units }]])]]),
});

/** Every text that a sheet shows or may show: typed, in a note, as an input message, or between quotes in a formula. */
const textsOf = ({ name, cells, hints = [] }: Sheet): string[] => [
  ...hints.map(({ range, text }) => `${name}!${range} ${text}`),
  ...cells.flatMap((cell) => {
    const said = "formula" in cell ? (cell.formula.match(/"(?:[^"]|"")*"/g) ?? []) : [cell.value];
    return [...said, cell.note].flatMap((words) => (typeof words === "string" ? [`${name}!${cell.at} ${words}`] : []));
  }),
];

/** What nobody who opens a copy can do or find. */
const UNTRUE = [
  /\bthe pane\b/i,
  /DUCT\./,
  /\btype =/i,
  /without the add-in/i,
  /choose the units|choose before/i,
  /computes? itself|computed itself/i,
  /functions compute/i,
  /tried too|sets shall work|Diameters that you can buy/i,
];
const ABOUT = ["About this copy", "Original formulas"];

const untrueIn = ({ workbook }: Calculated): string[] =>
  workbook.sheets
    .filter(({ name }) => !ABOUT.includes(name))
    .flatMap(textsOf)
    .filter((words) => UNTRUE.some((one) => one.test(words)));

const CASES = [
  ["IP", "example", "formulas"],
  ["SI", "empty", "formulas"],
  ["SI", "example", "values"],
  ["IP", "empty", "values"],
] as const;

test.each(CASES)("no cell of a copy of the %s %s, of %s, speaks of what is not there", (units, contents, kind) => {
  const book = bookOf(units, contents);
  expect(untrueIn(book).length).toBeGreaterThan(10); // the book itself does
  expect(untrueIn(clubCopy(book, { kind, date: "2026-11-25", version: "1.0.0" }).book)).toEqual([]);
});

test("a copy says what is so instead, and the live budget that comes back says what it said", () => {
  const book = bookOf("SI", "example");
  const copy = clubCopy(book, { kind: "formulas", date: "2026-11-25", version: "1.0.0" }).book;
  const said = (one: Calculated["workbook"], sheet: string, at: string): unknown => {
    const cell = one.sheets.find(({ name }) => name === sheet)!.cells.find((there) => there.at === at)!;
    return "value" in cell ? cell.value : cell.formula;
  };
  expect(said(copy.workbook, "Start", "D6")).toBe(
    "SI: m³/h, m/s, Pa, mm, m. Fixed in this copy: another word there changes nothing.",
  );
  expect(said(copy.workbook, "Readings", "E3")).toBe(said(book.workbook, "Readings", "E3")); // it can be tried
  const back = revive(copy).workbook!;
  const typedIn = ({ sheets }: Calculated["workbook"]): string[] =>
    sheets.flatMap(({ name, cells }) =>
      cells.flatMap((cell) => {
        const note = cell.note === undefined ? [] : [`${name}!${cell.at} note ${cell.note}`];
        return "value" in cell && typeof cell.value === "string" ? [...note, `${name}!${cell.at} ${cell.value}`] : note;
      }),
    );
  expect(typedIn(back)).toEqual(typedIn(book.workbook));
  const hintsIn = ({ sheets }: Calculated["workbook"]): unknown => sheets.map(({ name, hints }) => [name, hints]);
  expect(hintsIn(copy.workbook)).not.toEqual(hintsIn(book.workbook));
  expect(hintsIn(back)).toEqual(hintsIn(book.workbook));
  const units = (one: Calculated["workbook"]): unknown =>
    one.sheets.find(({ name }) => name === "Start")!.cells.find(({ at }) => at === "B6")!.style;
  expect([units(copy.workbook), units(back)]).toEqual(["label", "input"]);
});

test("a copy of values looks as if nothing were to be typed or chosen, and each sheet says what it is", () => {
  const { workbook } = clubCopy(bookOf("IP", "example"), { kind: "values", date: "2026-11-25", version: "1.0.0" }).book;
  const [about, ...sheets] = workbook.sheets;
  expect(sheets.flatMap(({ lists }) => lists)).toEqual([]);
  expect(sheets.flatMap(({ hints = [] }) => hints)).toEqual([]);
  expect(sheets.flatMap(({ cells }) => cells.filter(({ style }) => style === "input"))).toEqual([]);
  const LINE = "values of 2026-11-25: nothing here recalculates";
  const without = sheets.filter(({ cells }) => !cells.some((cell) => "value" in cell && cell.value === LINE));
  expect(without.map(({ name }) => name)).toEqual([]);
  expect(about!.name).toBe("About this copy");
});

test("who made it is named where the page for the club does", () => {
  const book = bookOf("SI", "example");
  const signed: Calculated = {
    ...book,
    workbook: {
      ...book.workbook,
      sheets: book.workbook.sheets.map((sheet) =>
        sheet.name === "Summary"
          ? { ...sheet, cells: sheet.cells.map((cell) => (cell.at === "F4" ? { ...cell, value: " A. Maker " } : cell)) }
          : sheet,
      ),
    },
  };
  expect(makerOf(book.workbook)).toBeNull();
  expect(makerOf(signed.workbook)).toBe("A. Maker");
});

test.each([
  [
    ["BUDGET", "SOLVE"],
    4,
    /^Shut a gate: on the sheet Flow .*\nWiden a pipe: .* Budget and Flow follow\.\nAdd a run: use a blank row /,
  ],
  [["BUDGET"], 3, /^Widen a pipe: .* Budget follows\.\nAdd a run: use a blank row /],
  [[], 0, /^$/],
] as const)("with %j live it offers %d things to try", (live, count, words) => {
  const facts = {
    units: "SI",
    isLive: (call: string) => live.some((name) => call === `DUCT.${name}(`),
    allLive: () => false,
    sheets: null,
  } as const;
  const tries = triesIn(bookOf("SI", "empty").workbook, facts, "Lookups");
  expect(tries).toHaveLength(count);
  expect(tries.join("\n")).toMatch(words);
});
