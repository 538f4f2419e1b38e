import { excelHost } from "../../../src/hosts/excel/excelHost";
import { goTo, insert, selectionAddress } from "../../../src/hosts/excel/selection";
import { record, type Recorder } from "../../support/excelRecorder/recorder";
import { Refusal } from "../../support/excelRecorder/refuse";
import { traps } from "./sample";
import { watching } from "./watch";

function selecting(...areas: string[]): Recorder {
  const excel = record();
  excel.book.selection = { sheet: excel.book.sheets[0]!, areas };
  return excel;
}

const cell = (excel: Recorder, at: string) => excel.book.sheets[0]!.cells.get(at);

describe("selectionAddress", () => {
  test("is the address with its sheet, as a formula on any sheet writes it", async () => {
    selecting("B4:C9");
    expect(await selectionAddress()).toBe("Sheet1!B4:C9");
  });

  test("is the first area where several are selected", async () => {
    selecting("B4", "D1:D9");
    expect(await selectionAddress()).toBe("Sheet1!B4");
  });
});

describe("insert", () => {
  test("enters a formula into the first cell selected", async () => {
    const excel = selecting("B4:C9");
    expect(await insert({ formula: "=DUCT.AREA(4)" })).toEqual({ written: true, at: "B4", isBlocked: false });
    expect(cell(excel, "B4")).toMatchObject({ formula: "=DUCT.AREA(4)", value: 1 });
    expect(excel.book.sheets[0]!.cells.size).toBe(1);
  });

  test.each([...traps, "plain words"])("text stays text: %s", async (trap) => {
    const excel = selecting("B4");
    await insert({ value: trap });
    expect(cell(excel, "B4")).toMatchObject({ value: trap, formula: null });
  });

  test("a number is a number", async () => {
    const excel = selecting("B4");
    await insert({ value: 0.15 });
    expect(cell(excel, "B4")!.value).toBe(0.15);
  });

  test.each([[{ formula: "=DUCT.AREA(4)" }], [{ value: 0.15 }]])(
    "says so where a cell formatted as text keeps only the letters of %j",
    async (content) => {
      const excel = selecting("B4");
      excel.fill("Sheet1", "B4", [[""]]).cells.get("B4")!.format = "@";
      expect(await insert(content)).toEqual({ written: true, at: "B4", isBlocked: false, isText: true });
    },
  );

  test("leaves a filled cell alone until told otherwise", async () => {
    const excel = selecting("B4");
    excel.fill("Sheet1", "B4", [["mine"]]);
    expect(await insert({ value: 1 })).toEqual({ written: false, at: "Sheet1!B4", why: "filled" });
    expect(cell(excel, "B4")!.value).toBe("mine");
    expect(await insert({ value: 1 }, "Sheet1!B4")).toEqual({ written: true, at: "B4", isBlocked: false });
    expect(cell(excel, "B4")!.value).toBe(1);
  });

  const filled = { written: false, at: "Sheet1!B2", why: "filled" };

  test("leaves a formula that shows nothing alone", async () => {
    const excel = selecting("B2");
    excel.behaviour.calculate = () => "";
    excel.fill("Sheet1", "B2", [['=IF(1,"","")']]);
    expect(await insert({ value: 1 })).toEqual(filled);
  });

  test.each(["anchor's", "values"] as const)(
    "leaves a cell alone that a formula fills with nothing (%s)",
    async (kind) => {
      const excel = selecting("B2");
      excel.behaviour.spilledFormulas = kind;
      excel.behaviour.calculate = () => [
        ["head", "more"],
        ["", ""],
      ];
      excel.fill("Sheet1", "A1", [["=DUCT.ABOUT()"]]);
      expect(await insert({ value: 1 })).toEqual(filled);
    },
  );

  test("writes over the cell that the user was asked about, not over one that is selected since", async () => {
    const excel = selecting("B4");
    excel.fill("My sheet", "B4", [["asked about"]]);
    excel.fill("Sheet1", "B4", [["never asked about"]]);
    expect(await insert({ value: 1 }, "'My sheet'!B4")).toEqual({ written: true, at: "B4", isBlocked: false });
    expect(excel.book.sheets.map(({ cells }) => cells.get("B4")!.value)).toEqual(["never asked about", 1]);
    await expect(excelHost().insert({ value: 1 }, "Gone!B4")).rejects.toThrow(/^there is no sheet called Gone any more: look again\.$/); // prettier-ignore
  });

  test("in a cell formatted as text a text has no apostrophe, which would be a letter of it there", async () => {
    const excel = selecting("B4");
    excel.fill("Sheet1", "B4", [[""]]).cells.get("B4")!.format = "@";
    await insert({ value: "4-piece 1.5" });
    expect(cell(excel, "B4")!.value).toBe("4-piece 1.5");
  });

  test.each([
    ["=DUCT.AREA(B4)", true],
    ["=DUCT.AREA($b$4)", true],
    ["=DUCT.BUDGET('Sheet1'!A2:C9,density,units)", true],
    ["=DUCT.BUDGET(sheet1!C9:A2)", true],
    ["=DUCT.AREA(B5)", false],
    ["=DUCT.AREA(BB4)", false],
    ["=DUCT.AREA(Other!B4)", false],
    ["=DUCT.AREA('Sheet1 (2)'!B4)", false],
    ['=DUCT.LOSSCOEFFICIENT("B4 ""B4")', false],
    ["=DUCT.B4(1)", false],
  ])("%s beside what it reads: in B4 it would read itself, %p, and show 0", async (formula, isRefused) => {
    const excel = selecting("B4");
    for (const name of ["Other", "Sheet1 (2)"]) excel.fill(name, "A1", [[1]]);
    expect(await insert({ formula })).toEqual(
      isRefused ? { written: false, at: "B4", why: "itself" } : { written: true, at: "B4", isBlocked: false },
    );
    expect(cell(excel, "B4")?.formula ?? null).toBe(isRefused ? null : formula);
  });

  test("leaves the part of a formula's answer alone", async () => {
    const excel = selecting("A2");
    excel.behaviour.calculate = () => [["head"], [""]];
    excel.fill("Sheet1", "A1", [["=DUCT.ABOUT()"]]);
    expect(await insert({ value: 1 })).toEqual({ written: false, at: "Sheet1!A2", why: "filled" });
  });

  test("says so where the answer finds filled cells in its way, also when the function answers late", async () => {
    const excel = selecting("B4");
    let looks = 0;
    excel.behaviour.calculate = () => "#BUSY!";
    excel.behaviour.beforeSync = () => {
      const entered = cell(excel, "B4");
      if (entered?.formula != null && ++looks === 3) entered.value = "#SPILL!";
    };
    expect(await insert({ formula: "=DUCT.ABOUT()" })).toEqual({ written: true, at: "B4", isBlocked: true });
  });

  test("a cell that is being edited is said as such, by whatever action meets it", async () => {
    const excel = selecting("B4");
    excel.behaviour.beforeSync = () => {
      throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
    };
    const host = excelHost();
    for (const act of [
      () => host.insert({ value: 1 }),
      () => host.readBook(),
      () => host.repair(watching().watch),
      () => host.goTo("Sheet1", "A1"),
      () => host.selectionAddress(),
    ])
      await expect(act()).rejects.toThrow(/^A cell is being edited: press Enter or Esc, then try again\.$/);
  });

  test("a cell that is edited just when the value is written is not called a refusal of the sheet", async () => {
    const excel = selecting("B4");
    excel.behaviour.beforeSync = (request) => {
      if (request === 2) throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
    };
    await expect(excelHost().insert({ value: 1 })).rejects.toThrow(/^A cell is being edited/);
  });

  test("what is written counts as written although a cell is edited before it is looked at", async () => {
    const excel = selecting("B4");
    excel.behaviour.beforeSync = (request) => {
      if (request > 2) throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
    };
    expect(await insert({ value: 0.15 })).toEqual({ written: true, at: "B4", isBlocked: false });
    expect(cell(excel, "B4")!.value).toBe(0.15);
  });

  test("says so where Excel refuses", async () => {
    const excel = selecting("B4");
    excel.book.sheets[0]!.isProtected = true;
    expect(await insert({ value: 1 })).toEqual({ written: false, at: "B4", why: "refused" });
  });
});

test("goTo shows the sheet and selects the cell", async () => {
  const excel = record();
  excel.fill("Other sheet", "A1", [[1]]);
  await goTo("Other sheet", "C7");
  expect(excel.book.selection).toMatchObject({ sheet: { name: "Other sheet" }, areas: ["C7"] });
});

test.each([
  ["Gone", "Visible", "there is no sheet called Gone any more: look again."],
  ["Other sheet", "Hidden", "the sheet Other sheet is hidden: right-click a sheet's tab and choose Unhide."],
  ["Other sheet", "VeryHidden", "the sheet Other sheet is hidden: right-click a sheet's tab and choose Unhide."],
])("goTo of %s, %s, says why it cannot and selects nothing", async (name, visibility, says) => {
  const excel = record();
  excel.fill("Other sheet", "A1", [[1]]).visibility = visibility;
  await expect(excelHost().goTo(name, "C7")).rejects.toThrow(says);
  expect(excel.book.selection).toMatchObject({ sheet: { name: "Sheet1" }, areas: ["A1"] });
});
