/** Values that people paste over a table that one formula fills: it looks as before, and no change reaches what was pasted. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { addressesIn, rectangleOf } from "../../../src/sheets/rectangle";
import type { SheetCell, Workbook } from "../../../src/sheets/workbook";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const book = budgetBook({ units: "IP", sheets: [...sheetKeys], contents: "example" }, { sheets: [], names: [] });
const live = gridOfBook(book);

/** The book with what it shows in these cells in place of what computes it, as a paste of values leaves it. */
function pasted(name: string, range: string): Workbook {
  const values = new Map(addressesIn(rectangleOf(range)).map((at) => [at, live.value(name, at) as string | number]));
  const frozen = [...values].flatMap(([at, value]): SheetCell[] => (value === "" ? [] : [{ at, value }]));
  return {
    ...book,
    sheets: book.sheets.map((sheet) =>
      sheet.name === name
        ? { ...sheet, cells: [...sheet.cells.filter(({ at }) => !values.has(at)), ...frozen] }
        : sheet,
    ),
  };
}

function change(grid: Shows): void {
  grid.type("Runs", runCell("Length", RUNS_FIRST), "60");
  grid.type("Flow", "A12", "shut planer");
}

const typedInto = (table: string): string =>
  `Look: something was typed or pasted into ${table}, which formulas fill: undo that`;
const [BUDGET, FLOW, SIZES] = ([["Budget", 8], ["Flow", 10], ["Sizes", 110]] as const).map(([sheet, row]) => typedInto(`${sheet}'s table (row ${row} on)`)) as [string, string, string]; // prettier-ignore
const see = (cell: string, count: number) => Array.from({ length: count }, () => `see ${cell}`);

test.each([
  ["all of it", "B8:O49"],
  ["its rows without the headings", "B9:O20"],
  ["the row of its fan", "B18:O18"],
])("values over Budget's table, %s, are told on every sheet that reads it, and no total stands there", (_, range) => {
  const grid = gridOfBook(pasted("Budget", range));
  for (const edit of [() => undefined, change]) {
    edit(grid);
    expect([grid.value("Budget", "C3"), grid.value("Flow", "C3")]).toEqual([BUDGET, BUDGET]);
    expect(grid.value("Runs", "C3")).toBe(`${BUDGET}. `);
    expect(["F4", "F5", "F6", "F7", "K4", "K5", "K6", "K7"].map((at) => grid.value("Budget", at))).toEqual(
      see("C3", 8),
    );
    expect(grid.column("Fan", "B28:B29")).toEqual(see("Budget C3", 2));
    expect(grid.column("Summary", "B42:B43")).toEqual(see("Budget C3", 2));
    expect(grid.column("Runs", "A9:A17")).toEqual(see("Budget C3", 9)); // nor a check beside a run
  }
});

test.each([
  ["SOLVE's answer", "B10:P51"],
  ["what sealing gives", "T10:T51"],
])("values over %s on Flow are told there and on Summary, and no total stands there", (_, range) => {
  const grid = gridOfBook(pasted("Flow", range));
  for (const edit of [() => undefined, change]) {
    edit(grid);
    expect([grid.value("Flow", "C3"), grid.value("Summary", "A20")]).toEqual([FLOW, FLOW]);
    expect(["C5", "C6", "C7", "C8", "G5", "G6", "G7", "G8"].map((at) => grid.value("Flow", at))).toEqual(see("C3", 8));
    expect(grid.column("Flow", "Q3:Q4")).toEqual(["", ""]);
    expect([...grid.column("Fan", "B26:B27"), ...grid.column("Summary", "B40:B41")]).toEqual(see("Flow C3", 4));
    expect(grid.column("Summary", "A8:A19").filter((hood) => hood !== "")).toEqual([]);
    // Leaks: neither its sentences nor its rows
    expect(grid.column("Leaks", "D9:D11")).toEqual(see("Flow C3", 3));
    expect(grid.value("Leaks", "D13")).toBe("");
    expect(grid.column("Leaks", "A70:A80").concat(grid.column("Leaks", "F70:F80")).filter((cell) => cell !== "")).toEqual([]); // prettier-ignore
    expect(grid.column("Leaks", "J43:J44")).toEqual(["as typed: Flow has no answer", "as typed: Flow has no answer"]);
    expect(grid.value("Claims", "F6")).toBe("see Flow C3");
  }
});

test("values over the rows of Flow's table alone leave no answer: no hood on Summary, no sentence on Flow or Claims counts them", () => {
  const grid = gridOfBook(pasted("Flow", "B11:P20"));
  change(grid);
  const none = "Look: Flow B10 is an error: trust no number here";
  expect([grid.value("Flow", "A3"), grid.value("Summary", "A3")]).toEqual([none, none]);
  expect(grid.column("Summary", "A8:A19").filter((hood) => hood !== "")).toEqual([]);
  expect(grid.column("Flow", "Q3:Q4")).toEqual(["", ""]);
  expect(grid.value("Claims", "F6")).toMatch(/^Your ducts ask for /);
  expect([grid.value("Leaks", "D9"), grid.value("Leaks", "D13"), grid.value("Leaks", "A70")]).toEqual(["see Flow B10", "", ""]); // prettier-ignore
});

test("values over the table of the ±, the single changes, the scenarios or the sets of machines are told where each is read", () => {
  const unsure = gridOfBook(pasted("Flow", "AM10:AZ51"));
  expect([unsure.value("Flow", "C3"), unsure.value("Flow", "V9"), unsure.value("Flow", "V11")]).toEqual([
    FLOW,
    "see C3",
    "",
  ]);
  expect(unsure.value("Summary", "D40")).toBe("see Flow C3");

  const gains = gridOfBook(pasted("Flow", "A88:I118"));
  expect(gains.value("Flow", "C87")).toBe(typedInto("Flow's table (row 88 on)"));
  expect(live.value("Summary", "B53")).not.toMatch(/^see/);
  expect(gains.value("Summary", "B53")).toBe("see Flow C87");

  const scenarios = gridOfBook(pasted("Flow", "B66:Z72"));
  const told = typedInto("the table of scenarios (row 66 on)");
  expect(scenarios.texts("Flow", "B76:D78")).toEqual([1, 2, 3].map(() => [told, "", ""]));
  expect(scenarios.texts("Summary", "A28:F28")).toEqual([[told, "", "", "", "", ""]]); // no "the fan moves 0 cfm"

  const sizes = gridOfBook(pasted("Sizes", "A110:I170"));
  expect(sizes.value("Sizes", "B7")).toBe(SIZES);

  const asked = gridOfBook(pasted("Budget", "AB8:AH9"));
  expect(live.value("Budget", "N5")).toMatch(/±/);
  expect(asked.value("Budget", "N5")).toBe(BUDGET);
});
