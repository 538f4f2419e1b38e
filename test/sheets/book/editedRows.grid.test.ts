/**
 * The sheet Runs as people edit it: rows inserted, deleted, cut, sorted, doubled, cleared and filled, drawn by lot. After each
 * edit the functions are called by themselves on the table as it then stands, and what the sheets show must be that.
 */
import { plain } from "../../../src/core/naming/findNamed";
import { openBudget } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { type BudgetKey, budgetColumns, type SolveKey, solveColumns } from "../../../src/reference/answerColumns";
import { placeOfColumn } from "../../../src/reference/columnsOfAnswers";
import { shownColumns } from "../../../src/reference/columnsOfRuns";
import { markOf } from "../../../src/reference/notes";
import { columnLetters } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST, RUNS_HEADER, runsColumnPlace } from "../../../src/sheets/book/layout";
import type { Workbook } from "../../../src/sheets/workbook";
import { cellFunctions } from "../../support/cellFunctions";
import { gridOfBook, type Shows } from "../../support/gridOfBook";
import { lots } from "../../support/lots";
import { withoutCells } from "../../support/withoutCells";

const LAST = columnLetters(runsColumnPlace(shownColumns.at(-1)!.name));
const LOWEST = 60; // below it nothing is ever put

/** The sheets that these questions need, without what only takes time: scenarios, single changes, the sealed network, what is uncertain. */
function book(): Workbook {
  const whole = budgetBook({ units: "IP", contents: "example", sheets: ["summary"] }, { sheets: [], names: [] });
  const quick = withoutCells(whole, /DUCT\.(SCENARIOS|GAINS|BUDGETUNCERTAINTY|UNCERTAINTY)|INDEX\(DUCT\.SOLVE/);
  const frozen = { rows: 0, columns: 0 }; // the grid pastes nothing across the edge of frozen columns
  return { ...quick, sheets: quick.sheets.map((sheet) => ({ ...sheet, frozen })) };
}

const fromFile = async (): Promise<Workbook> =>
  (await openBudget(await writeBook({ workbook: book(), shown: new Map() }, { title: "rows" }))).workbook;

type Rows = unknown[][];

const table = (grid: Shows, last = LOWEST): Rows =>
  Array.from({ length: last - RUNS_HEADER + 1 }, (_, index) =>
    shownColumns.map(({ name }) => grid.value("Runs", runCell(name, RUNS_HEADER + index))),
  );
const called = (name: string, ...given: unknown[]): Rows | null => {
  try {
    return cellFunctions.find((one) => one.name === name)!.call(...given);
  } catch {
    return null;
  }
};
const text = (value: unknown): string => String(value).trim();

/** What must be seen, from the functions' own answers; null where they refuse the table. */
function expected(grid: Shows, told: ReadonlyMap<string, string>) {
  const rows = table(grid);
  const units = "IP";
  const density = grid.value("Start", "B9");
  const column = (name: string): number => shownColumns.findIndex((one) => one.name === name);
  const of = (row: unknown[], name: string): string => text(row[column(name)]);
  const runs = rows.slice(1).filter((row) => of(row, "Run") !== "");
  const byName = new Map(runs.map((row) => [plain(of(row, "Run")), row]));
  const joined = new Set(runs.map((row) => plain(of(row, "To"))));
  const open = runs
    .filter((row) => of(row, "Gate") !== "" && (told.get(plain(of(row, "Run"))) ?? of(row, "Gate")) === "open")
    .map((row) => of(row, "Run"));
  const curve = Array.from({ length: 16 }, (_, index) =>
    ["A", "B"].map((at) => grid.value("Fan", `${at}${8 + index}`)),
  );
  const budget = called("BUDGET", rows, [[density]], [[units]]);
  const flow = called("SOLVE", rows, curve, [[open.length === 0 ? "none" : open.join("; ")]], [[density]], [[units]]);
  if (budget === null || flow === null) return null;
  const asked = (row: unknown[], key: BudgetKey): unknown => row[placeOfColumn(budgetColumns, key)];
  const flows = (row: unknown[], key: SolveKey): unknown => row[placeOfColumn(solveColumns, key)];
  const isRun = (row: unknown[]): boolean => row[0] !== "" && row[0] !== "Fan";
  const isEnd = (row: unknown[]): boolean => isRun(row) && !joined.has(plain(text(row[0])));
  const wanted = (row: unknown[]): number => Number(byName.get(plain(text(row[0])))![column("Airflow")]);
  const check = (row: unknown[]): string => {
    const [run, note] = [byName.get(plain(text(row[0])))!, text(asked(row, "note"))];
    if (of(run, "Side") === "discharge") return "after the fan";
    if (of(run, "Gate") === "shut") return "gate shut";
    if (note.includes(markOf("cutOff"))) return "beyond a shut gate";
    if (note.includes(markOf("asksForNone")) || note.includes(markOf("noneAsksThroughIt"))) return "no air asked";
    const how = note.includes(markOf("settles")) ? "settles" : note.includes(markOf("tooFast")) ? "too fast" : "ok";
    return `${how}: ${Math.round(Number(asked(row, "velocity")))} fpm`;
  };
  return {
    open: open.join("; "),
    checks: new Map(budget.slice(1).filter(isRun).map((row) => [plain(text(row[0])), check(row)])), // prettier-ignore
    asked: budget.slice(1).filter((row) => isEnd(row) && asked(row, "governs") !== "").reduce((sum, row) => sum + wanted(row), 0), // prettier-ignore
    hoods: flow
      .slice(1)
      .filter((row) => isEnd(row) && flows(row, "gate") !== "shut" && flows(row, "staticSuction") !== "")
      .map((row) => [text(row[0]), Number(flows(row, "airflow")) - Number(flows(row, "leak")), wanted(row)] as const),
  };
}

/** What must hold whatever was done. Returns whether the table has an answer. */
function compare(grid: Shows, told: ReadonlyMap<string, string>): boolean {
  const wanted = expected(grid, told);
  const names = grid.column("Runs", `B${RUNS_FIRST}:B${LOWEST}`).map(text);
  const checks = grid.column("Runs", `A${RUNS_FIRST}:A${LOWEST}`);
  const filled = names.flatMap((name, index) => (name === "" ? [] : [[name, checks[index]] as const]));
  if (wanted === null) {
    expect(filled.map(([, check]) => check).filter((check) => check !== "" && check !== "see Budget B8")).toEqual([]);
    return false;
  }
  // the size that would cure it is asked in shown.grid.test.ts
  const checked = filled
    .filter(([, check]) => check !== "")
    .map(([name, check]) => [name, String(check).replace(/; .* would carry it .*/, "")] as const);
  expect(checked).toEqual(checked.map(([name]) => [name, wanted.checks.get(plain(name))]));
  const bare = filled.length - checked.length;
  if (bare > 0) expect(grid.value("Runs", "C3")).toMatch(`Look: named runs without a check beside them: ${bare}.`);
  else expect(grid.value("Runs", "C3")).toMatch(/^Column A says/);
  names.forEach((name, index) => {
    if (name === "") expect([name, checks[index]]).toEqual(["", ""]);
  });
  const settling = [...wanted.checks.values()].filter((check) => check.startsWith("settles")).length;
  expect(grid.value("Runs", "F7")).toBe(settling);
  expect(grid.value("Budget", "F4")).toBe(wanted.asked);
  expect(grid.value("Flow", "C9")).toBe(wanted.open === "" ? "none" : wanted.open);
  const hoods = Array.from({ length: 12 }, (_, k) => ["A", "B", "C"].map((at) => grid.value("Summary", `${at}${8 + k}`))).filter(([name]) => name !== ""); // prettier-ignore
  expect(hoods.map(([name, , wants]) => [name, wants])).toEqual(wanted.hoods.map(([name, , wants]) => [name, wants]));
  hoods.forEach(([, gets], k) => expect(Math.abs(Number(gets) - wanted.hoods[k]![1])).toBeLessThan(1e-6));
  return true;
}

const rowsWhere = (grid: Shows, is: (name: string) => boolean, last = 40): number[] =>
  Array.from({ length: last - RUNS_FIRST }, (_, index) => RUNS_FIRST + index).filter((row) =>
    is(text(grid.value("Runs", `B${row}`))),
  );

/** Edits as people make them; each leaves a table that the functions take. */
function edits(grid: Shows, random: () => number): Readonly<Record<string, () => void>> {
  const pick = <One>(list: readonly One[]): One => list[Math.floor(random() * list.length)]!;
  const fresh = (): string => pick(["Bench*", "lathe-", "~jig ", "Planer?", "12", "Over_arm"]) + String(Math.floor(random() * 1e6)); // prettier-ignore
  const fill = (row: number): void => {
    const run: Readonly<Record<string, string>> = {
      Run: fresh(),
      To: pick(["north main", "South-Main", "trunk"]),
      Airflow: pick(["300", "420"]),
      Diameter: pick(["4", "6"]),
      Length: "9",
      Gate: pick(["open", "shut", ""]),
    };
    const last = shownColumns.findIndex(({ name }) => name === "Gate");
    grid.typeRow("Runs", `B${row}`, shownColumns.slice(0, last + 1).map(({ name }) => run[name] ?? "")); // prettier-ignore
  };
  const kept = new Set(["planer", "router table", "north main", "south main", "trunk", "separator", "filter"]);
  const blank = (): number => pick(rowsWhere(grid, (name) => name === ""));
  const taken = (): number => pick(rowsWhere(grid, (name) => name !== ""));
  const free = (): number[] => rowsWhere(grid, (name) => name !== "" && !kept.has(plain(name)));
  const line = (row: number): string => `B${row}:${LAST}${row}`;
  return {
    "inserts a row and fills it": () => {
      const row = pick([RUNS_FIRST, taken(), taken()]);
      grid.insertRow("Runs", row);
      fill(row);
      if (random() < 0.6) grid.copy("Runs", `A${row + 1}`, `A${row}`);
    },
    "deletes a hood's row": () => {
      if (free().length > 0) grid.deleteRow("Runs", pick(free()));
    },
    "deletes a blank row": () => grid.deleteRow("Runs", blank()),
    "cuts a run and pastes it lower or higher": () => grid.cut("Runs", line(taken()), line(blank())),
    "sorts the runs": () =>
      grid.sort("Runs", `B${RUNS_FIRST}:${LAST}40`, pick(["B", "C", "D", "E", "F"]), pick(["asc", "desc"])),
    "sorts the runs with their checks": () =>
      grid.sort("Runs", `A${RUNS_FIRST}:${LAST}40`, pick(["B", "E"]), pick(["asc", "desc"])),
    "doubles a hood's row under another name": () => {
      const [from, to] = [pick(rowsWhere(grid, (name) => ["planer", "router table"].includes(name))), blank()];
      grid.copy("Runs", line(from), line(to));
      grid.type("Runs", `B${to}`, fresh());
    },
    "clears a hood's row": () => {
      if (free().length > 0) grid.clear("Runs", line(pick(free())));
    },
    "fills a blank row": () => fill(blank()),
    "copies the checks down": () => {
      const whole = rowsWhere(grid, () => true).find((row) => grid.value("Runs", `A${row}`) !== "")!;
      grid.copy("Runs", `A${whole}`, `A${RUNS_FIRST}:A40`);
    },
  };
}

/** One gate shut here and one opened, in rows that have nothing to do with their runs. */
const TOLD = new Map([["planer", "shut"], ["router table", "open"]]); // prettier-ignore

function begin(workbook: Workbook): Shows {
  const grid = gridOfBook(workbook);
  ["shut planer", "", "open ROUTER-table", ""].forEach((words, index) => grid.type("Flow", `A${11 + index}`, words));
  return grid;
}

describe.each([
  ["as it is made", async () => book(), 40, 7],
  ["read back from a file", fromFile, 10, 3],
] as const)("a budget whose rows are edited, %s", (_, make, count, seed) => {
  test(`shows what the functions say, after each of ${count} edits`, async () => {
    const grid = begin(await make());
    const random = lots(seed);
    const all = edits(grid, random);
    const kinds = Object.keys(all);
    expect(compare(grid, TOLD)).toBe(true);
    for (let k = 0; k < count; k++) {
      const kind = kinds[k % kinds.length]!;
      all[kind]!();
      try {
        expect(compare(grid, TOLD)).toBe(true);
      } catch (error) {
        (error as Error).message = `edit ${k + 1}, one that ${kind}: ${(error as Error).message}`;
        throw error;
      }
    }
  });
});

describe("words in column A of Flow that cannot be followed", () => {
  test.each([
    ["shut planner", "Mend A12: no run is called planner. "],
    ["shut", "Mend A12: write open or shut, then the name of a run. "],
    ["planer", "Mend A12: write open or shut, then the name of a run. "],
    ["open planer", "Mend A11: planer is told both open and shut. Mend A12: planer is told both open and shut. "],
    ["shut trunk", "Mend A12: trunk has no gate on the sheet Runs. "],
    ["shut plan*", "Mend A12: no run is called plan*. "],
  ])("%s", (words, said) => {
    shared ??= begin(book());
    shared.type("Flow", "A12", words);
    expect(shared.value("Flow", "C9")).toBe(said);
    expect(shared.errors().find((error) => error.startsWith("Flow!B10"))).toMatch(/#VALUE! open must be names of runs/);
    expect(shared.value("Flow", "C5")).toBe("see B10");
    shared.type("Flow", "A12", "");
    expect(shared.value("Flow", "C9")).toBe("band saw; drum sander; router table");
  });
  let shared: Shows | undefined;
});

describe("two runs of one name", () => {
  test("are refused in a sentence, have no row of the table, and leave the others theirs", () => {
    const grid = begin(book());
    const rowOfName = (name: string): unknown => {
      const names = grid.column("Flow", "AD11:AD60");
      return grid.column("Flow", "AE11:AE60")[names.indexOf(name)];
    };
    const [planer, trunk] = ["planer", "trunk"].map(rowOfName);
    expect([planer, trunk]).toEqual(
      ["planer", "trunk"].map(
        (name) =>
          1 + 1 + grid.column("Runs", `B${RUNS_FIRST}:B${LOWEST}`).findIndex((one) => plain(text(one)) === name),
      ),
    );
    grid.typeRow("Runs", "B40", ["PLANER", "trunk"]);
    expect(grid.value("Budget", "C3")).toMatch(/^Look: Runs row 40, PLANER: Diameter must be a number/);
    expect(grid.value("Runs", "A40")).toBe("Diameter must be a number (in); got a blank cell");
    expect(rowOfName("planer")).toBe(0);
    expect(grid.value("Flow", "C9")).toBe("Mend A11: more than one run on the sheet Runs is called planer. "); // was #DIV/0!
    expect(rowOfName("trunk")).toBe(trunk);
    grid.clear("Runs", "B40:C40");
    expect(rowOfName("planer")).toBe(planer);
    expect(compare(grid, TOLD)).toBe(true);
  });
});

describe("what the sheets would leave out", () => {
  test("a run below the table, and an inserted run without a dust where the shop carries another, are told of", () => {
    const grid = begin(book());
    grid.type("Runs", "B49", "late");
    expect(grid.value("Runs", "C3")).toMatch(/^Look: runs below the table, where no sheet reads them: 1\./);
    grid.type("Runs", "B49", "");
    expect(grid.value("Runs", "C3")).toMatch(/^Column A says/);
    grid.type("Start", "B10", "fine light dust");
    grid.clear("Runs", "P10");
    expect(grid.value("Runs", "C3")).toMatch(
      /^Look: named runs that say no dust and count as wood dust: 1\. Copy column P/,
    );
  });

  test("a full table is not told to take more runs: it says how many these sheets read", () => {
    const grid = begin(book());
    const names = Array.from({ length: 40 }, (_, index) => `duct ${index + 1}`);
    grid.typeColumn("Runs", "B9", names);
    const said = (): string => String(grid.value("Runs", "C3"));
    expect(said()).not.toContain("below the table");
    grid.type("Runs", "B49", "late");
    expect(said()).toMatch(/where no sheet reads them: 1\. These sheets read 40 runs: for more, write formulas/);
    grid.type("Runs", "B30", "");
    expect(said()).toMatch(/where no sheet reads them: 1\. Move them up\./);
    grid.type("Runs", "B49", "");
    grid.insertRow("Runs", 20);
    expect(said()).toMatch(/read no further\. Delete blank rows\./); // 39 runs in 41 rows
    grid.typeColumn("Runs", "B20", ["one", "two"]);
    grid.type("Runs", "B31", "three");
    expect(said()).toMatch(/read no further\. These sheets read 40 runs: for more, /);
  });

  test("a column with another word over it is told of, and not one that is empty", () => {
    const grid = begin(book());
    const usual = grid.value("Runs", "C4");
    const lost = (name: string) => `Look: no column is headed ${name}: what stands in its place counts for nothing.`; // prettier-ignore
    for (const [at, name] of [["F8", "Length"], ["G8", "Flex"], ["I8", "Fittings"]] as const) {
      grid.type("Runs", at, "Flexx");
      expect(grid.value("Runs", "C4")).toBe(lost(name));
      grid.undo();
    } // prettier-ignore
    grid.type("Runs", "F8", "length");
    expect(grid.value("Runs", "C4")).toBe(usual);
    grid.type("Runs", "U8", "Notes");
    expect(grid.value("Runs", "C4")).toBe(usual);
  });
});
