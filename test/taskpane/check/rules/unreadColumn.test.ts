import type { ShownCell } from "../../../../src/sheets/calculated";
import { foundIn, runsWith, soundRuns } from "../../../support/books";

type Rows = readonly (readonly ShownCell["value"][])[];
const RULE = "A column that is not read";

const told = (rows: Rows) => foundIn({ Runs: { rows } }).filter(({ rule }) => rule === RULE);

/** The sound runs (no Length among their columns) with one heading typed over, or with a column more. */
const headed = (column: number, heading: string) =>
  soundRuns.map((row, index) => (index === 0 ? row.map((cell, i) => (i === column ? heading : cell)) : row));
const beside = (heading: string, ...cells: ShownCell["value"][]) =>
  soundRuns.map((row, index) => [...row, index === 0 ? heading : (cells[index - 1] ?? "")]);
const withLength = runsWith("none", "Run", "").map((row, index) => [...row, index === 0 ? "Length (ft)" : 10]);

const saidOf = (heading: string, at: string) => [
  { rule: RULE, what: `No function reads the column "${heading}": it counts as one of your own.`, sheet: "Runs", at },
];

describe("a column of a table of runs that no function reads", () => {
  test.each<[string, Rows, string, string]>([
    ["like a heading that stands beside it", beside("Flexx", 8, 12, 20), "flexx", "J1"],
    ["a plural of one", beside("Hoods", 1, 1, 2), "hoods", "J1"],
    ["numbers where there is no Length", beside("Pieces", 8, 12, 20), "pieces", "J1"],
    ["feet where there is no Length", beside("Bought (ft)", 8, 12, 20), "bought (ft)", "J1"],
    ["airflows where there is no Airflow", headed(2, "Wanted (cfm)"), "wanted (cfm)", "C1"],
    ["gates under another word", headed(7, "State"), "state", "H1"],
    ["fittings under another word", headed(6, "Parts"), "parts", "G1"],
    ["hoods under another word", headed(5, "Machine"), "machine", "F1"],
    ["leaks under another word", headed(8, "Slide"), "slide", "I1"],
  ])("is told: %s", (_, rows, heading, at) => expect(told(rows)).toEqual(saidOf(heading, at)));

  test.each<[string, Rows]>([
    ["words of one's own", beside("Notes", "by the door", "", "up in the loft")],
    ["other amounts than lengths", beside("Cost ($)", 8, 12, 20)],
    ["inches of something where there is no Length", beside("Bends (deg)", 8, 12, 20)],
    ["words that are near a heading only by chance", beside("Date", "May", "June", "July")],
    ["a size in words", beside("Size", "four", "four", "six")],
    ["an empty one", beside("Flexx")],
    ["nothing more", soundRuns],
  ])("is none of a fault: %s", (_, rows) => expect(told(rows)).toEqual([]));

  test("is none where lengths and airflows have columns of their own", () => {
    const more = withLength.map((row, index) => [...row, index === 0 ? "Bought (ft)" : 12]);
    expect(told(more)).toEqual([]);
  });
});
