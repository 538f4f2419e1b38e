/** What people type into a runs table, odd as it is: the copy takes what BUDGET takes, and nothing that it refuses. */
import "../../support/customFunctions";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import { hardRecalculation } from "../../support/hardRecalculation";
import { hasLibreOffice } from "../../support/libreOffice";
import { differences } from "../sampleBooks";
import { typed } from "../solve/solvedCopies";
import { answerOf, copyOf, type Table } from "./inGrid";

const HEADER = [
  ...["Run", "To", "Diameter", "Length", "Airflow", "Fittings", "Hood", "Material", "Flex", "Leak", "Dust"],
  ...["K", "Device loss", "Device airflow", "Device exponent"],
];
const SAW: readonly CellValue[] = [
  ...["saw", "main", 100, 3, 600, "elbow 1.5", 0.9, null, null, null, null],
  ...[0.1, 100, 800, 2],
];

const TAKEN: readonly (readonly [column: string, value: CellValue])[] = [
  ["Fittings", "elbow 1.5x2"],
  ["Fittings", "elbow 1.5×2"],
  ["Fittings", "elbow 1.5 X 2; 0.25"],
  ["Fittings", "0.4x2"],
  ["Fittings", "0.1; 0.2; 0.1; 0.2; 0.1; 0.2; 0.1; 0.2; elbow 2; 0.1"],
  ["Fittings", "elbow 1.85; elbow 1.70; branch 32.5"],
  ["Hood", "1,4"],
  ["Hood", "1,500"],
  ["Diameter", "100"],
  ["Length", " 2.75 "],
  ["Flex", "1,5 smooth-bore"],
  ["Flex", "1.500"],
  ["Hood", "1.500"],
  ["Material", "0.150"],
  ["Airflow", ".7"],
];
/** What a member types into a copy that was made without it: on the line between printed points, or another way to write one. */
const TYPED: readonly (readonly [column: string, value: CellValue])[] = [
  ["Fittings", "elbow 1.25"],
  ["Fittings", "elbow 1.50; Elbow-segmented 1.05 x3"],
  ["Fittings", "branch 22.5"],
  ["Fittings", "wye 12,5; 0.1"],
  ["Fittings", "bellmouth 0.11"],
  ["Fittings", "elbow smooth 1.6x2; contraction abrupt .3"],
  ["Fittings", "elbow drain 67.5°"],
];
/** What BUDGET computes and the copy does not: it says so, and shows no number. */
const TOLD: readonly (readonly [column: string, value: CellValue, words: string])[] = [
  ["Fittings", "elbow 1.25 75", "Fittings and K must be names in the tables of this copy"],
  ["Fittings", "mitre 50", "Fittings and K must be names in the tables of this copy"],
  ["Fittings", "expansion 0.33", "Fittings and K must be names in the tables of this copy"],
  ["Hood", "bellmouth 0.11", "Hood must be a name in the tables of this copy"],
];
/** What both refuse, near as it comes to an entry. */
const NEAR = [
  "elbow 9",
  "elbow 0.4",
  "branch 95",
  "elbow -1",
  "elbow - 1.25",
  "elbow 1.2.5",
  "elbows 1.25",
  "branch 22.5 22.5",
];
const HOSTILE: readonly CellValue[] = [
  "1/2",
  "5%",
  "$5",
  "12:30",
  true,
  "1,500",
  "1 2",
  "1.2.3",
  ".",
  "a*",
  "?",
  "1.200",
];
const NUMBERS = ["Diameter", "Length", "Airflow", "K", "Device loss", "Device airflow", "Device exponent"];
const REFUSED = [...NUMBERS, "Material", "Leak"].flatMap((column) => HOSTILE.map((value) => [column, value] as const));
const MORE_REFUSED = [
  ...(["Fittings", "Hood", "Dust"] as const).flatMap((column) =>
    ["1/2", "5%", "$5", "12:30", true, "wood*", "elbow*", "x2"].map((value) => [column, value] as const),
  ),
  ["Material", "galvani*"] as const,
  ["Leak", "open*"] as const,
];

const MAIN: Readonly<Record<string, CellValue>> = { Run: "main", To: "fan", Diameter: 500, Length: 3 };

type Entry = readonly [column: string, value: CellValue];

/** A machine of its own at the main for each entry, and a sound one, since what is wrong in one row changes no other. */
const tableOf = (entries: readonly Entry[]): Table => [
  HEADER,
  ...[...entries, ["Run", "sound"] as const].map(([column, value], index) =>
    HEADER.map((one, at) => (one === column ? value : one === "Run" ? `saw ${index}` : SAW[at]!)),
  ),
  HEADER.map((one) => MAIN[one] ?? null),
];
const withoutEntries = (entries: readonly Entry[]): Table =>
  tableOf(entries.map((_, index) => ["Run", `saw ${index}`]));

const rowOf = (index: number): number => index + 2; // of an entry, in the table and in the answer
const SOUND = "600"; // its airflow

/** The entries of a table that BUDGET refuses. */
const refusedOf = (entries: readonly Entry[]): readonly Entry[] => {
  const answer: readonly (readonly unknown[])[] = answerOf(tableOf(entries), "SI");
  return entries.filter((_, index) => answer[rowOf(index) - 1]!.some(isWrongValue));
};
const isWrongValue = (cell: unknown): boolean =>
  cell instanceof CustomFunctions.Error && cell.code === CustomFunctions.ErrorCode.invalidValue;

(hasLibreOffice ? test : test.skip)("the copy computes what BUDGET computes and refuses what it refuses", async () => {
  const refused: readonly Entry[] = [...REFUSED, ...MORE_REFUSED];
  const told = TOLD.map(([column, value]): Entry => [column, value]);
  const near = NEAR.map((value): Entry => ["Fittings", value]);
  expect(refusedOf(refused)).toEqual(refused);
  expect(refusedOf([...told, ...near])).toEqual(near);

  const before = [tableOf([...TAKEN, ...TYPED.map((): Entry => ["Flex", null])]), tableOf(refused), withoutEntries([...told, ...near])]; // prettier-ignore
  const copy = copyOf(before, "SI", before.map(() => [[null]])); // prettier-ignore
  const typedIn = (book: Workbook, sheet: string, entries: readonly Entry[], first: number): Workbook =>
    entries.reduce<Workbook>(
      (one, [column, value], index) =>
        typed(one, sheet, cellAddress(1 + HEADER.indexOf(column), rowOf(first + index)), value),
      book,
    );
  const values = await hardRecalculation(
    typedIn(typedIn(copy, "Runs0", TYPED, TAKEN.length), "Runs2", [...told, ...near], 0),
  );
  expect(differences("Answer0", "A1", answerOf(tableOf([...TAKEN, ...TYPED]), "SI"), values)).toEqual([]);

  const shown = (table: number, index: number): string[] =>
    HEADER.slice(2).map((_, column) =>
      String(values.get(`Answer${table}`)!.get(cellAddress(2 + column, rowOf(index))) ?? ""),
    );
  const airOf = (table: number, entries: readonly Entry[]): unknown[] =>
    entries.map((entry, index) => [...entry, shown(table, index)[0]]);
  const isRefused = (entry: Entry): unknown[] => [...entry, expect.stringMatching(/^#(?!N.A)/)];
  expect(airOf(1, refused)).toEqual(refused.map(isRefused));
  expect(airOf(2, [...told, ...near]).slice(told.length)).toEqual(near.map(isRefused));
  for (const [table, index] of [[1, refused.length], [2, told.length + near.length]] as const) expect(shown(table, index)[0]).toBe(SOUND); // prettier-ignore
  TOLD.forEach(([, , words], index) => {
    expect(shown(2, index).filter((one) => one.startsWith(words))).toHaveLength(1);
    expect(shown(2, index).filter((one) => /^-?[\d.]/.test(one))).toEqual([]); // no number
  });
});
