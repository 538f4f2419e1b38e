/**
 * The pane's actions over the wire of the real office.js: what arrives in the workbook, and what the pane says of it. The
 * recorder refuses what Excel would refuse, and is of the oldest Excel that the add-in promises to work in.
 */
import type { FrameLocator } from "playwright-core";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { readBook } from "../../../src/hosts/file/readBook";
import { watching } from "../../hosts/excel/watch";
import { knowsNone, type Recorder, record, snapshot } from "../../support/excelRecorder/recorder";
import { Refusal } from "../../support/excelRecorder/refuse";
import { excelOnTheWeb, type OpenedExcel } from "../../support/excelOnTheWeb/excelOnTheWeb";
import { faultyBook } from "../../support/faultyBook";
import { gridOfBook } from "../../support/gridOfBook";
import { button, says, tab, view } from "../panePage";

const open = excelOnTheWeb();
let excel: Recorder;
let pane: FrameLocator;
let opened: OpenedExcel;

beforeEach(async () => {
  opened = await open();
  ({ excel, pane } = opened);
  await pane.getByText("Connected to Excel.").waitFor();
});

afterEach(() => {
  expect(opened.refused).toEqual([]);
  expect(opened.complaints).toEqual([]);
  expect(opened.outside).toEqual([]);
});

test("Build adds sheets with lists, a table and a chart: the workbook is as where the host is called without a wire", async () => {
  await tab(pane, "Build").click();
  await pane.getByRole("radio", { name: /example/ }).check();
  const chosen = pane.getByRole("checkbox", { checked: true });
  for (let left = await chosen.count(); left > 0; left--) await chosen.first().uncheck();
  for (const name of [/^Runs/, /^Fan/]) await pane.getByRole("checkbox", { name }).check();
  await button(pane, /^Add \d+ sheets$/).click();
  await says(pane, /^Added \d+ sheets/);
  const direct = record();
  await excelHost().addSheets({ units: "IP", sheets: ["runs", "fan"], contents: "example" }, watching().watch);
  expect(direct.book.sheets.flatMap(({ charts }) => charts)).toHaveLength(2); // the fan against the ducts, and one's own fan
  expect(snapshot(excel)).toEqual(snapshot(direct));
});

test("Insert writes into the selected cell, and asks before it writes over what is there", async () => {
  excel.book.selection = { sheet: excel.book.sheets[0]!, areas: ["C3"] };
  const shown = (): unknown => excel.book.sheets[0]!.cells.get("C3")?.value;
  await tab(pane, "Tables").click();
  await pane.getByRole("combobox", { name: "Table" }).selectOption("fittings");
  await pane.getByRole("searchbox", { name: "Search", exact: true }).fill("4-piece 1.5");
  await pane.locator("[data-row]:visible").first().click();
  await button(pane, "Insert K at 90 degrees 0.27").click(); // SMACNA Table A-7
  await says(pane, "Written into C3.");
  expect(shown()).toBe(0.27);
  excel.fill("Sheet1", "C3", [["mine"]]);
  await button(pane, "Insert K at 90 degrees 0.27").click();
  await button(pane, "Leave it").click();
  await says(pane, "Sheet1!C3 was left as it is.");
  expect(shown()).toBe("mine");
  excel.fill("Sheet1", "D9", [["mine, too"]]);
  await button(pane, "Insert K at 90 degrees 0.27").click();
  await button(pane, "Write over Sheet1!C3").waitFor();
  excel.book.selection = { sheet: excel.book.sheets[0]!, areas: ["D9"] }; // clicked before the question is answered
  await button(pane, "Write over Sheet1!C3").click();
  await says(pane, "Written into C3.");
  expect(shown()).toBe(0.27);
  expect(excel.book.sheets[0]!.cells.get("D9")!.value).toBe("mine, too");
  excel.book.selection = { sheet: excel.book.sheets[0]!, areas: ["C3"] };
  excel.behaviour.beforeSync = () => {
    throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
  };
  await button(pane, "Insert K at 90 degrees 0.27").click();
  await says(pane, "A cell is being edited: press Enter or Esc, then try again.");
  expect(opened.refused.splice(0)).toEqual(["InvalidOperationInCellEditMode: Excel is in cell-editing mode."]);
});

test("Build says why the selected cell cannot be shown, and shows it when it can be read", async () => {
  fillWithFaults();
  excel.book.selection = { sheet: excel.book.sheets.find(({ name }) => name === "Runs")!, areas: ["A1"] };
  await tab(pane, "Build").click();
  excel.behaviour.beforeSync = () => {
    throw new Refusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
  };
  await button(pane, "Show the selected cell").click();
  await says(pane, "It did not work: A cell is being edited: press Enter or Esc, then try again.");
  excel.behaviour.beforeSync = () => undefined;
  await button(pane, "Show the selected cell").click();
  await says(pane, /^Select a cell under Fittings or Hood/);
  expect(new Set(opened.refused.splice(0))).toEqual(new Set(["InvalidOperationInCellEditMode: Excel is in cell-editing mode."])); // prettier-ignore
});

function fillWithFaults(): void {
  for (const { name, cells } of faultyBook.workbook.sheets) {
    for (const cell of cells) {
      const shown = faultyBook.shown.get(name)!.get(cell.at)!.value;
      excel.behaviour.calculate = () => shown;
      excel.fill(name, cell.at, [["formula" in cell ? cell.formula : shown]]);
    }
  }
}

test("Start reads the workbook when it is asked to", async () => {
  fillWithFaults();
  await button(pane, "Show my system").click();
  await pane.getByText("south main has 4.5 in, but drum sander, which joins it, has 5 in.").waitFor();
  await button(pane, "Show it again").waitFor();
  expect(await pane.getByText("Changed since.").count()).toBe(0);
});

test("Check reads the workbook, and Go to selects the cell", async () => {
  fillWithFaults();
  await tab(pane, "Check").click();
  await view(pane, "Check").getByRole("button", { name: "Check the open book" }).click();
  const findings = pane.getByRole("list", { name: "Findings" });
  await findings.getByText("south main has 4.5 in, but drum sander, which joins it, has 5 in.").waitFor();
  await button(pane, "Go to Runs, E14").first().click();
  await says(pane, "Selected E14 on the sheet Runs.");
  expect(excel.book.selection).toMatchObject({ sheet: { name: "Runs" }, areas: ["E14"] });
});

test("Share makes a club copy, which Excel is asked to open, and Repair enters again what stands at #NAME?", async () => {
  excel.behaviour.calculate = () => 0.0872664625997165; // pi/4 (4 in)² in ft²
  excel.fill("Sheet1", "A1:B2", [
    ["Diameter", 4],
    ["Area", "=DUCT.AREA(B1)"],
  ]);
  await tab(pane, "Share").click();
  await button(pane, "Make a club copy").click();
  await says(pane, /Mine/);
  const copy = await readBook(Buffer.from(excel.opened[0]!, "base64"));
  const area = copy.workbook.sheets.find(({ name }) => name === "Sheet1")!.cells.find(({ at }) => at === "B2");
  expect(area).toMatchObject({ formula: expect.not.stringContaining("DUCT") });
  expect(gridOfBook(copy.workbook).value("Sheet1", "B2")).toBeCloseTo(0.0872664625997165, 12);

  excel.behaviour.calculate = knowsNone;
  excel.fill("Sheet1", "D1:D2", [["=DUCT.AREA(4)"], ["=DUCT.AREA(5)"]]);
  excel.behaviour.calculate = () => 7;
  await button(pane, "Repair #NAME?").click();
  await says(pane, /2 formulas/);
  const { cells } = excel.book.sheets[0]!;
  expect(["D1", "D2"].map((at) => cells.get(at)!.value)).toEqual([7, 7]);
});
