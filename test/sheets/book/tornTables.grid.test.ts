/** Rows and columns that people insert in a table that one formula fills, delete or move there: it fills the same cells as before, while all that reads it has moved. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook } from "../../support/gridOfBook";

const shows = gridOfBook(
  budgetBook({ units: "IP", sheets: [...sheetKeys], contents: "example" }, { sheets: [], names: [] }),
);
type Places = Readonly<Record<string, readonly string[]>>;
const cells = (places: Places): string[] =>
  Object.entries(places).flatMap(([sheet, list]) => list.map((at) => String(shows.value(sheet, at))));
const TOTALS: Readonly<Record<"Budget" | "Flow" | "Sizes", Places>> = {
  Budget: { Budget: ["F4", "F5", "F6", "K4", "K6"], Runs: ["F5", "F6"], Fan: ["B28", "B29"], Summary: ["B42", "B43"] },
  Flow: { Flow: ["C5", "C6", "C7", "G5", "G7"], Fan: ["B26", "B27"], Leaks: ["D9", "D10"], Summary: ["B40", "B47"] },
  Sizes: {},
};
const sentence = (sheet: string, row: number): string =>
  `Look: a row or column was added, deleted or moved in ${sheet}'s table (row ${row} on): undo that`;
const nextColumn = (at: string): string => String.fromCharCode(at.charCodeAt(0) + 1) + at.slice(1);
/** Where it is said: on the sheet itself, and on the page for the club. */
const SAID = { Budget: ["C3", "Runs", "C3"], Flow: ["C3", "Summary", "A20"], Sizes: ["B7", "Summary", "A37"] } as const;
const FROM = { Budget: 8, Flow: 10, Sizes: 110 } as const;

test.each<[keyof typeof FROM, string, () => void]>([
  ["Budget", "a row at its first run", () => shows.insertRow("Budget", 9)],
  ["Budget", "a row further down", () => shows.insertRow("Budget", 12)],
  ["Budget", "a column", () => shows.insertColumn("Budget", "E")],
  ["Budget", "a row less", () => shows.deleteRow("Budget", 10)],
  ["Flow", "a row at its first run", () => shows.insertRow("Flow", 11)],
  ["Flow", "a row further down", () => shows.insertRow("Flow", 13)],
  ["Flow", "a column", () => shows.insertColumn("Flow", "E")],
  ["Flow", "a row less", () => shows.deleteRow("Flow", 12)],
  ["Sizes", "a row", () => shows.insertRow("Sizes", 111)],
  ["Budget", "a cell inserted at its first run's name", () => shows.insertCells("Budget", "B9")],
  ["Budget", "a cell inserted at a heading", () => shows.insertCells("Budget", "E8")],
  ["Budget", "a cell less", () => shows.deleteCells("Budget", "C11")],
  ["Flow", "a cell inserted at its first run's name", () => shows.insertCells("Flow", "B11")],
  ["Flow", "a cell less", () => shows.deleteCells("Flow", "E12")],
])("%s with %s says so, and no total passes for one", (sheet, _what, edit) => {
  const totals = TOTALS[sheet];
  const [own, other, there] = SAID[sheet];
  const all = { [sheet]: [own], [other]: [there] };
  const before = [...cells(totals), ...cells(all)];
  expect(before.filter((said) => said.startsWith("see "))).toEqual([]);
  edit();
  for (const [name, list] of Object.entries(totals))
    for (const at of list) {
      const said = [at, nextColumn(at)].map((place) => String(shows.value(name, place))); // a column inserted has moved some
      expect(said).toContainEqual(expect.stringMatching(/^see [\w ]*C3$/));
    }
  expect(cells(all)).toEqual([sentence(sheet, FROM[sheet]), expect.stringContaining(sentence(sheet, FROM[sheet]))]);
  if (sheet === "Flow") expect(shows.column("Summary", "A8:A19").filter((hood) => hood !== "")).toEqual([]);
  shows.undo();
  expect([...cells(totals), ...cells(all)]).toEqual(before);
});

test("Sizes with a cell inserted in the sets of gates says so in place of the sets that work", () => {
  const before = shows.value("Sizes", "B7");
  expect(before).not.toMatch(/^Look/);
  shows.insertCells("Sizes", "B112");
  expect(shows.value("Sizes", "B7")).toBe(sentence("Sizes", 110));
  shows.undo();
  expect(shows.value("Sizes", "B7")).toBe(before);
});

/** A column that is dragged by its head takes all that reads it along, and leaves the table's corners where they are. */
test.each<[keyof typeof FROM, string, string]>([
  ["Flow", "C", "E"],
  ["Flow", "F", "D"],
  ["Budget", "C", "F"],
  ["Budget", "K", "E"],
])(
  "%s with its column %s moved before %s is told on every sheet that reads it, and gives no total",
  (sheet, column, to) => {
    const { [sheet]: own, ...others } = TOTALS[sheet];
    const [, other, there] = SAID[sheet];
    expect(own).toBeDefined();
    const before = cells({ ...TOTALS[sheet], [other]: [there] });
    expect(before.filter((said) => said.startsWith("see "))).toEqual([]);
    shows.moveColumn(sheet, column, to);
    const totals = cells(others);
    expect(totals).toEqual(totals.map((): unknown => expect.stringMatching(/^see [\w ]*C3$/)));
    expect(cells({ [other]: [there] })).toEqual([expect.stringContaining(sentence(sheet, FROM[sheet]))]);
    shows.undo();
    expect(cells({ ...TOTALS[sheet], [other]: [there] })).toEqual(before);
  },
);
describe("the table of the ± on Flow", () => {
  const words = { Flow: ["V11", "V14", "V18"], Summary: ["D40"] };
  test.each<[string, () => void]>([
    ["a column inserted", () => shows.insertColumn("Flow", "AP")],
    ["its words dragged before its airflow", () => shows.moveColumn("Flow", "AX", "AO")],
    ["its airflow dragged to its end", () => shows.moveColumn("Flow", "AN", "AU")],
  ])("with %s says so, and gives no ±", (_what, edit) => {
    const before = cells({ ...words, ...{ Flow: [...words.Flow, "C3"] } });
    expect(before.filter((said) => said.includes("±"))).toHaveLength(4 + 1); // Flow's own sentence names the ±, too
    edit();
    expect(cells(words)).toEqual(["", "", "", "see Flow $C$3"].map((said) => said.replaceAll("$", "")));
    expect(cells({ Flow: ["C3", "V9"] })).toEqual([sentence("Flow", 10), "see C3"]);
    shows.undo();
    expect(cells({ ...words, ...{ Flow: [...words.Flow, "C3"] } })).toEqual(before);
  });
});

describe("the scenarios on Flow", () => {
  const MOVED = "Look: a row was added, deleted or moved in the table of scenarios (row 66 on): undo that";
  const list = (first: number) => shows.texts("Flow", `B${first}:D${first + 5}`);
  test.each<[string, number, () => void, number[]]>([
    ["a row inserted", 77, () => shows.insertRow("Flow", 68), [1, 2, 3, 4, 5]],
    ["a row deleted", 75, () => shows.deleteRow("Flow", 68), [1, 2, 3, 4, 5]],
  ])("with %s in their answer say so in place of the rows that moved", (_what, first, edit, moved) => {
    const before = list(76);
    expect(before.map(([name]) => name)).toEqual(["all four open", "planer alone", "saw and router table", "", "", ""]);
    edit();
    const after = list(first);
    for (const row of moved) expect(after[row]).toEqual([MOVED, "", ""]);
    // with a row less the line below the table stands in the answer's way, and it has none
    expect(after[0]).toEqual(first < 76 ? ["see Flow B66", "", ""] : before[0]);
    shows.undo();
    expect(list(76)).toEqual(before);
  });

  // Its marks stay where they were, below no heading, which SCENARIOS refuses, and the heading stands over no marks.
  test("a heading that is cut opens its machine nowhere, and on Sizes its marks are no run's name", () => {
    const sets = () => shows.column("Sizes", "B18:B20");
    expect(sets()).toEqual(["band saw, planer, drum sander, router table", "planer", "band saw, router table"]);
    shows.cut("Flow", "D57", "G57");
    expect(sets()).toEqual(["band saw, ?, drum sander, router table", "?", "band saw, router table"]);
    shows.undo();
    shows.cut("Flow", "D57", "C57"); // over another: the band saw's marks are the planer's
    expect(sets()).toEqual(["planer, ?, drum sander, router table", "?", "planer, router table"]);
    shows.undo();
  });
});
