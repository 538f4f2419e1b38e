/** Sheets that somebody duplicates to try another pipe or fan there: what other sheets say is of the first one, which they read. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook } from "../../support/gridOfBook";

const shows = gridOfBook(
  budgetBook({ units: "IP", sheets: [...sheetKeys], contents: "example" }, { sheets: [], names: [] }),
);
const checks = (sheet: string): unknown[] => shows.column(sheet, "A9:A17"); // beside each run of the example
const TOTALS = ["F5", "F6", "F7"] as const; // of all runs, above the table
const totals = (sheet: string): unknown[] => TOTALS.map((at) => shows.value(sheet, at));

describe("a duplicate of Runs", () => {
  beforeEach(() => shows.duplicate("Runs", "Other pipes"));
  afterEach(() => shows.undo());

  test("says what Runs says while it holds the same", () => {
    expect(shows.value("Runs", "A2")).toBe("");
    expect(shows.value("Other pipes", "A2")).toBe("");
    expect(checks("Other pipes")).toEqual(checks("Runs"));
    expect(totals("Other pipes")).toEqual(totals("Runs"));
  });

  test.each<[string, string, string]>([
    ["another airflow", "D10", "777"],
    ["another gate, a word as long as the one before", "J10", "shut"],
    ["another fitting", "I10", "branch 30"],
    ["another heading", "G8", "Notes"],
    ["a run more", "B20", "lathe"],
  ])("with %s gives nothing of Runs' for its own", (_what, at, typed) => {
    const before = [checks("Runs"), totals("Runs"), shows.value("Runs", "C3")];
    shows.type("Other pipes", at, typed);
    expect(shows.value("Other pipes", "A2")).toBe("Look: a duplicate");
    expect(shows.value("Other pipes", "C3")).toBe(
      "Look: a duplicate: no sheet reads this table. What Budget and all others say is of the first one: type there.",
    );
    expect(checks("Other pipes")).toEqual(checks("Runs").map(() => "not read"));
    expect(totals("Other pipes")).toEqual(TOTALS.map(() => "see C3"));
    expect(shows.value("Runs", "A2")).toBe("");
    expect([checks("Runs"), totals("Runs"), shows.value("Runs", "C3")]).toEqual(before);
    shows.undo();
  });

  test("that stays as it was is told when Runs changes", () => {
    shows.type("Runs", "D10", "777");
    expect([shows.value("Runs", "A2"), shows.value("Other pipes", "A2")]).toEqual(["", "Look: a duplicate"]);
    shows.undo();
  });
});

describe("a duplicate of Fan", () => {
  beforeEach(() => shows.duplicate("Fan", "Other fan"));
  afterEach(() => shows.undo());
  const point = (sheet: string): unknown[] => ["A7", "B26", "B27", "A31"].map((at) => shows.value(sheet, at));

  test("says what Fan says while it holds the same", () => expect(point("Other fan")).toEqual(point("Fan")));

  test("with another curve says no point at which it works", () => {
    const before = point("Fan");
    shows.type("Other fan", "B10", "20");
    expect(point("Other fan")).toEqual(["Look: a duplicate: no sheet reads this curve.", "see A7", "see A7", ""]);
    expect(point("Fan")).toEqual(before);
    shows.undo();
  });
});

test("a row inserted, sorted or deleted in Runs, or inserted in the curve, makes no duplicate of the sheet", () => {
  for (const edit of [
    () => shows.insertRow("Runs", 9),
    () => shows.insertRow("Runs", 12),
    () => shows.deleteRow("Runs", 9),
    () => shows.insertColumn("Runs", "E"),
    () => shows.sort("Runs", "B9:V16", "B", "desc"),
    () => shows.cut("Runs", "C9:V9", "C20"),
    () => shows.insertRow("Fan", 12),
    () => shows.insertRow("Fan", 9),
  ]) {
    edit();
    expect([shows.value("Runs", "A2"), shows.value("Fan", "A7")]).not.toContainEqual(
      expect.stringContaining("duplicate"),
    );
    shows.undo();
  }
});
