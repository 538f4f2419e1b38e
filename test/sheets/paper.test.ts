import { readFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { legible, MARGINS } from "../../src/sheets/paper";
import type { PrintSetup, Sheet } from "../../src/sheets/workbook";
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

const twenties = (count: number): number[] => new Array<number>(count).fill(20);

describe("a sheet on paper", () => {
  test("stays one page wide where its letters are seven points at least", () => {
    expect(legible(sheet(twenties(9))).print).toEqual({ paper: "A4", landscape: true });
    expect(legible(sheet(twenties(8), { paper: "Letter" })).print).not.toHaveProperty("pagesWide");
  });

  test("takes a second page where they would be smaller, its first column on both", () => {
    expect(legible(sheet(twenties(10))).print).toEqual({
      paper: "A4",
      landscape: true,
      pagesWide: 2,
      titleColumns: { first: 1, last: 1 },
    });
    // upright, a page takes (8.27 - 0.8) x 72 x 10 / 7 x 0.93 = 715 points: six of those columns, then five more and the first
    expect(legible(sheet(twenties(6), { landscape: false })).print).not.toHaveProperty("pagesWide");
    expect(legible(sheet(twenties(11), { landscape: false })).print).toMatchObject({ pagesWide: 2 });
    expect(legible(sheet(twenties(12), { landscape: false })).print).toMatchObject({ pagesWide: 3 });
  });

  test("the columns that stay on the screen come back on each page", () => {
    expect(legible(sheet(twenties(12), {}, 3)).print).toMatchObject({
      pagesWide: 2,
      titleColumns: { first: 1, last: 3 },
    });
  });

  test("only the columns that are printed count", () => {
    expect(legible(sheet(twenties(30), { area: "A1:I40" })).print).not.toHaveProperty("pagesWide");
  });

  test("a sheet that is not set up for paper is left alone", () => {
    const plain = sheetOf("One", [], { columns: twenties(30) });
    expect(legible(plain)).toBe(plain);
  });

  test("a column more never takes fewer pages, and no page is needed without a column for it", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 40 }), (columns) => {
        const pages = (count: number): number => legible(sheet(columns.slice(0, count))).print?.pagesWide ?? 1;
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
  expect([...css.matchAll(/margin: (.*);/g)].map(([, margin]) => margin)).toEqual(
    new Array(4).fill(`${top}in ${left}in ${bottom}in`),
  );
});
