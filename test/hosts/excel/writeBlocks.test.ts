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
});
