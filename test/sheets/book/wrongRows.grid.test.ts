/** The budget's sheets while rows of Runs are wrong or half typed: each mistake is told beside its row, and the rest computes. */
import { budgetColumns } from "../../../src/reference/answerColumns";
import { shownColumns } from "../../../src/reference/columnsOfRuns";
import { clubCopy } from "../../../src/share/clubCopy";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST, RUNS_HEADER } from "../../../src/sheets/book/layout";
import type { Workbook } from "../../../src/sheets/workbook";
import { withFewEntries } from "../../share/translate/fewEntries";
import { gridOfBook, type Shows } from "../../support/gridOfBook";
import { shownBook } from "../../support/shownBook";
import { withoutCells } from "../../support/withoutCells";

/** The example without what only takes time. */
function book(contents: "example" | "empty" = "example", units: "IP" | "SI" = "IP"): Workbook {
  const whole = budgetBook({ units, contents, sheets: ["summary"] }, { sheets: [], names: [] });
  const quick = withoutCells(whole, /DUCT\.(SCENARIOS|GAINS|BUDGETUNCERTAINTY|UNCERTAINTY)|INDEX\(DUCT\.SOLVE/);
  const frozen = { rows: 0, columns: 0 }; // the grid pastes nothing across the edge of frozen columns
  return { ...quick, sheets: quick.sheets.map((sheet) => ({ ...sheet, frozen })) };
}

/** What stands beside each run on Runs, by its name there. */
function checks(grid: Shows, last = 20): Record<string, unknown> {
  const rows = Array.from({ length: last }, (_, index) => RUNS_FIRST + index);
  return Object.fromEntries(
    rows.flatMap((row) => {
      const [check, name] = [grid.value("Runs", `A${row}`), grid.value("Runs", runCell("Run", row))];
      return check === "" && name === "" ? [] : [[name, check]];
    }),
  );
}

/** Types into a run's row. */
function mistype(grid: Shows, name: string, column: "Run" | "To" | "Hood" | "Length" | "Gate", words: string): void {
  const row = RUNS_FIRST + grid.column("Runs", `B${RUNS_FIRST}:B40`).indexOf(name);
  grid.type("Runs", runCell(column, row), words);
}

test("three mistakes in a sound book: each beside its row, who lacks air waits, the rest is as it was; mended, all is back", () => {
  const grid = gridOfBook(book());
  const sound = checks(grid);
  const kept = [grid.value("Runs", "F5"), grid.value("Budget", "C3"), grid.value("Flow", "G5")];
  expect(kept[1]).toBe("");
  mistype(grid, "router table", "Hood", "plane end");
  mistype(grid, "south main", "Length", "long");
  mistype(grid, "planer", "To", "nroth main");
  const hood = `Hood must be a hood entry's name or its K (nearest: "plain end", "flanged end", "thin free end"); got "plane end"`;
  expect(checks(grid)).toEqual({
    "band saw": sound["band saw"],
    planer: `${String(sound.planer)}; waiting for nroth main, which no row has (nearest: north main)`,
    "drum sander": sound["drum sander"],
    "router table": hood,
    "north main": "waiting for planer", // that may join it
    "south main": 'Length must be a number (ft); got "long"',
    trunk: "waiting for planer",
    separator: "waiting for planer",
    filter: "waiting for router table",
  });
  const headline =
    "Look: Runs row 10, planer: waiting for nroth main, which no row has (nearest: north main). Rows to mend: 3";
  for (const sheet of ["Budget", "Flow"]) expect(grid.value(sheet, "C3")).toBe(headline);
  expect([grid.value("Summary", "A8"), grid.value("Summary", "A20")]).toEqual(["", headline]); // why it has no hoods
  expect(grid.value("Runs", "C3")).toBe(`${headline}. `);
  // no total stands there without what is missing
  expect([...grid.column("Budget", "F4:F7"), ...grid.column("Budget", "K4:K7")]).toEqual(Array(8).fill("see C3"));
  expect(grid.column("Runs", "F5:F7")).toEqual(Array(3).fill("see C3"));
  expect(grid.column("Summary", "B40:B43")).toEqual(["see Flow B10", "see Flow B10", "see Budget C3", "see Budget C3"]);
  expect(grid.errors().filter((error) => error.startsWith("Flow!B10"))).toEqual([
    `Flow!B10: #VALUE! ${hood.replace("Hood", 'Hood of run "router table" (row 5)')}`,
  ]);

  // the rows that the sheets name are those of the sheet, also after one was inserted
  grid.insertRow("Runs", 10);
  expect(grid.value("Budget", "C3")).toBe(headline.replace("row 10", "row 11"));
  grid.deleteRow("Runs", 10);

  mistype(grid, "router table", "Hood", "router table port");
  mistype(grid, "south main", "Length", "10");
  mistype(grid, "planer", "To", "north main");
  expect(checks(grid)).toEqual(sound);
  expect([grid.value("Runs", "F5"), grid.value("Budget", "C3"), grid.value("Flow", "G5")]).toEqual(kept);
});

test("a name twice, a row without a name and two runs at the fan are told in their rows, other rows by the sheet's numbers", () => {
  const grid = gridOfBook(book());
  const sound = checks(grid);
  grid.typeRow("Runs", "B20", ["", "", "300"]);
  expect([grid.value("Runs", "A20"), grid.value("Runs", "A10")]).toEqual(["no name: not counted", sound.planer]);
  grid.typeRow("Runs", "B20", ["PLANER", "trunk", "300", "4"]);
  const columns = grid.column("Runs", "A20:A20");
  expect(columns).toEqual(['Run must be a name of its own: run "planer" (row 10) has it too; got "PLANER"']);
  expect([grid.value("Runs", "A9"), grid.value("Runs", "A10")]).toEqual([sound["band saw"], sound.planer]);
  expect(grid.value("Runs", "A15")).toBe("waiting for PLANER");
  grid.type("Runs", "B20", "");
  expect(grid.value("Runs", "A20")).toBe("Run must be a name; got a blank cell");
  expect(grid.value("Runs", "A15")).toBe("waiting for the run without a name");
  expect(grid.value("Budget", "C3")).toBe("Look: Runs row 20: Run must be a name; got a blank cell");
  grid.type("Runs", "B20", "lathe");
  grid.type("Runs", "C20", "fan");
  expect(grid.value("Runs", "A20")).toBe(
    'To must be "fan" in one row only: run "separator" (row 16) and run "lathe" both end there, so let one join the other; got "fan"',
  );
});

test("typed from empty: a name alone is told what it lacks, hoods compute before their main is there", () => {
  const grid = gridOfBook(book("empty"));
  expect(grid.value("Summary", "A20")).toBe("No open hood yet: fill in the sheets Runs and Fan first");
  grid.type("Runs", "B9", "saw");
  expect(grid.value("Runs", "A9")).toBe("Diameter must be a number (in); got a blank cell");
  const row = (line: Readonly<Record<string, string>>): string[] => shownColumns.map(({ name }) => line[name] ?? "");
  // 350 cfm in 4 in, 0.0872665 ft2: 4011 fpm
  grid.typeRow("Runs", "B9", row({ Run: "saw", To: "main", Diameter: "4", Airflow: "350", Length: "8" }));
  expect(grid.value("Runs", "A9")).toBe("ok: 4011 fpm; waiting for main, which no row has");
  grid.typeRow("Runs", "B10", row({ Run: "main", To: "fan", Diameter: "4", Length: "8" }));
  expect([grid.value("Runs", "A9"), grid.value("Runs", "A10")]).toEqual(["ok: 4011 fpm", "ok: 4011 fpm"]);
  expect(grid.value("Budget", "C3")).toBe("");
  // a curve that Flow cannot use, then one that it can; a shut gate
  grid.typeColumn("Fan", "A9", ["0", "much"]);
  grid.typeColumn("Fan", "B9", ["10", "8"]);
  grid.typeColumn("Fan", "A11", ["900"]);
  grid.typeColumn("Fan", "B11", ["2"]);
  expect(grid.value("Summary", "A20")).toBe("Look: no answer on the sheet Flow: see its cell B10");
  grid.type("Fan", "A10", "400");
  expect([grid.value("Summary", "A8"), grid.value("Summary", "A20")]).toEqual(["saw", ""]);
  grid.type("Runs", runCell("Gate", 9), "shut");
  expect(grid.value("Summary", "A20")).toBe("No open hood: gates are opened on the sheets Runs and Flow");
});

/** What Start and the sheets that rest on it say of an entry there, live or in a copy. */
function ofStart(grid: Shows, at: string, typed: string): unknown[] {
  const before = grid.value("Start", at);
  grid.type("Start", at, typed);
  const said = [grid.value("Start", "D9"), grid.value("Budget", "C3"), grid.value("Flow", "C3")];
  if (at === "B9") grid.undo();
  else grid.type("Start", at, String(before));
  expect([grid.value("Start", at), grid.value("Budget", "C3")]).toEqual([before, ""]);
  return said;
}

const NO_AIR = "no air density: units must be IP or SI, air temperature and altitude numbers that can be";
const said = (words: string): string[] => [`Look: ${words}`, `Look: Start: ${words}`, `Look: Start: ${words}`];

test("an air that is none, or blank, is told on Start and on the sheets that rest on it, and by no row of Runs", () => {
  const grid = gridOfBook(book());
  expect(grid.value("Start", "D9")).toBe("From temperature and altitude.");
  for (const [at, typed] of [["B7", "warm"], ["B7", "5000"], ["B8", "high"]] as const) expect(ofStart(grid, at, typed)).toEqual(said(NO_AIR)); // prettier-ignore
  expect(ofStart(grid, "B9", "thin")).toEqual(said("the air density must be a number"));
  expect(ofStart(grid, "B9", "")).toEqual(said("the air density is blank, so standard air is counted everywhere"));
  const select = "Look: select Budget B8 to read what is wrong"; // the function says it, which no formula can read
  expect(ofStart(grid, "B9", "12").slice(1)).toEqual([select, select]);
  grid.type("Start", "B10", "woood dust");
  const dust = "the dust in B10 must be a name of the table transport; a blank counts as wood dust";
  expect(grid.value("Start", "D11")).toBe(`Look: ${dust}`);
});

test("in a copy a wrong row has its sentence beside it as well, what its air goes through waits, and all others are as they were", () => {
  const whole = withoutCells(book(), /DUCT\.SOLVE/);
  const calculated = shownBook(whole, gridOfBook(whole));
  const fills = { rows: 42, columns: budgetColumns.length };
  const shown = new Map([...calculated.shown.get("Budget")!, ["B8", { value: "Run", fills }] as const]);
  const copy = clubCopy(
    { ...calculated, shown: new Map([...calculated.shown, ["Budget", shown]]) },
    { kind: "formulas", date: "2026-11-28", version: "1.1.0" },
  );
  const grid = gridOfBook(withFewEntries(copy.book.workbook));
  expect(ofStart(grid, "B7", "warm")).toEqual(said(NO_AIR));
  expect(ofStart(grid, "B9", "")).toEqual(said("the air density is blank, so standard air is counted everywhere"));
  // 0.2 and 5 kg/m3 over 16.0185
  const air = "Look: The density of the air must be a number from 0.0125 to 0.312 lb/ft³";
  expect(ofStart(grid, "B9", "12").slice(1)).toEqual([air, air]);
  const sound = checks(grid);
  mistype(grid, "router table", "Hood", "plane end");
  const words =
    'Hood must be a name in the tables of this copy, or a number from 0 to 10000; or blank beside a port suction and its airflow (nearest: "plain end")';
  expect(grid.value("Runs", "A12")).toBe(words);
  for (const [sheet, at] of [["Budget", "C3"], ["Summary", "A20"]] as const) expect(grid.value(sheet, at)).toBe(`Look: Runs row 12, router table: ${words}`); // prettier-ignore
  expect(checks(grid)).toEqual({
    ...sound,
    "router table": words,
    "south main": "waiting for router table",
    trunk: "waiting for router table",
    separator: "waiting for router table",
    filter: "waiting for router table",
  });
  expect(grid.value("Runs", "F5")).toBe("see C3");
});

// A function reads a number that stands in its cell as a text (after an apostrophe, or pasted); a sum passes over it. So
// "Air asked at open hoods" lacked that hood, and the air let in by leaks had its airflow beside them.
test("an airflow that is a text is told where it stands, and no sum goes without it", () => {
  const grid = gridOfBook(book());
  const [asked, leaks, share, wanted] = [["Budget", "F4"], ["Budget", "F5"], ["Budget", "K6"], ["Flow", "C6"]] as const; // prettier-ignore
  const sums = () => [asked, leaks, share, wanted].map(([sheet, at]) => grid.value(sheet, at));
  const labels = ["Budget!C4", "Budget!C5", "Budget!H6", "Flow!B6"].map((ref) => grid.value(...(ref.split("!") as [string, string]))); // prettier-ignore
  expect(labels).toEqual(["Air asked at open hoods", "Let in by leaks", "Leaks, share of the air", "Wanted there"]);
  const before = sums();
  expect(before.every((sum) => typeof sum === "number" && sum > 0)).toBe(true);
  const airflow = runCell("Airflow", RUNS_FIRST + grid.column("Runs", `B${RUNS_FIRST}:B40`).indexOf("planer"));
  const typed = String(grid.value("Runs", airflow));
  const fan = grid.value("Budget", "F6");
  grid.type("Runs", airflow, `="${typed}"`);
  expect(grid.value("Budget", "F6")).toBe(fan); // the function reads it
  expect(sums()).toEqual(["see Runs", "see Runs", "see Runs", "see Runs"]);
  expect(checks(grid).planer).toBe("airflow is a text");
  grid.type("Runs", airflow, typed);
  expect(sums()).toEqual(before);
});

test("a run above the headings is told, where it was dragged or typed there: no sheet reads it", () => {
  const grid = gridOfBook(book());
  const [usual, asked] = [grid.value("Runs", "C3"), grid.value("Runs", "F5")];
  grid.insertRow("Runs", RUNS_HEADER);
  expect(grid.value("Runs", "C3")).toBe(usual);
  grid.typeRow("Runs", `B${RUNS_HEADER}`, ["lathe", "trunk", "300", "4", "10"]);
  expect(grid.value("Runs", "C3")).toBe(
    "Look: runs above the headings, where no sheet reads them: 1. Move them down. ",
  );
  expect(grid.value("Runs", "F5")).toBe(asked);
  grid.deleteRow("Runs", RUNS_HEADER);
  expect(grid.value("Runs", "C3")).toBe(usual);
});

test.each(["Gate", "Flex", "Airflow"] as const)("beside each run it is told that the column %s is gone", (name) => {
  const grid = gridOfBook(book());
  const runs = Object.keys(checks(grid));
  grid.deleteColumn("Runs", runCell(name, RUNS_FIRST).replace(/\d+/, ""));
  expect(checks(grid)).toEqual(Object.fromEntries(runs.map((run) => [run, "no check: a column is gone"])));
});

// The two airflows are added up in m3/s by the function and in m3/h by the sheet, which differ in their last digits.
test("where no leak is counted the sums say 0 of leaks, and no -0", () => {
  const grid = gridOfBook(book("empty", "SI"));
  for (const [place, airflow] of ["600", "800"].entries())
    grid.typeRow("Runs", `B${RUNS_FIRST + place}`, [`hood ${place}`, "main", airflow, "100", "3", "", "plain end"]);
  grid.typeRow("Runs", `B${RUNS_FIRST + 2}`, ["main", "fan", "", "315", "5"]);
  expect(grid.value("Budget", "F6")).toBeCloseTo(1400, 6);
  expect([grid.value("Budget", "F5"), grid.value("Budget", "K6")]).toEqual([0, 0]); // toEqual tells 0 from -0
});
