import { renamed } from "../../../src/hosts/excel/renamed";
import { formula } from "../../../src/sheets/cells";
import type { Workbook } from "../../../src/sheets/workbook";

const sheet = (name: string, code: string) => ({
  name,
  columns: [],
  tallRows: [],
  frozen: { rows: 0, columns: 0 },
  cells: [formula("A1", code)],
  lists: [],
  flags: [],
});

const book = (code: string): Workbook => ({
  name: "Book",
  sheets: [sheet("Runs", code), { ...sheet("My fan", "=1"), tables: [{ name: "curve", range: "A1:B2" }] }],
  names: [{ name: "units", sheet: "Runs", at: "B1" }],
});

const entered = (code: string, there: { sheets: string[]; names: string[] }): unknown =>
  (renamed(book(code), there).sheets[0]!.cells[0] as { formula: string }).formula;

const taken = { sheets: ["runs", "My fan"], names: ["Units", "curve"] };

describe("renamed", () => {
  test("changes nothing where every name is free", () => {
    const before = book("=DUCT.AREA(Runs!A1,units)");
    expect(renamed(before, { sheets: ["Sheet1"], names: [] })).toEqual(before);
  });

  test("gives sheets, cells and tables free names", () => {
    const { sheets, names } = renamed(book("=1"), taken);
    expect(sheets.map(({ name }) => name)).toEqual(["Runs 2", "My fan 2"]);
    expect(names).toEqual([{ name: "units_2", sheet: "Runs 2", at: "B1" }]);
    expect(sheets[1]!.tables).toEqual([{ name: "curve_2", range: "A1:B2" }]);
  });

  test.each([
    ["=DUCT.AREA(B4,,units)", "=DUCT.AREA(B4,,units_2)"],
    ["=Runs!$B$1+'My fan'!A1:B2", "='Runs 2'!$B$1+'My fan 2'!A1:B2"],
    ['="units Runs!A1 is text"&units', '="units Runs!A1 is text"&units_2'],
    ["=units(1)+myunits+units2+Other!units", "=units(1)+myunits+units2+Other!units"],
    ["=SUM(curve)", "=SUM(curve_2)"],
  ])("%s becomes %s", (code, renamedCode) => {
    expect(entered(code, taken)).toBe(renamedCode);
  });

  test("a sheet's name stays within the 31 characters that Excel allows", () => {
    const long = "x".repeat(31);
    const workbook = { ...book("=1"), sheets: [sheet(long, "=1")], names: [] };
    expect(renamed(workbook, { sheets: [long], names: [] }).sheets[0]!.name).toBe(`${"x".repeat(29)} 2`);
  });
});
