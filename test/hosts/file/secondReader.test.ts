/** Our file as an independent reader sees it (exceljs, whose own code shares nothing with what wrote it). */
import ExcelJS from "exceljs";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { sampleBook } from "./sampleBook";

let book: ExcelJS.Workbook;
const runs = (): ExcelJS.Worksheet => book.getWorksheet("Runs")!;

beforeAll(async () => {
  book = new ExcelJS.Workbook();
  const bytes = await writeBook(sampleBook, { title: "Sample" });
  await book.xlsx.load(bytes as unknown as ExcelJS.Buffer);
});

describe("a second reader", () => {
  test("finds the sheets, the hidden one hidden", () => {
    expect(book.worksheets.map(({ name, state }) => [name, state])).toEqual([
      ["Runs", "visible"],
      ["Fan's curve", "visible"],
      ["Duct lists", "veryHidden"],
    ]);
  });

  test("finds every value of every cell", () => {
    for (const sheet of sampleBook.workbook.sheets)
      for (const cell of sheet.cells)
        if ("value" in cell && cell.value !== null)
          expect([cell.at, book.getWorksheet(sheet.name)!.getCell(cell.at).value]).toEqual([cell.at, cell.value]);
  });

  test("finds formulas with what they show", () => {
    const cell = (at: string) => runs().getCell(at);
    expect(cell("D4").formula).toBe("_xldudf_DUCT_AREA(4,,units)");
    expect(cell("D4").result).toBe(0.08726646259971647);
    expect(cell("D5").result).toBe("mend it");
    expect(cell("G4").result).toBe(true);
    expect(cell("F4").result).toEqual({ error: "#DIV/0!" });
    expect(book.getWorksheet("Fan's curve")!.getCell("A1").formula).toBe("_xldudf_DUCT_BUDGET(Runs!$A$3:$C$5,,units)");
    expect(book.getWorksheet("Fan's curve")!.getCell("A3").value).toBe(200);
  });

  test("finds names", () => {
    expect(book.definedNames.getRanges("units").ranges).toEqual(["Runs!$B$7"]);
    expect(book.definedNames.getRanges("curve").ranges).toEqual(["'Fan''s curve'!$A$1:$B$3"]);
  });

  test("finds lists, strict or not", () => {
    expect(runs().getCell("B7").dataValidation).toMatchObject({
      type: "list",
      formulae: ['"IP,SI"'],
      showErrorMessage: true,
    });
    const long = runs().getCell("A5").dataValidation;
    expect(long).toMatchObject({ type: "list", formulae: ["'Duct lists'!$A$1:$A$40"] });
    expect(long.showErrorMessage).toBeFalsy();
    expect(book.getWorksheet("Duct lists")!.getCell("A40").value).toBe("fitting number 40");
  });

  test("finds notes, formats, looks, widths and panes", () => {
    expect(JSON.stringify(runs().getCell("A1").note)).toContain("Two lines.");
    expect(runs().getCell("C4").numFmt).toBe("#,##0");
    expect(runs().getCell("A4").border).toMatchObject({ left: { style: "thin" }, bottom: { style: "thin" } });
    expect(runs().getCell("A3").font).toMatchObject({ bold: true, size: 10, color: { argb: "FF20343D" } });
    expect(runs().getCell("A3").fill).toMatchObject({ pattern: "solid", fgColor: { argb: "FFDFE6E4" } });
    expect(runs().getCell("A3").alignment).toMatchObject({ wrapText: true });
    expect(runs().getColumn(2).width).toBeCloseTo(18.5 + 5 / 7, 3);
    expect(runs().getRow(3).height).toBe(28);
    expect(runs().views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: 3 });
  });

  test("finds the table, the flag and the paper", () => {
    expect(runs().getTable("RunsTable").name).toBe("RunsTable");
    const [flag] = (runs() as unknown as { conditionalFormattings: { ref: string; rules: object[] }[] })
      .conditionalFormattings;
    expect(flag).toMatchObject({
      ref: "D4:D20",
      rules: [{ type: "containsText", operator: "containsText", formulae: ['NOT(ISERROR(SEARCH("mend",D4)))'] }],
    });
    expect(runs().pageSetup).toMatchObject({
      paperSize: 9,
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 2,
      fitToHeight: 0,
    });
    expect(runs().pageSetup.printTitlesRow).toBe("3:3");
  });
});
