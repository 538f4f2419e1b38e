/** A column of Runs that is deleted: its cells count as blank in every run, which is told on each sheet whose numbers rest on it. */
import { shownColumns } from "../../../src/reference/columnsOfRuns";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { gridOfBook } from "../../support/gridOfBook";
import { withoutCells } from "../../support/withoutCells";

const whole = budgetBook(
  { units: "IP", contents: "example", sheets: ["runs", "fan", "budget", "flow", "summary"] },
  { sheets: [], names: [] },
);
const shows = gridOfBook(withoutCells(whole, /DUCT\.(SCENARIOS|GAINS|BUDGETUNCERTAINTY|UNCERTAINTY)/));
const said = (): string[] =>
  (
    [
      ["Budget", "C3"],
      ["Runs", "C3"],
      ["Flow", "C3"],
      ["Summary", "A20"],
    ] as const
  ).map(([sheet, at]) => String(shows.value(sheet, at)));

const letters = (name: (typeof shownColumns)[number]["name"]): string => runCell(name, RUNS_FIRST).replace(/\d+/, "");
/** Without Run there is no answer at all. */
const wrongRows = ["To", "Diameter", "Device loss", "Device airflow"] as const; // what is wrong then is told of the rows, or with To on Runs nothing, as its sentence goes along

test.each(shownColumns.map(({ name }) => name).filter((name) => !["Run", ...wrongRows].includes(name)))(
  "without its column %s Runs, Budget, Flow and Summary say so",
  (name) => {
    const usual = said();
    expect(usual.join()).not.toContain("deleted");
    shows.deleteColumn("Runs", letters(name));
    const words = `Look: columns deleted on Runs count as blank: ${name}; undo that`;
    expect(said()).toEqual([words, expect.stringContaining(words), words, words]);
    shows.undo();
    expect(said()).toEqual(usual);
  },
);

test.each(wrongRows)("without its column %s they say that there is no answer, or what the rows lack", (name) => {
  const usual = said();
  shows.deleteColumn("Runs", letters(name));
  for (const words of said())
    if (words !== "") expect(words).toMatch(/^Look: (select Budget B8 to read|Runs row 16, separator: Device)/);
  expect(shows.value("Summary", "B43")).toBe("see Budget C3");
  shows.undo();
  expect(said()).toEqual(usual);
});
