import { readFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { legible, MARGINS } from "../../src/sheets/paper";
import type { Chart, PrintSetup, Sheet } from "../../src/sheets/workbook";
import { sheetOf } from "../support/sheetOf";

/**
 * A4 is 297 mm long, US Letter 11 in. With 0.4 in of margin left and right, letters of 7 points for 10, and 7 % kept for
 * programs that draw columns wider, a page takes (11.69 - 0.8) x 72 x 10 / 7 x 0.93 = 1042 points, and (11 - 0.8) ... = 976.
 * A column of w characters is (7 w + 5) x 0.75 points: 20 are 108.75, so nine (978.75) fit on A4, and eight on Letter.
 */
const sheet = (columns: readonly number[], print: Partial<PrintSetup> = {}, frozen = 0): Sheet =>
  sheetOf("One", [], {
    columns,
    frozen: { rows: 0, columns: frozen },
    print: { paper: "A4", landscape: true, ...print },
  });

const begins = (columns: readonly number[], print: Partial<PrintSetup> = {}): readonly number[] =>
  legible(sheet(columns, print)).print?.shared?.columns ?? [];

const twenties = (count: number): number[] => new Array<number>(count).fill(20);

describe("a sheet on paper", () => {
  test("stays one page wide where its letters are seven points at least", () => {
    expect(legible(sheet(twenties(9))).print).toEqual({ paper: "A4", landscape: true });
    expect(legible(sheet(twenties(8), { paper: "Letter" })).print).not.toHaveProperty("shared");
  });

  test("takes a second page where they would be smaller, its first column on both", () => {
    expect(legible(sheet(twenties(10))).print).toEqual({
      paper: "A4",
      landscape: true,
      shared: { scale: 74, rows: [], columns: [10] }, // nine columns: 10.89 x 72 x 0.93 / 978.75 = 0.745
      titleColumns: { first: 1, last: 1 },
    });
    // upright, a page takes (8.27 - 0.8) x 72 x 10 / 7 x 0.93 = 715 points: six of those columns, then five more and the first
    expect(legible(sheet(twenties(6), { landscape: false })).print).not.toHaveProperty("shared");
    expect(begins(twenties(11), { landscape: false })).toEqual([7]);
    expect(begins(twenties(12), { landscape: false })).toEqual([7, 12]);
  });

  test("the columns that stay on the screen come back on each page", () => {
    expect(legible(sheet(twenties(12), {}, 3)).print).toMatchObject({
      shared: { columns: [10] },
      titleColumns: { first: 1, last: 3 },
    });
  });

  test("columns that belong together, and those of a picture, go to the next page rather than being parted", () => {
    const upright = sheet(twenties(9), { landscape: false });
    expect(legible(upright).print?.shared?.columns).toEqual([7]);
    expect(legible(upright, [{ first: 6, last: 7 }]).print?.shared?.columns).toEqual([6]);
    const picture: Chart = { kind: "line through points", over: "E3:G9", title: "", x: { title: "", range: "A1:A2" }, y: { title: "", series: [] } }; // prettier-ignore
    expect(legible({ ...upright, charts: [picture] }).print?.shared?.columns).toEqual([5]);
    // beside its names a page has room for five: what is wider is parted after all
    expect(legible(upright, [{ first: 2, last: 9 }]).print?.shared?.columns).toEqual([7]);
  });

  /**
   * A page of A4 upright is (11.69 - 0.6 - 0.5) x 72 = 762 points high, 724 of which are counted on; a row is 13.5. Two columns
   * of 20 are drawn as large as on the screen, so 53 rows are sure to fit. Two fifths of a page are 305 points, or 22.6 rows.
   */
  test.each<[string, number[], number, number[]]>([
    ["what fits on one page is not parted", [1, 20], 53, []],
    ["a part that would be cut begins a page", [1, 31], 54, [31]],
    ["and the next one begins where it would be cut in its turn", [1, 31, 60, 80], 100, [31, 80]],
    ["a page that would end high up is rather filled", [1, 20], 54, []],
  ])("%s", (_, headings, last, rows) => {
    const cells = headings.map((row) => ({ at: `A${row}`, value: "Part", style: "section" as const }));
    const one = sheetOf("One", [...cells, { at: `B${last}`, value: "end" }], { columns: twenties(2), print: { paper: "A4", landscape: false } }); // prettier-ignore
    expect(legible(one).print?.shared).toEqual(rows.length === 0 ? undefined : { scale: 100, rows, columns: [] });
  });

  test("letters are drawn a little smaller where that spares the last papers", () => {
    // lying, a page of letter paper takes eight of these columns, 870 points, at (11 - 0.8) x 72 x 0.93 / 870 = 78 %, and is
    // (8.5 - 1.1) x 72 = 533 points high: 50 rows of 13.5 fit so. 54 are 729 points and fit at 73 %; 57 ask for 69 %
    const scale = (last: number): number | undefined =>
      legible(sheetOf("One", [{ at: `A${last}`, value: "end" }], { columns: twenties(10), print: { paper: "Letter", landscape: true } })).print?.shared?.scale; // prettier-ignore
    expect([50, 54, 57].map(scale)).toEqual([78, 73, 78]);
  });

  test("what is drawn smaller to fit a number of pages is left to the program", () => {
    const fitted = sheet(twenties(30), { pagesHigh: 1 });
    expect(legible(fitted)).toBe(fitted);
  });

  test("only the columns that are printed count", () => {
    expect(legible(sheet(twenties(30), { area: "A1:I40" })).print).not.toHaveProperty("shared");
  });

  test("a sheet that is not set up for paper is left alone", () => {
    const plain = sheetOf("One", [], { columns: twenties(30) });
    expect(legible(plain)).toBe(plain);
  });

  test("a column more never takes fewer pages, and no page is needed without a column for it", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 40 }), (columns) => {
        const pages = (count: number): number => begins(columns.slice(0, count)).length + 1;
        const each = columns.map((_, index) => pages(index + 1));
        expect(each).toEqual([...each].sort((one, other) => one - other));
        expect(each.at(-1)!).toBeLessThanOrEqual(Math.max(1, columns.length - 1));
      }),
    );
  });
});

test("the print of the page in the browser has the margins of a file", () => {
  const css = readFileSync(path.join(__dirname, "../../src/hosts/local/print/print.css"), "utf8");
  const { top, left, right, bottom } = MARGINS;
  expect(left).toBe(right);
  expect([...css.matchAll(/@page [^}]*margin: (.*);/g)].map(([, margin]) => margin)).toEqual(
    new Array(4).fill(`${top}in ${left}in ${bottom}in`),
  );
});
