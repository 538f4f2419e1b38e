import { repair } from "../../../src/hosts/excel/repair";
import { answersOnes, knowsNone, record, type Recorder, snapshot } from "../../support/excelRecorder/recorder";
import { watching } from "./watch";

/** A workbook that was opened before Excel knew the functions: what it says of them stands at #NAME?. */
function opened(): Recorder {
  const excel = record();
  excel.behaviour.calculate = (formula, ...rest) => (formula.includes("lost") ? "#NAME?" : knowsNone(formula, ...rest));
  excel.fill("Sheet1", "A1:C3", [
    ["=DUCT.AREA(4)", "=_xldudf_DUCT_AREA(B9)*2", '=[2]!_xldudf_duct_area(4)&"_xldudf_DUCT_AREA("'],
    ["=SUM(1)", "#NAME?", "words"],
    ["=lost+1", "=DUCT.AREA(lost)", '="DUCT.AREA(4)"'],
  ]);
  Object.assign(excel.book.sheets[0]!.cells.get("A1")!, { format: "0.00", look: { "font.bold": true } });
  excel.behaviour.calculate = (formula, ...rest) =>
    formula.includes("lost") ? "#NAME?" : answersOnes(formula, ...rest);
  return excel;
}

const formulaAt = (excel: Recorder, at: string) => excel.book.sheets[0]!.cells.get(at)!.formula;

describe("repair", () => {
  test("re-enters formulas of ours at #NAME?, whichever way Excel shows them", async () => {
    const excel = opened();
    expect(await repair(watching().watch)).toEqual({
      repaired: 4,
      stillWrong: ["Sheet1!B3"],
      protectedSheets: [],
      textCells: [],
    });
    expect(formulaAt(excel, "A1")).toBe("=DUCT.AREA(4)");
    expect(formulaAt(excel, "B1")).toBe("=DUCT.AREA(B9)*2");
    expect(formulaAt(excel, "C1")).toBe('=DUCT.AREA(4)&"_xldudf_DUCT_AREA("');
    expect(excel.book.sheets[0]!.cells.get("A1")).toMatchObject({
      value: 1,
      format: "0.00",
      look: { "font.bold": true },
    });
  });

  test("touches no other cell", async () => {
    const excel = opened();
    const others = (all: unknown) =>
      (all as { sheets: { cells: [string, unknown][] }[] }).sheets[0]!.cells.filter(
        ([at]) => !/^([ABC]1|B3)$/.test(at),
      );
    const before = others(snapshot(excel));
    await repair(watching().watch);
    expect(others(snapshot(excel))).toEqual(before);
  });

  test("leaves alone what was typed between reading and writing, or has moved there", async () => {
    const excel = opened();
    excel.behaviour.beforeSync = (request) => {
      // 1 to 5 ask for the sheets, the protection, the area, the cells and whether any are filled by a formula
      if (request === 6) excel.fill("Sheet1", "B1", [["mine"]]);
    };
    expect(await repair(watching().watch)).toMatchObject({
      repaired: 1,
      stillWrong: ["Sheet1!A1", "Sheet1!C1", "Sheet1!B3"],
    });
    expect(excel.book.sheets[0]!.cells.get("B1")).toMatchObject({ value: "mine", formula: null });
    expect((await repair(watching().watch)).stillWrong).toEqual(["Sheet1!B3"]);
    expect(excel.book.sheets[0]!.cells.get("B1")!.value).toBe("mine");
  });

  test("gives each cell its own formula although a filter hides rows between them", async () => {
    const excel = record();
    excel.behaviour.calculate = knowsNone;
    const own = ["=DUCT.AREA(A1)", "=DUCT.AREA(A2)", "=DUCT.AREA(A3)"];
    excel.fill("Sheet1", "B1:B3", own.map((one) => [one])).filteredRows = new Set([2]); // prettier-ignore
    excel.behaviour.calculate = answersOnes;
    expect(await repair(watching().watch)).toEqual({ repaired: 3, stillWrong: [], protectedSheets: [], textCells: [] });
    expect(["B1", "B2", "B3"].map((at) => formulaAt(excel, at))).toEqual(own);
  });

  test.each(["anchor's", "values"] as const)(
    "enters a formula that fills several cells once, and none into the cells that it fills (%s)",
    async (kind) => {
      const excel = record();
      excel.behaviour.spilledFormulas = kind;
      excel.behaviour.calculate = () => [["#NAME?"], ["#NAME?"], ["#NAME?"]];
      excel.fill("Sheet1", "B1", [["=A1:A3*DUCT.AREA(4)"]]);
      excel.behaviour.calculate = () => [[1], [2], [3]];
      expect(await repair(watching().watch)).toEqual({
        repaired: 1,
        stillWrong: [],
        protectedSheets: [],
        textCells: [],
      });
      expect(["B1", "B2", "B3"].map((at) => formulaAt(excel, at))).toEqual(["=A1:A3*DUCT.AREA(4)", null, null]);
      expect(["B1", "B2", "B3"].map((at) => excel.book.sheets[0]!.cells.get(at)!.value)).toEqual([1, 2, 3]);
    },
  );

  test("one cell that Excel refuses, as a part of an old array formula, is named, and the others are mended", async () => {
    const excel = opened();
    excel.book.sheets[0]!.fixed.add("B1");
    expect(await repair(watching().watch)).toEqual({
      repaired: 4,
      stillWrong: ["Sheet1!B1", "Sheet1!B3"],
      protectedSheets: [],
      textCells: [],
    });
    expect(["A1", "C1"].map((at) => excel.book.sheets[0]!.cells.get(at)!.value)).toEqual([1, 1]);
  });

  test("names protected sheets and leaves them alone", async () => {
    const excel = opened();
    excel.book.sheets[0]!.isProtected = true;
    const before = snapshot(excel);
    expect(await repair(watching().watch)).toEqual({
      repaired: 0,
      stillWrong: ["Sheet1!A1", "Sheet1!B1", "Sheet1!C1", "Sheet1!B3"],
      protectedSheets: ["Sheet1"],
      textCells: [],
    });
    expect(snapshot(excel)).toEqual(before);
  });

  // A cell formatted as text takes a formula for its letters (from memory; step 30 of docs/first-in-excel.md asks), and a sum passes over
  // those where #NAME? had stopped it.
  test("leaves a formula alone whose cell was formatted as text since, and names it", async () => {
    const excel = opened();
    for (const at of ["A1", "B3"]) excel.book.sheets[0]!.cells.get(at)!.format = "@";
    expect(await repair(watching().watch)).toEqual({
      repaired: 2,
      stillWrong: [],
      protectedSheets: [],
      textCells: ["Sheet1!A1", "Sheet1!B3"],
    });
    expect(excel.book.sheets[0]!.cells.get("A1")).toMatchObject({ formula: "=DUCT.AREA(4)", value: "#NAME?" });
    expect(["B1", "C1"].map((at) => excel.book.sheets[0]!.cells.get(at)!.value)).toEqual([1, 1]);
  });

  test("a protected sheet with nothing to mend is not named", async () => {
    const excel = record();
    excel.fill("Sheet1", "A1", [[1]]).isProtected = true;
    expect(await repair(watching().watch)).toEqual({ repaired: 0, stillWrong: [], protectedSheets: [], textCells: [] });
  });

  test("says what stays wrong where the functions are still unknown", async () => {
    const excel = record();
    excel.behaviour.calculate = knowsNone;
    excel.fill("My sheet", "A1", [["=DUCT.AREA(4)"]]);
    expect(await repair(watching().watch)).toMatchObject({ repaired: 1, stillWrong: ["'My sheet'!A1"] });
  });

  test("re-enters formulas of ours that stay at #BUSY!, and waits for their answers", async () => {
    const excel = record();
    excel.behaviour.calculate = () => "#BUSY!";
    excel.fill("Sheet1", "A1:C1", [["=DUCT.AREA(4)", "=OTHER.AREA(4)", "=DUCT.AREA(5)"]]);
    let entered = 0;
    excel.behaviour.calculate = () => (++entered, "#BUSY!");
    excel.behaviour.beforeSync = () => {
      if (entered === 0) return;
      excel.behaviour.beforeSync = () => {
        for (const at of ["A1", "C1"])
          Object.assign(excel.book.sheets[0]!.cells.get(at)!, { value: 1, isError: false });
      };
    };
    expect(await repair(watching().watch)).toEqual({ repaired: 2, stillWrong: [], protectedSheets: [], textCells: [] });
    expect(entered).toBe(2);
    expect(excel.book.sheets[0]!.cells.get("B1")!.value).toBe("#BUSY!");
  });

  test("says what stays busy all the same, and waits no longer when it is cancelled", async () => {
    const excel = record();
    excel.behaviour.calculate = () => "#BUSY!";
    excel.fill("Sheet1", "A1", [["=DUCT.AREA(4)"]]);
    const told = watching(({ cancel }) => setTimeout(cancel, 100));
    expect(await repair(told.watch)).toEqual({
      repaired: 1,
      stillWrong: ["Sheet1!A1"],
      protectedSheets: [],
      textCells: [],
    });
  });

  test("reads a large sheet in requests that are not too large", async () => {
    const excel = record();
    excel.behaviour.calculate = knowsNone;
    const rows = Array.from({ length: 9000 }, (_, index) => [
      index,
      `words ${index}`,
      index === 8500 ? "=DUCT.AREA(4)" : 1,
    ]);
    excel.fill("Sheet1", "A1:C9000", rows);
    excel.behaviour.calculate = answersOnes;
    expect(await repair(watching().watch)).toMatchObject({ repaired: 1, stillWrong: [] });
    expect(formulaAt(excel, "C8501")).toBe("=DUCT.AREA(4)");
  });

  test("stops between two sheets when it is cancelled", async () => {
    const excel = opened();
    const told = watching(({ cancel }) => cancel());
    excel.behaviour.calculate = knowsNone;
    excel.fill("Second", "A1", [["=DUCT.AREA(4)"]]);
    excel.behaviour.calculate = answersOnes;
    expect((await repair(told.watch)).repaired).toBe(4);
    expect(excel.book.sheets[1]!.cells.get("A1")!.value).toBe("#NAME?");
  });
});
