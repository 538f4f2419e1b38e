import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { calculatedOf } from "../../../src/hosts/local/readGrid";
import { wholeBudget } from "../../../src/hosts/local/newForm";
import type { Calculated } from "../../../src/sheets/calculated";
import { lookOf } from "../../../src/sheets/styles";
import type { Sheet, SheetCell, Workbook } from "../../../src/sheets/workbook";
import { gridOf, setUpGrid } from "./gridOfOurs";
beforeAll(setUpGrid);

const rowOf = (at: string): number => Number(at.replace(/\D/g, ""));
const columnOf = (at: string): string => at.replace(/\d/g, "").padStart(3);
const byPlace = (one: SheetCell, other: SheetCell): number =>
  rowOf(one.at) - rowOf(other.at) || (columnOf(one.at) < columnOf(other.at) ? -1 : 1);

/** The grid leaves out blanks between the parts of a formula, and writes a range of one cell as that cell. */
const asTheGridWrites = (formula: string): string =>
  formula
    .split(/("(?:[^"]|"")*"|'[^']*')/)
    .map((part, index) =>
      index % 2 === 1
        ? part
        : part
            .replace(/\s+/g, "")
            .replace(
              /(\$?)([A-Z]{1,3})(\$?)(\d+):\$?\2\$?\4(?!\d)/g,
              (_, ...[column, letters, row, number]: string[]) => [column, letters, row, number].join(""),
            ),
    )
    .join("");

const withoutDollars = <Ranged extends { readonly range: string }>(one: Ranged): Ranged => ({
  ...one,
  range: one.range.replaceAll("$", ""),
});

const byRange = (one: { readonly range: string }, other: { readonly range: string }): number =>
  one.range < other.range ? -1 : 1;

const comparable = (sheet: Sheet): Sheet => ({
  ...sheet,
  lists: sheet.lists.map(withoutDollars),
  flags: sheet.flags.map(withoutDollars),
  ...(sheet.hints === undefined ? {} : { hints: [...sheet.hints].sort(byRange) }), // a file has those with a list first
  cells: [...sheet.cells]
    .sort(byPlace)
    .map((cell) => ("formula" in cell ? { ...cell, formula: asTheGridWrites(cell.formula) } : cell)),
});

/** A file knows how a cell looks, not which of two styles that look alike it has. */
const byLook = (book: Workbook): Workbook => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => (cell.style === undefined ? cell : { ...cell, style: lookOf(cell.style) })),
  })),
});

const expectSame = (back: Workbook, book: Workbook): void => {
  expect(back.name).toBe(book.name);
  expect(back.names).toEqual(book.names);
  expect(back.sheets.map(({ name }) => name)).toEqual(book.sheets.map(({ name }) => name));
  book.sheets.forEach((sheet, index) => expect(comparable(back.sheets[index]!)).toEqual(comparable(sheet)));
};

describe.each(["IP", "SI"] as const)("the whole example in %s", (units) => {
  const book = wholeBudget(units, "example");

  let first: Calculated;
  beforeAll(() => {
    first = calculatedOf(gridOf(book));
  });

  test("comes back from the grid as it was described", () => {
    expectSame(first.workbook, book);
  });

  test("is the same after description, grid, file, grid: inputs, formulas, looks, formats, names, lists, marks, notes", async () => {
    const bytes = await writeBook(first, { title: first.workbook.name });
    const { workbook } = await readBook(bytes);
    expectSame(byLook(calculatedOf(gridOf(workbook)).workbook), byLook(first.workbook));
  });
});
