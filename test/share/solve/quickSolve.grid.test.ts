/**
 * SOLVE as plain formulas, computed in the grid of the local sheet (an engine that is not ours), against SOLVE itself, whose
 * answers are held against written-out equations and a general engine elsewhere.
 */
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { inGrid } from "../../support/grid";
import { differences } from "../sampleBooks";
import { withFewEntries } from "../translate/fewEntries";
import { answerOf, type Asked, copyOf, fans, seededSystems, typed } from "./solvedCopies";

const NOTE = "H2"; // of the first row

const computed = (asked: readonly Asked[], shows = asked.map(answerOf)): EngineValues => {
  const copy = copyOf(asked, shows);
  expect(copy.fixed).toEqual([]);
  return inGrid(withFewEntries(copy.book.workbook));
};

const wrong = (asked: readonly Asked[], values: EngineValues): string[] =>
  asked.flatMap((one, index) => differences(`Answer${index}`, "A1", answerOf(one), values));

const runs = [
  ["Run", "To", "Diameter", "Length", "Fittings", "Hood", "Airflow", "Gate", "Leak shut", "Dust"],
  ["saw", "main", 4, 6, "mitre 90 x2", "plain end", 350, "open", 0.3, null],
  ["band, small", "main", 4, 9, "elbow 1.5", "plain end", 400, "shut", 0.2, null],
  ["All-rounder", "fan arm", 5, 4, null, "flanged end", null, "open", null, "dry dust"],
  ["main", "fan arm", 6, 5, null, null, null, null, null, null],
  ["fan arm", "fan", 6, 5, "elbow 2", null, null, null, null, null],
];
const system = (open?: CellValue): Asked => ({
  runs,
  curve: fans.IP,
  units: "IP",
  ...(open === undefined ? {} : { open }),
});

test("drawn systems in both units give SOLVE's answers, notes included", () => {
  const asked = seededSystems([3, 4], 3);
  expect(wrong(asked, computed(asked))).toEqual([]);
});

// A strong branch pushes the air of a weak one back: K of its straight run falls below nothing.
test("a hood out of which air blows is told so in the copy, too", () => {
  const blown = [
    ["Run", "To", "Diameter", "Length", "Fittings", "Hood", "Airflow", "Leak"],
    ["a", "m2", 6, 0.2, "branch 90", 0.03, 20, null],
    ["b", "m2", 6, 0.2, null, 2, 20, null],
    ["c", "m", 6, 0.2, "branch 30", 20, 20, 0.5],
    ["m", "m2", 2, 2, "branch 30", null, null, null],
    ["m2", "fan", 6, 2, null, null, null, null],
  ];
  const asked: Asked = { runs: blown, curve: [[0, 14], [400, 13.5], [800, 12], [1200, 9], [1600, 4], [1800, 0]], units: "IP" }; // prettier-ignore
  const notes = answerOf(asked).map((row) => String(row.at(-1)));
  expect(notes[3]).toMatch(/the hood gets nothing \(air blows out of it\) of the 20 cfm wanted$/);
  expect(notes.at(-1)).not.toMatch(/-\d/);
  expect(wrong([asked], computed([asked]))).toEqual([]);
});

test("gates are opened by their runs' names, as people write them", () => {
  const lists = ["band, small", "saw, all rounder;", "saw\nall_rounder", "all"];
  const asked = lists.map(system);
  expect(new Set(asked.map((one) => String(answerOf(one)[1]![1]))).size).toBeGreaterThan(2); // the lists are different things
  expect(wrong(asked, computed(asked))).toEqual([]);
});

/** What SOLVE refuses, and what the copy says in its first row. */
const REFUSED: readonly (readonly [asked: Asked, words: string])[] = [
  [system("plainer"), "the list of open gates names a run that the table does not have"],
  [system("saw; l"), "the list of open gates names a run that the table does not have"],
  [
    { ...system("saw"), runs: runs.map((row) => row.filter((_, at) => at !== 7 && at !== 8)) },
    "the table has no column Gate, so no gate can be opened",
  ],
  [
    {
      ...system(),
      curve: [
        [0, 4],
        [150, 3],
      ],
    },
    "the fan's curve ends before the ducts meet it",
  ],
  [
    {
      ...system(),
      curve: [
        [2000, 4],
        [2500, 3],
      ],
    },
    "the fan's curve begins beyond what the ducts let through",
  ],
  [
    {
      ...system("none"),
      curve: [
        [10, 4],
        [2500, 0],
      ],
      runs: runs
        .map((row) => row.map((cell, at) => (at === 8 && cell === 0.3 ? null : at === 8 && cell === 0.2 ? null : cell)))
        .map((row, at) => (at > 3 ? [...row.slice(0, 7), "shut", ...row.slice(8)] : row)),
    },
    "every end is shut, and the fan's curve does not begin at no airflow",
  ],
  [
    {
      ...system(),
      curve: [
        [0, "much"],
        [1000, 0],
      ],
    },
    "the fan's curve cannot be read: its heading and its rows must stay those of the day this copy was made",
  ],
];

test("what SOLVE refuses is refused with its reason in the first row", () => {
  const asked = REFUSED.map(([one]) => one);
  for (const one of asked) expect(() => answerOf(one)).toThrow();
  const values = computed(
    asked,
    asked.map(() => [[null]]),
  );
  const shown = (index: number, at: string): string => String(values.get(`Answer${index}`)!.get(at) ?? "");
  expect(REFUSED.map((_, index) => shown(index, NOTE))).toEqual(REFUSED.map(([, words]) => words));
  expect(REFUSED.map((_, index) => [shown(index, "A1"), shown(index, "B2")])).toEqual(REFUSED.map(() => ["#N/A", ""]));
});

test("what a member changes is solved anew: a gate, a diameter, the fan", () => {
  const changes: readonly (readonly [string, string, CellValue])[] = [
    ["Runs0", "H3", "open"],
    ["Runs1", "C2", 3],
    ["Fan2", "B3", 8],
    ["Fan3", "D1", "band, small"],
  ];
  const asked = [system(), system(), system(), system("saw")];
  const copy = copyOf(asked, asked.map(answerOf)).book.workbook;
  const later = inGrid(withFewEntries(changes.reduce<Workbook>((book, change) => typed(book, ...change), copy)));
  const now = asked.map((one, index): Asked => {
    const [sheet, at, value] = changes[index]!;
    const put = (table: Asked["runs"]): Asked["runs"] =>
      table.map((row, down) =>
        row.map((cell, across) => (at === `${"ABCDEFGHIJ"[across]!}${down + 1}` ? value : cell)),
      );
    if (at === "D1") return { ...one, open: value };
    return sheet.startsWith("Runs") ? { ...one, runs: put(one.runs) } : { ...one, curve: put(one.curve) };
  });
  expect(now.map((one, index) => answerOf(one)[6]![1] === answerOf(asked[index]!)[6]![1])).toEqual([
    false,
    false,
    false,
    false,
  ]);
  expect(wrong(now, later)).toEqual([]);
});

test("a fan's curve with a hump stays fixed; one that gets a hump later is told", () => {
  const humped = [
    [0, 4],
    [400, 6],
    [1500, 0],
  ];
  expect(copyOf([{ ...system(), curve: humped }], [[[1]]]).fixed.map(({ function: name, why }) => [name, why])).toEqual(
    [["SOLVE", "its fan's curve has a hump, and where ducts meet one plain formulas cannot find honestly"]],
  );
  const book = typed(copyOf([system()], [answerOf(system())]).book.workbook, "Fan0", "B2", 1);
  const values = inGrid(withFewEntries(book)).get("Answer0")!;
  expect([values.get("A1"), values.get("B2") ?? "", values.get(NOTE)]).toEqual([
    "#N/A",
    "",
    "the fan's curve rises somewhere, and then the ducts may meet it more than once: only the function itself finds every point",
  ]);
});

test("a table of more runs than plain formulas can carry stays fixed", () => {
  const many = [
    runs[0]!,
    ...Array.from({ length: 61 }, (_, at) => [`r${at}`, "fan", 4, 6, ...new Array<null>(6).fill(null)]),
  ];
  expect(copyOf([{ ...system(), runs: many }], [[[1]]]).fixed.map(({ why }) => why)).toEqual([
    "its runs table has more than 60 rows",
  ]);
});
