/** Our file in LibreOffice with its settings as they come: what stays, what is printed, and what its re-saved file keeps. */
import { calculate } from "../../../scripts/calculate";
import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/book/frame";
import type { Calculated } from "../../../src/sheets/calculated";
import { singleCellsSheet } from "../../../src/sheets/demo/singleCellsSheet";
import type { SheetCell } from "../../../src/sheets/workbook";
import { hasLibreOffice, type Office, openOffice } from "../../support/libreOffice";

const CSV_OF_ALL_SHEETS = "Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

const describeIf = hasLibreOffice ? describe : describe.skip;

describeIf("the example in LibreOffice", () => {
  let office: Office;
  let book: Calculated;
  let bytes: Uint8Array;
  beforeAll(async () => {
    office = openOffice();
    const example = budgetBook({ units: "SI", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
    book = calculate({ ...example, sheets: [...example.sheets, singleCellsSheet] });
    bytes = await writeBook(book, { title: "Example of a budget" });
  }, 120000);
  afterAll(() => office.close());

  const csvOf = (sheet: string): string[] =>
    office.convert(bytes, CSV_OF_ALL_SHEETS, "csv", `book-${sheet}.csv`).toString("utf8").split("
");

  test("single cells keep the values of our functions", () => {
    const rows = csvOf("Single cells");
    const shown = book.shown.get("Single cells")!;
    // column C of the sheet; the texts of column B hold commas, so each line is read from its end
    expect(rows.filter((row) => row.startsWith("Cross-section")).join()).toMatch(/,0\.0873,ft²/);
    expect(shown.get("C5")!.value).toBeCloseTo(0.0873, 4);
    expect(rows.filter((row) => row.startsWith("Velocity of 350 cfm")).join()).toMatch(/,"4,011",fpm/);
  }, 60000);

  test("what one formula fills is not kept there, as docs/workbook-file.md says", () => {
    const budget = csvOf("Budget");
    expect(budget.join()).toContain("#NAME?");
  }, 60000);

  test("every sheet is printed with its title above and its number below", () => {
    const pages = office.pdfPages(office.convert(bytes, "calc_pdf_Export", "pdf"));
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
  }, 120000);

  test("the file that it saves again keeps every input, formula, name, list, flag, note, format and chart", async () => {
    const back = await readBook(office.convert(bytes, "Calc MS Excel 2007 XML", "xlsx"));
    expect(back.workbook.sheets.map(({ name }) => name)).toEqual(book.workbook.sheets.map(({ name }) => name));
    expect(new Set(back.workbook.names)).toEqual(new Set(book.workbook.names));
    const own = await readBook(bytes);
    own.workbook.sheets.forEach((sheet, index) => {
      const again = back.workbook.sheets[index]!;
      const kept = new Map(again.cells.map((cell) => [cell.at, cell]));
      for (const cell of sheet.cells)
        if (says(cell)) expect([sheet.name, kept.get(cell.at)]).toEqual([sheet.name, cell]);
      const { lists, flags, charts, tables, print, columns, tallRows } = again;
      expect({ lists, flags, charts, tables, print, columns, tallRows }).toEqual({
        ...{ lists: sheet.lists, flags: sheet.flags, charts: sheet.charts, tables: sheet.tables, print: sheet.print },
        ...{ columns: sheet.columns, tallRows: sheet.tallRows },
      });
    });
  }, 120000);
});

/** A cell that says something; one that only has a look, or a text of no letters, may go. */
const says = (cell: SheetCell): boolean => "formula" in cell || (cell.value !== null && cell.value !== "");
