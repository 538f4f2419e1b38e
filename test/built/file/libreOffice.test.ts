/** Our file in LibreOffice with its settings as they come: what stays, what is printed, and what its re-saved file keeps. */
import { calculate } from "../../../scripts/calculate";
import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import type { Calculated } from "../../../src/sheets/calculated";
import { singleCellsSheet } from "../../../src/sheets/demo/singleCellsSheet";
import type { Sheet, SheetCell } from "../../../src/sheets/workbook";
import { hasLibreOffice, type Office, openOffice } from "../../support/libreOffice";
import { sheetKeys } from "../../../src/sheets/sheetKeys";

const CSV_OF_ALL_SHEETS = "Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

const describeIf = hasLibreOffice ? describe : describe.skip;

describeIf("the example in LibreOffice", () => {
  let office: Office;
  let book: Calculated;
  let bytes: Uint8Array;
  let written: ReadonlyMap<string, Buffer> | undefined;
  /** Every sheet as LibreOffice shows it, asked of it once. */
  const sheets = () => (written ??= office.convertAll(bytes, CSV_OF_ALL_SHEETS, "csv"));
  let paper: Buffer | undefined;
  const pdf = () => (paper ??= office.convert(bytes, "calc_pdf_Export", "pdf"));
  beforeAll(async () => {
    office = openOffice();
    const example = budgetBook({ units: "SI", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
    book = calculate({ ...example, sheets: [...example.sheets, singleCellsSheet] });
    bytes = await writeBook(book, { title: "Example of a budget" });
  });
  afterAll(() => office.close());

  const csvOf = (sheet: string): string[] => sheets().get(`book-${sheet}.csv`)!.toString("utf8").split("\n");

  test("single cells keep the values of our functions", () => {
    const shown = book.shown.get("Single cells")!;
    const valueIn = (question: string): number => {
      const row = csvOf("Single cells").find((line) => line.startsWith(question))!;
      return Number(row.split(",").at(-3)); // before the unit and an empty column; commas in the formula stand before it
    };
    expect(valueIn("Cross-section of a 4 in duct")).toBeCloseTo(shown.get("C5")!.value as number, 12);
    expect(valueIn("Velocity of 350 cfm in it")).toBeCloseTo(shown.get("C6")!.value as number, 8);
  });

  test("what one formula fills is not kept there, as docs/workbook-file.md says", () => {
    const budget = csvOf("Budget");
    expect(budget.join()).toContain("#NAME?");
  });

  test("nothing is printed smaller than seven points, and not the tables in full", () => {
    const heights = office.pdfHeights(pdf());
    expect(heights.length).toBeGreaterThan(3000); // words
    // the letters of our file reach from 0.905 of their size above the line to 0.212 below it, as their font's table says
    expect(Math.min(...heights)).toBeGreaterThan(7 * (0.905 + 0.212));
    expect(office.pdfPages(pdf()).filter((page) => /^ *Example of a budget +Tables *$/m.test(page))).toHaveLength(1);
  });

  test("every sheet is printed with its title above and its number below", () => {
    const pages = office.pdfPages(pdf());
    expect(pages.length).toBeGreaterThanOrEqual(sheetKeys.length);
    const printed = book.workbook.sheets.filter(({ print }) => print !== undefined);
    for (const { name } of printed) {
      const own = pages.filter((page) => new RegExp(`^\\s*Example of a budget\\s+${name}\\s*$`, "m").test(page));
      expect([name, own.length]).toEqual([name, expect.any(Number)]);
      expect(own.length).toBeGreaterThan(0);
      own.forEach((page) => expect(page).toMatch(/Page \d+ of \d+\s*$/));
    }
    const heading = book.shown.get("Start")!.get("A1")!.value as string;
    expect(heading.length).toBeGreaterThan(5);
    expect(pages[0]).toContain(heading);
  });

  test("the file that it saves again keeps every input, formula, name, list, flag, note, format and chart", async () => {
    const back = await readBook(office.convert(bytes, "Calc MS Excel 2007 XML", "xlsx"));
    expect(back.workbook.sheets.map(({ name }) => name)).toEqual(book.workbook.sheets.map(({ name }) => name));
    expect(new Set(back.workbook.names)).toEqual(new Set(book.workbook.names));
    const own = await readBook(bytes);
    own.workbook.sheets.forEach((sheet, index) => {
      const again = back.workbook.sheets[index]!;
      const kept = new Map(again.cells.map((cell) => [cell.at, cell]));
      for (const cell of sheet.cells)
        if (says(cell)) expect([sheet.name, kept.get(cell.at)]).toEqual([sheet.name, asSaved(cell)]);
      expect(besideCells(again)).toEqual(besideCells(sheet));
    });
  });
});

/** A cell that says something; one that only has a look, or a text of no letters, may go. */
const says = (cell: SheetCell): boolean => "formula" in cell || (cell.value !== null && cell.value !== "");

/** The same cell as LibreOffice writes it: it puts parentheses after the words TRUE and FALSE. */
const asSaved = (cell: SheetCell): SheetCell =>
  "formula" in cell ? { ...cell, formula: cell.formula.replace(/\b(TRUE|FALSE)\b(?!\()/g, "$1()") } : cell;

/** What a sheet has beside its cells and its frozen headers, which LibreOffice keeps only with a window; tables may come in any order. */
const besideCells = ({ lists, flags, charts, tables = [], print, columns, tallRows }: Sheet): object => ({
  ...{ lists, flags, charts, print, columns: withoutUsual(columns), tallRows },
  tables: [...tables].sort((one, other) => (one.name < other.name ? -1 : 1)),
});

/** LibreOffice leaves out the last columns where they are as wide as it makes any, which depends on the fonts of the machine. */
function withoutUsual(columns: readonly number[]): readonly number[] {
  const last = Math.max(-1, ...columns.map((width, index) => (Math.abs(width - 8.5) > 1 ? index : -1)));
  return columns.slice(0, last + 1);
}
