import { excelHost } from "../../../src/hosts/excel/excelHost";
import { writeBlocks } from "../../../src/hosts/excel/writeBlocks";
import { record, type Recorder } from "../../support/excelRecorder/recorder";

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
      await excelHost().write(
        [
          { sheet: "Sheet1", ...block },
          { sheet: "Gone", ...block },
        ],
        [],
      ),
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

  const valuesAt = (excel: Recorder, ...addresses: string[]): unknown[] =>
    addresses.map((at) => excel.book.sheets[0]!.cells.get(at)?.value ?? "");

  test("writes nothing where one of the cells is formatted as text and would hold no number", async () => {
    const excel = record();
    excel.fill("Sheet1", "B2:B3", [[4], ["'5"]]).cells.get("B3")!.format = "@";
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B2", rows: [[7], [8]] }])).toEqual({
      written: false,
      why: "Sheet1!B3 is formatted as text, so nothing was written: give it the number format General.",
    });
    expect(valuesAt(excel, "B2", "B3")).toEqual([4, "5"]);
  });

  test("a text goes into a cell formatted as text without an apostrophe, which would be a letter of it there", async () => {
    const excel = record();
    excel.fill("Sheet1", "B2", [[""]]).cells.get("B2")!.format = "@";
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B2", rows: [["2026-01-02 03:04"]] }])).toEqual({ written: true });
    expect(valuesAt(excel, "B2")).toEqual(["2026-01-02 03:04"]);
  });

  test("where Excel refuses one of the cells, what it has written already is put back", async () => {
    const excel = record();
    excel.behaviour.calculate = () => 9;
    const sheet = excel.fill("Sheet1", "B2:D3", [
      [4, "=2+7", "'5/6"],
      [5, "'=mine", true],
    ]);
    const before = structuredClone([...sheet.cells]);
    sheet.fixed.add("B4");
    expect(
      await writeBlocks([
        {
          sheet: "Sheet1",
          at: "B2",
          rows: [
            [7, 7, 7],
            [8, 8, 8],
            [9, 9, 9],
          ],
        },
      ]),
    ).toEqual({
      // prettier-ignore
      written: false,
      why: "Excel refused: You can't change part of an array. What was there stands there again.",
    });
    expect([...sheet.cells].filter(([at]) => !at.endsWith("4"))).toEqual(before);
    expect(valuesAt(excel, "B4", "C4", "D4")).toEqual(["", "", ""]);
  });

  test("where a cell does not take what is written, nothing of the rest stays, and that cell is named", async () => {
    const excel = record();
    excel.fill("Sheet1", "B2:B3", [[4], [5]]);
    excel.behaviour.beforeSync = (request) => {
      if (request === 3) excel.book.sheets[0]!.deaf.add("B3");
    };
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B2", rows: [[7], [8]] }])).toEqual({
      written: false,
      why: "Sheet1!B3 did not take what was written: take a filter off the sheet, part merged cells, and try again. What was there stands there again.",
    });
    expect(valuesAt(excel, "B2", "B3")).toEqual([4, 5]);
  });

  test("writes nothing where a cell holds something else than when the book was read, or rows were moved under it", async () => {
    const excel = record();
    const blocks = [{ sheet: "Sheet1", at: "B3", rows: [[7]] }];
    const still = [
      { sheet: "Sheet1", at: "B3", rows: [[4]] },
      { sheet: "Sheet1", at: "A3", rows: [["saw"]] },
      { sheet: "Sheet1", at: "C3", rows: [[null]] },
    ];
    const why = (at: string) => ({ written: false, why: `Sheet1!${at} has been changed meanwhile, so nothing was written: try again.` }); // prettier-ignore
    excel.fill("Sheet1", "A3:B3", [["saw", 4.5]]);
    expect(await writeBlocks(blocks, still)).toEqual(why("B3"));
    excel.fill("Sheet1", "A3:B3", [["planer", 4]]); // whose row slipped down when one was inserted
    expect(await writeBlocks(blocks, still)).toEqual(why("A3"));
    expect(valuesAt(excel, "B3")).toEqual([4]);
    excel.fill("Sheet1", "A3:C3", [["saw", 4, "new"]]);
    expect(await writeBlocks(blocks, still)).toEqual(why("C3"));
    excel.fill("Sheet1", "C3", [[""]]);
    expect(await writeBlocks(blocks, still)).toEqual({ written: true });
    expect(valuesAt(excel, "B3")).toEqual([7]);
  });

  test("writes into no cell that a formula fills, which would have no room for its answer then", async () => {
    const excel = record();
    excel.behaviour.calculate = () => [[4], [5], [6]];
    excel.fill("Sheet1", "B2", [["=F2:F4"]]);
    expect(await writeBlocks([{ sheet: "Sheet1", at: "B3", rows: [[7]] }])).toEqual({
      written: false,
      why: "A formula fills Sheet1!B3 or a cell beside it, so nothing was written: change that formula yourself.",
    });
    expect(valuesAt(excel, "B2", "B3", "B4")).toEqual([4, 5, 6]);
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
