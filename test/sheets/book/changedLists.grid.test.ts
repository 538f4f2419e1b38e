/**
 * The example as it stands, and as it would with other lists: columns of the runs table in another order and new ones among
 * them, answers' columns in another order, every note in other words. What is not changed must show the same, in whatever
 * cell: no reader may go by a letter, a place or an English sentence.
 */
import { cellAddress, placeOf } from "../../../src/sheets/address";
import { type Changed, reordered, reworded, shuffled, withLists, withNewColumns } from "../../support/changedLists";

const SEED = 20270114;

type Cells = ReadonlyMap<string, unknown>; // by sheet and address
type Row = Readonly<Record<string, unknown>>; // by header

/** Tables: their sheet, the rows of their header and of their last line, and the columns that they may take. */
const TABLES = {
  runs: ["Runs", 8, 48, 2, 40],
  ownFan: ["Fan", 38, 53, 11, 16],
  unsure: ["Budget", 8, 9, 28, 34],
  budget: ["Budget", 8, 49, 2, 14],
  flow: ["Flow", 10, 51, 2, 9],
  uncertainty: ["Flow", 10, 51, 39, 51],
  scenarios: ["Flow", 66, 72, 2, 87],
  inShort: ["Flow", 75, 81, 2, 6],
  gains: ["Flow", 88, 118, 1, 6],
  leakGains: ["Leaks", 22, 38, 16, 20],
  claims: ["Claims", 42, 66, 1, 7],
} as const;
type Table = keyof typeof TABLES;

interface Seen {
  readonly cells: Cells;
  readonly tables: Readonly<Record<Table, readonly Row[]>>;
  readonly found: readonly { readonly rule: string; readonly what: string }[]; // by Check
  readonly wrongInCopy: readonly string[]; // where a copy's plain formulas say something else than BUDGET
  readonly marks: readonly string[];
}

const see = (changed: Changed): Promise<Seen> =>
  withLists(changed, async () => {
    const { budgetBook } = await import("../../../src/sheets/book/budgetBook");
    const { runCell, RUNS_FIRST } = await import("../../../src/sheets/book/layout");
    const { gridOfBook } = await import("../../support/gridOfBook");
    const { findingsIn } = await import("../../../src/taskpane/check/findingsIn");
    const { seenIn } = await import("../../../src/taskpane/check/seenIn");
    const { shownBook } = await import("../../support/shownBook");
    const { withEveryNote } = await import("../../support/everyNote");
    const { noteWords } = await import("../../../src/reference/noteWords");
    const { seededTable } = await import("../../share/budget/seededTable");
    const { wrongIn } = await import("../../share/budget/inGrid");
    const example = budgetBook(
      { units: "IP", contents: "example", sheets: ["summary", "leaks", "claims"] },
      { sheets: [], names: [] },
    );
    const book = withEveryNote(example, (column, place) => runCell(column, RUNS_FIRST + place));
    const grid = gridOfBook(book);
    expect(grid.errors()).toEqual([]);
    const described = book.sheets.flatMap(({ name, cells: there }) => there.map(({ at }) => `${name}!${at}`));
    const cells = new Map(
      [...described, ...Object.keys(TABLES).flatMap((name) => placesOf(name as Table))].map((key) => {
        const [sheet, at] = key.split("!") as [string, string];
        return [key, grid.value(sheet, at)];
      }),
    );
    return {
      cells,
      tables: Object.fromEntries(Object.keys(TABLES).map((name) => [name, rowsOf(cells, name as Table)])) as never,
      found: findingsIn(seenIn(shownBook(book, grid))).map(({ rule, what }) => ({ rule, what })),
      wrongInCopy: wrongIn(seededTable(SEED, 14, "SI"), "SI"),
      marks: Object.values(noteWords).flatMap((note) => ("mark" in note ? [note.mark] : [])),
    };
  });

/** All cells that a table may take. */
function placesOf(name: Table): string[] {
  const [sheet, header, last, from, to] = TABLES[name];
  const rows = Array.from({ length: last - header + 1 }, (_, index) => header + index);
  const columns = Array.from({ length: to - from + 1 }, (_, index) => from + index);
  return rows.flatMap((row) => columns.map((column) => `${sheet}!${cellAddress(column, row)}`));
}

/** The rows of a table by its headers, so that the order of its columns is forgotten. */
function rowsOf(cells: Cells, name: Table): Row[] {
  const [, header, last] = TABLES[name];
  const lines = new Map<number, [number, unknown][]>();
  for (const key of placesOf(name)) {
    const { row, column } = placeOf(key.split("!")[1]!);
    lines.set(row, [...(lines.get(row) ?? []), [column, cells.get(key)]]);
  }
  const headers = new Map((lines.get(header) ?? []).filter(([, words]) => words !== ""));
  return Array.from({ length: last - header }, (_, index) =>
    Object.fromEntries(
      (lines.get(header + 1 + index) ?? [])
        .filter(([column]) => headers.has(column))
        .map(([column, value]) => [String(headers.get(column)), value]),
    ),
  );
}

/** Words that stand over the column Gate, wherever that is. */
const OVER_GATE = "More, where you need it:";

/** The whole runs table as one text, in the order of its columns. */
const AS_TEXT = "Budget!U5";

/** The cells outside of these tables that show something else; a range that is told as a text may have another size. */
function differing(one: Seen, other: Seen, except: readonly Table[]): string[] {
  const inTables = new Set(except.flatMap(placesOf));
  return [...one.cells].flatMap(([key, value]) => {
    const [was, is] = [value, other.cells.get(key)].map((shown) => String(shown).replace(/\$[A-Z]+\$48/g, "last"));
    return was === is || was === OVER_GATE || key === AS_TEXT || inTables.has(key) ? [] : [`${key}: ${was}, now ${is}`];
  });
}

/** Rows without these columns. */
const without = (rows: readonly Row[], ...columns: readonly string[]): Row[] =>
  rows.map((row) => Object.fromEntries(Object.entries(row).filter(([header]) => !columns.includes(header))));

let plain: Seen;
beforeAll(async () => {
  plain = await see({});
});

test("as it stands every note is said, and a copy says what BUDGET does", () => {
  const said = [...plain.tables.budget, ...plain.tables.flow].map((row) => String(row.Note)).join("\n");
  // those of wrong runs are said in wrongRows.grid.test.ts, those of TOGETHER in sizes.grid.test.ts
  const elsewhere = ["waits for", "which no row has", "works together", "works alone"];
  expect(plain.marks.filter((mark) => !said.includes(mark)).sort()).toEqual(elsewhere.sort());
  expect(plain.found.length).toBeGreaterThan(5);
  expect(plain.wrongInCopy).toEqual([]);
});

test("with the runs table's columns shuffled, and new ones at both ends and between, all else shows the same", async () => {
  const now = await see({ runColumns: (list) => withNewColumns(shuffled(list, SEED)) });
  expect(differing(plain, now, ["runs"])).toEqual([]);
  expect(without(now.tables.runs, "Painted", "Bought in", "Seen by")).toEqual(plain.tables.runs);
  expect(Object.keys(now.tables.runs[0]!)).not.toEqual(Object.keys(plain.tables.runs[0]!));
  expect(now.found).toEqual(plain.found);
  expect(now.wrongInCopy).toEqual([]);
});

test("with every answer's columns in another order, all that reads them shows the same", async () => {
  const now = await see({ answers: reordered(SEED) });
  expect(
    differing(plain, now, [
      "budget",
      "unsure",
      "ownFan",
      "flow",
      "uncertainty",
      "scenarios",
      "gains",
      "leakGains",
      "claims",
    ]),
  ).toEqual([]);
  expect(now.tables).toEqual(plain.tables);
  for (const name of ["budget", "flow", "scenarios", "gains", "claims"] as const)
    expect(Object.keys(now.tables[name][0]!)).not.toEqual(Object.keys(plain.tables[name][0]!));
  expect(now.found).toEqual(plain.found);
  expect(now.wrongInCopy).toEqual([]);
});

test("with every note in other words, flags, counts, checks and findings are the same", async () => {
  const now = await see({ notes: reworded });
  // Summary says of the best change what GAINS notes of it, and Fan of the readings what FANCURVE does
  const ownFan = "Fan!A36";
  const [label] = [...plain.cells].find(([, words]) => words === "Best single change")!;
  const best = label.replace("!A", "!B");
  const changed = ({ cells }: Seen): string => String(cells.get(best)).split(";")[0]!;
  expect(changed(now)).toBe(changed(plain));
  const others = differing(plain, now, ["budget", "ownFan", "flow", "uncertainty", "scenarios", "inShort", "gains"]);
  expect(others.filter((words) => ![best, ownFan].some((at) => words.startsWith(`${at}: `)))).toEqual([]);
  for (const name of ["budget", "flow", "gains"] as const) {
    expect(without(now.tables[name], "Note")).toEqual(without(plain.tables[name], "Note"));
    expect(now.tables[name].map(({ Note: note }) => note)).not.toEqual(
      plain.tables[name].map(({ Note: note }) => note),
    );
  }
  for (const name of ["scenarios", "inShort"] as const)
    expect(without(now.tables[name], "Slowest run", "Note")).toEqual(
      without(plain.tables[name], "Slowest run", "Note"),
    );
  const meant = ({ found }: Seen): string[] =>
    found.map(({ rule, what }) => `${rule}: ${rule === "A note" ? what.split(": ")[0]! : what}`);
  expect(meant(now)).toEqual(meant(plain));
  expect(now.wrongInCopy).toEqual([]);
});
