import { record, type Recorder } from "../../support/excelRecorder/recorder";

/** What the recorder says of a batch that does not do as Excel asks. */
async function refused(batch: (sheet: Excel.Worksheet, context: Excel.RequestContext) => unknown): Promise<string> {
  const said: unknown = await Excel.run(async (context) => {
    await batch(context.workbook.worksheets.getItem("Sheet1"), context);
    await context.sync();
  }).then(
    () => "nothing",
    (fault: Error) => fault.message,
  );
  return String(said);
}

describe("the recorder refuses", () => {
  let excel: Recorder;
  beforeEach(() => {
    excel = record();
  });

  test.each<[string, (sheet: Excel.Worksheet, context: Excel.RequestContext) => unknown, string]>([
    ["reading before loading", (sheet) => sheet.name, "Worksheet.name is read before load and sync"],
    [
      "reading before synchronising",
      (sheet) => {
        sheet.load("name");
        return sheet.name;
      },
      "Worksheet.name is read before load and sync",
    ],
    [
      "values that do not fit the range",
      (sheet) => (sheet.getRange("A1:B2").values = [[1, 2]]),
      "the number of rows or columns differs from that of the range (2 by 2)",
    ],
    [
      "rows of unequal length",
      (sheet) => (sheet.getRange("A1:B2").values = [[1, 2], [3]]),
      "the number of rows or columns differs from that of the range (2 by 2)",
    ],
    ["members that the typings do not have", (sheet) => (sheet as any).paint, "Worksheet has no member paint"],
    ["members of a later Excel", (sheet) => sheet.notes, "Worksheet.notes needs ExcelApi 1.18"],
    [
      "members of the desktop alone",
      (sheet) => (sheet as any).evaluate,
      "Worksheet.evaluate needs more than a numbered set",
    ],
    [
      "words that a property does not take",
      (sheet) => (sheet.visibility = "Gone" as any),
      'Worksheet.visibility cannot be "Gone"',
    ],
    ["setting what can only be read", (sheet) => ((sheet as any).id = "1"), "Worksheet.id cannot be set"],
    [
      "a sheet's name that is taken",
      (_, context) => context.workbook.worksheets.add("sheet1"),
      "there is a sheet sheet1 already",
    ],
    [
      "a sheet's name of 32 characters",
      (_, { workbook }) => workbook.worksheets.add("x".repeat(32)),
      `no name for a sheet: ${"x".repeat(32)}`,
    ],
    ["a sheet's name with a colon", (_, { workbook }) => workbook.worksheets.add("a:b"), "no name for a sheet: a:b"],
    [
      "a sheet that is not there",
      (_, { workbook }) => workbook.worksheets.getItem("no").activate(),
      "Worksheet does not exist",
    ],
    ["deleting the last sheet", (sheet) => sheet.delete(), "the last sheet"],
    [
      "a list of more than 255 characters",
      (sheet) =>
        (sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: "x".repeat(256) } }),
      "a list holds up to 255 characters",
    ],
    [
      "a member of plain data that the typings do not have",
      (sheet) => (sheet.getRange("A1").dataValidation.rule = { lists: {} } as any),
      "DataValidationRule has no member lists",
    ],
    [
      "a message that is too long",
      (sheet) =>
        (sheet.getRange("A1").dataValidation.prompt = { showPrompt: true, title: "", message: "x".repeat(256) }),
      "the prompt is too long",
    ],
    [
      "a formula that speaks of no sheet",
      (sheet) => (sheet.getRange("A1").formulas = [["=Gone!A1"]]),
      "no sheet Gone for =Gone!A1",
    ],
    ["a formula that does not close", (sheet) => (sheet.getRange("A1").formulas = [["=SUM(1"]]), "no formula: =SUM(1"],
    [
      "a name like a cell's",
      (sheet, { workbook }) => workbook.names.add("A1", sheet.getRange("A1")),
      "no name for a cell: A1",
    ],
    [
      "a table whose headers are no texts",
      (sheet) => sheet.tables.add(sheet.getRange("A1:B2"), true),
      "a table's headers are texts, all different",
    ],
    [
      "an inner line of one row",
      (sheet) => (sheet.getRange("A1").format.borders.getItem("InsideHorizontal").style = "Dot"),
      "no line lies inside one row",
    ],
    [
      "a request that is too large",
      (sheet) => (sheet.getRange("A1").values = [["x".repeat(5_000_001)]]),
      "the request or its answer is too large",
    ],
  ])("%s", async (_, batch, said) => {
    expect(await refused(batch)).toBe(said);
  });

  test("using a sheet after it was deleted", async () => {
    excel.fill("Second", "A1", [[1]]);
    const said = await refused(async (sheet, context) => {
      sheet.delete();
      await context.sync();
      sheet.getRange("A1").values = [[1]];
    });
    expect(said).toBe("Worksheet was deleted");
  });

  test("deleting a very hidden sheet", async () => {
    excel.fill("Second", "A1", [[1]]).visibility = "VeryHidden";
    const said = await refused((_, { workbook }) => workbook.worksheets.getItem("Second").delete());
    expect(said).toBe("a very hidden sheet cannot be deleted");
  });

  test("changing a protected sheet", async () => {
    excel.book.sheets[0]!.isProtected = true;
    expect(await refused((sheet) => (sheet.getRange("A1").values = [[1]]))).toBe("the sheet Sheet1 is protected");
  });
});

describe("the recorder reads what is written as Excel does", () => {
  test.each([
    ["=1+1", { formula: "=1+1" }],
    ["+1", { formula: "=+1" }],
    ["12", { value: 12, formula: null }],
    ["true", { value: true }],
    ["'=1+1", { value: "=1+1", formula: null }],
    ["'12", { value: "12" }],
    ["plain words", { value: "plain words" }],
  ])("%s", async (written, cell) => {
    const excel = record();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[written]];
      await context.sync();
    });
    expect(excel.book.sheets[0]!.cells.get("A1")).toMatchObject(cell);
  });

  test("null leaves a cell as it is, and a formula in the way gives #SPILL!", async () => {
    const excel = record();
    excel.fill("Sheet1", "A1:A2", [["one"], ["two"]]);
    excel.behaviour.calculate = () => [[1], [2]];
    excel.fill("Sheet1", "A1:A2", [["=DUCT.ABOUT()"], [null]]);
    expect(excel.book.sheets[0]!.cells.get("A1")).toMatchObject({ value: "#SPILL!", isError: true });
    expect(excel.book.sheets[0]!.cells.get("A2")!.value).toBe("two");
  });
});
