import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { SETS } from "../../../src/sheets/book/flow/flowLayout";
import {
  FASTEST_ROW,
  KEEP_ROW,
  LISTS_COLUMNS,
  LISTS_FIRST,
  MARGIN_ROW,
  MOST_ROW,
  PIPES_ANSWER,
  SEARCHED_AT,
  STATE_CELL,
  TOGETHER_ANSWER,
  TOGETHER_CELL,
  WATCHED,
  WATCHED_FIRST,
  WATCHED_LAST,
} from "../../../src/sheets/book/sizes/sizesLayout";
import { ALTITUDE_CELL } from "../../../src/sheets/book/start/startLayout";
import { SETS_HEADER, WATCH } from "../../../src/sheets/book/summary/summaryLayout";
import { answerLetters } from "../../../src/sheets/book/parts/answerReferences";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook, type Shows } from "../../support/gridOfBook";
import { withoutCells } from "../../support/withoutCells";

const plain = (at: string): string => at.replaceAll("$", "");
/** With the sheets that are asked here and those that they read, without what only takes time: what is uncertain, and single changes. */
const open = (): Shows => {
  const whole = budgetBook(
    { units: "IP", sheets: ["sizes", "summary"], contents: "example" },
    { sheets: [], names: [] },
  );
  return gridOfBook(withoutCells(whole, /DUCT\.(BUDGETUNCERTAINTY|UNCERTAINTY|GAINS)/));
};
const inShort = (grid: Shows): string => String(grid.value("Sizes", plain(TOGETHER_CELL)));
const state = (grid: Shows): string => String(grid.value("Sizes", plain(STATE_CELL)));
const searched = (grid: Shows): unknown[] =>
  grid.column("Sizes", `${LISTS_COLUMNS.searched}${LISTS_FIRST}:${LISTS_COLUMNS.searched}${LISTS_FIRST + 6}`);

/** What the pane does when a search has ended: keeps the texts of what it rested on, and when. */
function search(grid: Shows, asShown = (words: string): string => words): void {
  const now = grid.column("Sizes", `${WATCHED.now}${WATCHED_FIRST}:${WATCHED.now}${WATCHED_LAST}`);
  const kept = now.map((words) => `'${asShown(String(words))}`);
  grid.typeColumn("Sizes", `${WATCHED.then}${WATCHED_FIRST}`, kept);
  grid.type("Sizes", plain(SEARCHED_AT), "'2026-01-02 10:00");
}

describe("the sheet Sizes", () => {
  test("takes the scenarios of Flow until sets of its own are typed", () => {
    const grid = open();
    expect(searched(grid).slice(0, 4)).toEqual([
      "band saw, planer, drum sander, router table",
      "planer",
      "band saw, router table",
      "",
    ]);
    grid.type("Flow", `C${SETS + 2}`, "open"); // the band saw beside the planer
    expect(searched(grid)[1]).toBe("band saw, planer");
    grid.type("Sizes", `${LISTS_COLUMNS.open}${LISTS_FIRST + 2}`, "planer");
    expect(searched(grid)).toEqual(["", "", "planer", "", "", "", ""]);
  });

  test("lists every set of as many of four gates as are asked for, of one or two by itself, and says which work", () => {
    const grid = open();
    const { header } = TOGETHER_ANSWER;
    const listed = (): unknown[] => grid.column("Sizes", `A${header + 1}:A${header + 11}`);
    const most = String(grid.value("Sizes", `B${MOST_ROW}`));
    grid.type("Sizes", `B${MOST_ROW}`, "1");
    expect(listed().filter((one) => one !== "")).toHaveLength(4);
    grid.type("Sizes", `B${MOST_ROW}`, most);
    const sets = listed();
    expect(sets.filter((one) => one !== "")).toHaveLength(4 + 6);
    // the page for the club has the first four of them again, and below them the scenarios of Flow
    const alone = SETS_HEADER + 1;
    expect(grid.column("Summary", `A${alone}:A${alone + 7}`)).toEqual([...sets.slice(0, 4), ...grid.column("Flow", `B${SETS + 1}:B${SETS + 3}`), ""]); // prettier-ignore
    expect(grid.column("Summary", `B${alone}:B${alone + 3}`)).toEqual(grid.column("Sizes", `C${header + 1}:C${header + 4}`)); // prettier-ignore
    expect(grid.value("Summary", `F${alone}`)).toMatch(/^wanted is met; dust settles in trunk/);
    expect(grid.value("Summary", `F${alone + 4}`)).toMatch(/; the fan moves 1[67]\d\d cfm$/);
    expect(inShort(grid)).toMatch(/^No set of those tried/); // a 9 in trunk is too wide for two machines
    // in a trunk and mains of 5 in, the air of one machine moves its dust
    grid.typeColumn("Runs", runCell("Diameter", RUNS_FIRST + 4), ["5", "5", "5"]);
    expect(grid.value("Runs", runCell("Run", RUNS_FIRST + 6))).toBe("trunk");
    const verdict = answerLetters(TOGETHER_ANSWER, "verdict");
    const works = grid
      .column("Sizes", `${verdict}${header + 1}:${verdict}${header + 10}`)
      .flatMap((words, index) => (/^works (alone|together)/.test(String(words)) ? [String(sets[index])] : []));
    expect(works.length).toBeGreaterThan(0);
    expect(inShort(grid)).toBe(works.map((set) => set.replaceAll("; ", " + ")).join(", "));
    expect(grid.value("Summary", `B${WATCH + 3}`)).toBe(inShort(grid));
  });

  test("says that what was searched no longer holds, whatever of it was changed", () => {
    const grid = open();
    expect(state(grid)).toMatch(/^Not searched yet/);
    search(grid);
    expect(state(grid)).toBe("Searched on 2026-01-02 10:00; all that it rests on is as it was.");
    const changes: [sheet: string, at: string, typed: string][] = [
      ["Runs", runCell("Length", RUNS_FIRST), "7"],
      ["Runs", runCell("Fittings", RUNS_FIRST + 1), "elbow 2 x2; branch 30"], // as long as before
      ["Fan", "B10", "11.5"],
      ["Sizes", `${LISTS_COLUMNS.stock}${LISTS_FIRST + 13}`, "6"],
      ["Sizes", `B${MARGIN_ROW}`, "10"],
      ["Sizes", `B${FASTEST_ROW}`, "6000"],
      ["Sizes", `B${KEEP_ROW}`, "trunk"],
      ["Start", plain(ALTITUDE_CELL), "5000"],
    ];
    for (const [sheet, at, typed] of changes) {
      const before = String(grid.value(sheet, at));
      expect(before).not.toBe(typed);
      grid.type(sheet, at, typed);
      expect([at, state(grid)]).toEqual([at, expect.stringMatching(/^Changed since it was searched \(2026-01-02/)]);
      grid.type(sheet, at, before);
      expect([at, state(grid)]).toEqual([at, expect.stringMatching(/^Searched on/)]);
    }
  });

  test("still holds where it was searched in a program that writes 1.5 as 1,5", () => {
    const grid = open();
    grid.type("Runs", runCell("Length", RUNS_FIRST), "7.5");
    search(grid, (words) => words.replace(/(\d)\.(\d)/g, "$1,$2"));
    expect(grid.value("Sizes", `${WATCHED.then}${WATCHED_FIRST + 1}`)).toMatch(/\|7,5\|/);
    expect(state(grid)).toMatch(/as it was\.$/);
    grid.type("Runs", runCell("Length", RUNS_FIRST), "7.6");
    expect(state(grid)).toMatch(/^Changed since/);
  });

  test("and so after a row was inserted in Runs, and when that row is changed", () => {
    const grid = open();
    grid.insertRow("Runs", RUNS_FIRST + 2);
    grid.type("Runs", runCell("Run", RUNS_FIRST + 2), "new");
    search(grid);
    expect(state(grid)).toMatch(/as it was\.$/);
    grid.type("Runs", runCell("To", RUNS_FIRST + 2), "trunk");
    expect(state(grid)).toMatch(/^Changed since/);
  });

  test("is calm while it is empty", () => {
    const grid = gridOfBook(
      budgetBook({ units: "IP", sheets: sheetKeys, contents: "empty" }, { sheets: [], names: [] }),
    );
    expect(grid.errors()).toEqual([]);
    expect(state(grid)).toMatch(/^Not searched yet/);
    expect(inShort(grid)).toMatch(/^Fill in the sheets Runs and Fan first/);
    expect(grid.value("Sizes", `A${PIPES_ANSWER.header}`)).toBe("Run");
  });
});
