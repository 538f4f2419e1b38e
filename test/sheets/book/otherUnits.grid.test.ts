import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { gridOfBook } from "../../support/gridOfBook";

type Units = "IP" | "SI";

const book = (units: Units, contents: "empty" | "example" = "empty") =>
  gridOfBook(
    budgetBook(
      { units, contents, sheets: ["start", "runs", "fan", "budget", "flow", "summary"] },
      { sheets: [], names: [] },
    ),
  );

type Book = ReturnType<typeof book>;
type Run = readonly [name: string, to: string, airflow: string, diameter: string, length: string];

const INCHES: readonly Run[] = [
  ["saw", "main", "550", "5", "3"],
  ["main", "fan", "", "6", "10"],
];
const MILLIMETRES: readonly Run[] = [
  ["saw", "main", "900", "125", "1"],
  ["main", "fan", "", "160", "3"],
];

function typeRuns(shows: Book, runs: readonly Run[]): void {
  runs.forEach(([name, to, airflow, diameter, length], index) => {
    const typed = { Run: name, To: to, Airflow: airflow, Diameter: diameter, Length: length, Hood: airflow && "0.5" };
    for (const [column, words] of Object.entries(typed))
      shows.type("Runs", runCell(column as keyof typeof typed, RUNS_FIRST + index), words);
  });
}

const said = (count: number, unit: string): string =>
  `Look: diameters on Runs that fit no duct in ${unit}: ${count}. Typed before the units were changed? Nothing typed is converted`;
const changeTo = (shows: Book, units: Units): void => shows.type("Start", "B6", units);
const checks = (shows: Book): unknown[] => shows.column("Runs", `A${RUNS_FIRST}:A${RUNS_FIRST + 1}`);

test.each([
  ["IP", "SI", INCHES, "mm"],
  ["SI", "IP", MILLIMETRES, "in"],
] as const)(
  "rows that were typed in %s and count in %s are told, on every sheet that goes by them",
  (from, to, runs, unit) => {
    const shows = book(from);
    typeRuns(shows, runs);
    expect([shows.value("Start", "A4"), shows.value("Budget", "C3")]).toEqual(["", ""]);
    expect(checks(shows).join()).not.toContain("across");
    const before = shows.value("Runs", "C3");
    changeTo(shows, to);
    expect(shows.value("Start", "A4")).toBe(`${said(2, unit)}.`);
    expect(shows.value("Runs", "C3")).toBe(`${said(2, unit)}. `);
    expect([shows.value("Budget", "C3"), shows.value("Flow", "C3")]).toEqual([said(2, unit), said(2, unit)]);
    expect(checks(shows)).toEqual(runs.map((run) => expect.stringMatching(`^${run[3]} ${unit} across\\? `)));
    changeTo(shows, from);
    expect([shows.value("Start", "A4"), shows.value("Runs", "C3")]).toEqual(["", before]);
  },
);

test.each([
  ["IP", "SI", MILLIMETRES],
  ["SI", "IP", INCHES],
] as const)(
  "an empty budget that was made in %s and is changed to %s says so on Start alone, and rows typed then are not asked about",
  (from, to, runs) => {
    const shows = book(from);
    const before = shows.value("Runs", "C3");
    changeTo(shows, to);
    const made = `Made for ${from}: what was typed is not converted, and numbers show as many decimals as in ${from}. Better a new budget.`;
    expect([shows.value("Start", "A4"), shows.value("Runs", "C3")]).toEqual([made, before]);
    typeRuns(shows, runs);
    expect([shows.value("Start", "A4"), shows.value("Runs", "C3")]).toEqual([made, before]);
  },
);

test("one diameter of many is enough, and a text, a blank and a 0 are none", () => {
  const shows = book("IP", "example");
  const at = runCell("Diameter", RUNS_FIRST);
  const across = (): unknown => shows.value("Start", "A4");
  expect(across()).toBe("");
  for (const typed of ["100 mm", "", "0"]) {
    shows.type("Runs", at, typed);
    expect(across()).toBe("");
  }
  shows.type("Runs", at, "100");
  expect(across()).toBe(`${said(1, "in")}.`);
});

test("the page for the club says it where its hoods stand", () => {
  const shows = book("SI", "example");
  shows.type("Runs", runCell("Diameter", RUNS_FIRST), "1600"); // 1.5 m is the widest of a workshop
  expect(shows.texts("Summary", "A1:A60").flat()).toContain(said(1, "mm"));
});
