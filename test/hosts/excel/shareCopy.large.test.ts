import { addNewSheets } from "../../../src/hosts/excel/addNewSheets";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { readBook } from "../../../src/hosts/file/readBook";
import type { Workbook } from "../../../src/sheets/workbook";
import { record, type Recorder, snapshot } from "../../support/excelRecorder/recorder";
import { Refusal } from "../../support/excelRecorder/refuse";
import { copyHere } from "../../support/copyHere";
import { setUpGrid } from "../local/gridOfOurs";
import { traps } from "./sample";
import { watching } from "./watch";

/** A user's sheet with two calls of ours, of which the second fills four cells, and texts that look like formulas. */
function usersBook(): Recorder {
  const excel = record();
  excel.behaviour.calculate = (formula) =>
    formula.includes("CAUTIONS")
      ? [
          ["Topic", "Caution"],
          ["fire", "Dust burns."],
        ]
      : 0.0872664625997165;
  excel.fill("Sheet1", "A1:B3", [
    ["Diameter", 4],
    ["Area", "=DUCT.AREA(B1)"],
    ["=DUCT.CAUTIONS()", null],
  ]);
  excel.fill(
    "Texts",
    `A1:A${traps.length}`,
    traps.map((trap) => [`'${trap}`]),
  );
  return excel;
}

beforeAll(setUpGrid);

describe("shareCopy", () => {
  test.each(["formulas", "values"] as const)("opens a new workbook with %s and none of our functions", async (kind) => {
    const excel = usersBook();
    const before = snapshot(excel);
    const outcome = await excelHost(copyHere).shareCopy(kind, watching().watch);
    expect(outcome).toMatchObject({ made: true, name: "Mine", untranslated: [] });
    expect(snapshot(excel)).toEqual(before);
    expect(excel.opened).toHaveLength(1);
    const copy = await readBook(Buffer.from(excel.opened[0]!, "base64"));
    const sheet = copy.workbook.sheets.find(({ name }) => name === "Sheet1")!;
    const area = sheet.cells.find(({ at }) => at === "B2")!;
    expect("formula" in area).toBe(kind === "formulas");
    expect(JSON.stringify(sheet.cells)).not.toMatch(/"=[^"]*DUCT/i);
    expect(copy.shown.get("Sheet1")!.get("B4")?.value).toBe("Dust burns.");
    const texts = copy.workbook.sheets.find(({ name }) => name === "Texts")!.cells;
    const told = texts.filter(
      (cell) => "value" in cell && /^values of [-\d]{10}: nothing here/.test(String(cell.value)),
    );
    expect(told).toHaveLength(kind === "values" ? 1 : 0);
    const others = texts.filter((cell) => !told.includes(cell));
    expect(others.map((cell) => ("value" in cell ? cell.value : null))).toEqual(traps);
  });

  test.each([1, 2, 3, 4])("makes nothing when it is cancelled at step %d", async (last) => {
    const excel = usersBook();
    const before = snapshot(excel);
    const told = watching(({ cancel }, step) => (step === last ? cancel() : undefined));
    expect(await excelHost(copyHere).shareCopy("values", told.watch)).toEqual({
      made: false,
      why: "Cancelled: no copy was made.",
    });
    expect(excel.opened).toEqual([]);
    expect(snapshot(excel)).toEqual(before);
  });

  test("hands the copy back as a file, which is what Excel was asked to open", async () => {
    const excel = usersBook();
    const outcome = await excelHost(copyHere).shareCopy("formulas", watching().watch);
    expect(outcome).toMatchObject({
      made: true,
      opening: { refused: null, file: { name: expect.stringMatching(/^air budget [\d-]{10} club copy\.xlsx$/) } },
    });
    const bytes = outcome.made ? outcome.opening!.file.bytes : [];
    expect(Buffer.from(bytes).toString("base64")).toBe(excel.opened[0]);
  });

  test("a copy that Excel does not open is not lost: it comes as a file, with Excel's reason", async () => {
    usersBook();
    Object.assign(Excel, {
      createWorkbook: () => Promise.reject(new Refusal("GeneralException", "There was an internal error.")),
    });
    const outcome = await excelHost(copyHere).shareCopy("values", watching().watch);
    expect(outcome).toMatchObject({
      made: true,
      opening: {
        refused: "Excel refused: There was an internal error.",
        file: { name: expect.stringMatching(/^air budget [\d-]{10} values\.xlsx$/) },
      },
    });
    const file = outcome.made ? outcome.opening!.file : null;
    const copy = await readBook(Buffer.from(file!.bytes));
    expect(copy.workbook.sheets.map(({ name }) => name)).toContain("Sheet1");
  });

  test("says what Excel says when it refuses", async () => {
    const excel = usersBook();
    excel.behaviour.beforeSync = () => {
      throw new Refusal("GeneralException", "There was an internal error.");
    };
    expect(await excelHost(copyHere).shareCopy("values", watching().watch)).toEqual({
      made: false,
      why: "Excel refused: There was an internal error. No copy was made.",
    });
  });
});

describe("revive", () => {
  test("adds nothing where the workbook is no club copy", async () => {
    const excel = usersBook();
    const before = snapshot(excel);
    expect(await excelHost().revive(watching().watch)).toEqual({
      added: false,
      why: "This is no club copy that says what its formulas were, so nothing was added.",
    });
    expect(snapshot(excel)).toEqual(before);
  });

  test("brings the formulas of a club copy back in new sheets, the copy's own left as they are", async () => {
    const excel = await openedCopy();
    const before = snapshot(excel) as { sheets: unknown[] };
    const outcome = await excelHost().revive(watching().watch);
    expect(outcome).toMatchObject({ added: true, sheets: expect.arrayContaining(["Sheet1 2"]) });
    const sheet = excel.book.sheets.find(({ name }) => name === "Sheet1 2")!;
    expect(sheet.cells.get("B2")!.formula).toBe("=DUCT.AREA(B1)");
    expect(sheet.cells.get("A3")!.formula).toBe("=DUCT.CAUTIONS()");
    expect((snapshot(excel) as typeof before).sheets.slice(0, before.sheets.length)).toEqual(before.sheets);
    expect(outcome).toMatchObject({ moved: "" });
  });

  /** Excel with a club copy of the user's book whose area shows 1, as do new formulas. */
  async function openedCopy(): Promise<Recorder> {
    const original = usersBook();
    await excelHost(copyHere).shareCopy("formulas", watching().watch);
    const excel = await opened((await readBook(Buffer.from(original.opened[0]!, "base64"))).workbook);
    excel.book.sheets.find(({ name }) => name === "Sheet1")!.cells.get("B2")!.value = 1;
    excel.behaviour.calculate = () => 1;
    return excel;
  }

  test("tells what comes out otherwise than in the copy, by the cells of the new sheets", async () => {
    const excel = await openedCopy();
    excel.behaviour.calculate = (formula) => (formula.includes("DUCT.AREA") ? 1.25 : 1);
    const outcome = await excelHost().revive(watching().watch);
    expect(outcome).toMatchObject({
      added: true,
      moved: expect.stringMatching(
        /^1 number differs from what the copy held, most of all 'Sheet1 2'!B2: 1\.25 here, 1 in the copy\. /,
      ),
    });
  });

  test("numbers that still wait for their function are looked at once it has answered", async () => {
    const excel = await openedCopy();
    excel.behaviour.calculate = (formula) => (formula.includes("DUCT.AREA(B1)") ? "#BUSY!" : 1);
    const answers = watching(({ steps }) => {
      if (!steps.at(-1)!.endsWith("Comparing with the copy's numbers")) return;
      setTimeout(() => {
        excel.behaviour.calculate = () => 1.25;
        excel.fill("Sheet1 2", "B2", [["=DUCT.AREA(B1)"]]);
      }, 700);
    });
    expect(await excelHost().revive(answers.watch)).toMatchObject({
      moved: expect.stringContaining("'Sheet1 2'!B2: 1.25 here, 1 in the copy"),
    });
  });

  test("what is cancelled while it is compared stays, and is told as not compared", async () => {
    const excel = await openedCopy();
    const before = excel.book.sheets.length;
    const told = watching(({ steps, cancel }) => {
      if (steps.at(-1)!.endsWith("Comparing with the copy's numbers")) cancel();
    });
    expect(await excelHost().revive(told.watch)).toMatchObject({
      added: true,
      moved:
        "The numbers of the new sheets were not compared with the copy's: look at both before you go by them, since another version may have computed the copy.",
    });
    expect(excel.book.sheets.length).toBeGreaterThan(before);
  });
});

/** An Excel that has opened a workbook beside its own blank sheet. */
async function opened(workbook: Workbook): Promise<Recorder> {
  const excel = record();
  excel.book.sheets[0]!.name = "Blank";
  expect(await addNewSheets(async () => workbook, watching().watch)).toMatchObject({ added: true });
  return excel;
}
