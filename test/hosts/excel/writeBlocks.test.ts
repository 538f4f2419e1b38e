import { excelHost } from "../../../src/hosts/excel/excelHost";
import { writeBlocks } from "../../../src/hosts/excel/writeBlocks";
import { record } from "../../support/excelRecorder/recorder";

describe("writeBlocks", () => {
  test("writes texts as texts, numbers as numbers, and empties where null stands", async () => {
    const excel = record();
    excel.fill("Sheet1", "B2:C2", [["old", "older"]]);
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B2", rows: [[null, "=1+1"], [4.5, "planer"]] }])).toEqual({ written: true }); // prettier-ignore
    const value = (at: string): unknown => excel.book.sheets[0]!.cells.get(at)?.value ?? "";
    expect(["B2", "C2", "B3", "C3"].map(value)).toEqual(["", "=1+1", 4.5, "planer"]);
  });

  test("writes nothing where a sheet is gone", async () => {
    const excel = record();
    const block = { at: "A1", rows: [[1]] };
    expect(
      await excelHost().write([
        { sheet: "Sheet1", ...block },
        { sheet: "Gone", ...block },
      ]),
    ).toEqual({
      written: false,
      why: "There is no sheet called Gone any more.",
    });
    expect(excel.book.sheets[0]!.cells.get("A1")).toBeUndefined();
  });

  test("writes nothing on a protected sheet, and says so", async () => {
    const excel = record();
    excel.book.sheets[0]!.isProtected = true;
    expect(await writeBlocks([{ sheet: "Sheet1", at: "A1", rows: [[1]] }])).toEqual({
      written: false,
      why: "The sheet Sheet1 is protected: take the protection off first.",
    });
  });

  test("writes each row of a block where it belongs although a filter hides some", async () => {
    const excel = record();
    const sheet = excel.fill("Sheet1", "A1:B4", [["Run", "Diameter"], ["saw", 4], ["planer", 5], ["main", 6]]); // prettier-ignore
    sheet.filteredRows = new Set([3]);
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B2", rows: [[7], [8], [9]] }])).toEqual({ written: true });
    expect(["B2", "B3", "B4"].map((at) => sheet.cells.get(at)!.value)).toEqual([7, 8, 9]);
  });

  test("says where a cell holds no number, since it is formatted as text", async () => {
    const excel = record();
    excel.fill("Sheet1", "B3", [["5"]]).cells.get("B3")!.format = "@";
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B2", rows: [[7], [8]] }])).toEqual({
      written: false,
      why: "Sheet1!B3 does not hold what was written into it: undo that, give the cell the number format General, take a filter off the sheet, and try again.",
    });
  });

  test("a number that comes back with fewer digits counts as written", async () => {
    const excel = record();
    excel.behaviour.beforeSync = () => {
      const cell = excel.book.sheets[0]!.cells.get("A1");
      if (cell !== undefined) cell.value = 0.333333333333333;
    };
    expect(await writeBlocks([{ sheet: "Sheet1", at: "A1", rows: [[1 / 3]] }])).toEqual({ written: true });
  });
});
