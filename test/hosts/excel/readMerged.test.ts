import { readBook } from "../../../src/hosts/excel/readBook";
import { findingsIn } from "../../../src/taskpane/check/findingsIn";
import { seenIn } from "../../../src/taskpane/check/seenIn";
import { record, type Recorder } from "../../support/excelRecorder/recorder";

/** A gate that is merged over three rows: it stands at the first run alone. */
function merged(level: number): Recorder {
  const excel = record(level);
  const sheet = excel.fill("My, ducts", "A1:D4", [
    ["Run", "To", "Diameter (in)", "Gate"],
    ["saw", "fan", 4, "open"],
    ["planer", "fan", 4, ""],
    ["lathe", "fan", 4, ""],
  ]);
  excel.behaviour.calculate = () => 1;
  excel.fill("My, ducts", "F1", [["=DUCT.BUDGET(A1:D4)"]]);
  sheet.merged = ["D2:D4", "F1:G1"];
  return excel;
}

test("merged cells are read where Excel can tell of them, and Check says which cells are blank", async () => {
  merged(13);
  const book = await readBook();
  const shown = book.shown.get("My, ducts")!;
  expect([...shown].flatMap(([at, cell]) => (cell.merged === undefined ? [] : [[at, cell.merged]]))).toEqual([
    ["F1", { rows: 1, columns: 2 }],
    ["D2", { rows: 3, columns: 1 }],
  ]);
  const found = findingsIn(seenIn(book)).filter(({ rule }) => rule === "Merged cells");
  expect(found.map(({ what, at }) => [what, at])).toEqual([
    ["D2 to D4 are merged: only D2 holds what they show.", "D2"],
  ]);
});

test("an Excel that cannot tell of them is not asked", async () => {
  merged(12);
  const shown = (await readBook()).shown.get("My, ducts")!;
  expect([...shown.values()].every((cell) => cell.merged === undefined)).toBe(true);
  expect(shown.get("D2")?.value).toBe("open");
});
