import { excelHost } from "../../../src/hosts/excel/excelHost";
import { record, snapshot } from "../../support/excelRecorder/recorder";
import { watching } from "./watch";

describe("openExample", () => {
  test("puts the example into a blank workbook", async () => {
    const excel = record();
    expect(await excelHost().openExample("SI", watching().watch)).toMatchObject({ added: true });
    expect(excel.book.sheets.map(({ name }) => name)).toEqual(expect.arrayContaining(["Runs", "Budget"]));
  });

  test.each([
    ["a word", "mine"],
    ["a formula", "=1+1"],
  ])("mixes with no workbook that holds %s", async (_, content) => {
    const excel = record();
    excel.fill("Sheet1", "C9", [[content]]);
    const before = snapshot(excel);
    expect(await excelHost().openExample("IP", watching().watch)).toEqual({
      added: false,
      why: "The example would mix with what is in this workbook, so nothing was added. Open a blank workbook (File › New), and show the example there.",
    });
    expect(snapshot(excel)).toEqual(before);
  });
});
