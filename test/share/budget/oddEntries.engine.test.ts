/** What people type into a runs table, odd as it is: the copy takes what BUDGET takes, and nothing that it refuses. */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import { hardRecalculation } from "../../support/hardRecalculation";
import { hasLibreOffice } from "../../support/libreOffice";
import { differences } from "../sampleBooks";
import { typed } from "../solve/solvedCopies";
import { copyOf, type Table } from "./inGrid";

const HEADER = [
  ...["Run", "To", "Diameter", "Length", "Airflow", "Fittings", "Hood", "Material", "Flex", "Leak", "Dust"],
  ...["K", "Device loss", "Device airflow", "Device exponent"],
];
const SAW: readonly CellValue[] = [
  ...["saw", "fan", 100, 3, 600, "elbow 1.5", 0.9, null, null, null, null],
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
  ["Airflow", ".5"],
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
const HOSTILE: readonly CellValue[] = ["1/2", "5%", "$5", "12:30", true, "1,500", "1 2", "1.2.3", ".", "a*", "?"];
const NUMBERS = ["Diameter", "Length", "Airflow", "K", "Device loss", "Device airflow", "Device exponent"];
const REFUSED = [...NUMBERS, "Material", "Leak"].flatMap((column) => HOSTILE.map((value) => [column, value] as const));
const MORE_REFUSED = [
  ...(["Fittings", "Hood", "Dust"] as const).flatMap((column) =>
    ["1/2", "5%", "$5", "12:30", true, "wood*", "elbow*", "x2"].map((value) => [column, value] as const),
  ),
  ["Material", "galvani*"] as const,
  ["Leak", "open*"] as const,
];

const tableOf = ([column, value]: readonly [string, CellValue]): Table => [
  HEADER,
  SAW.map((own, at) => (HEADER[at] === column ? value : own)),
];
const said = (table: Table): CellValue[][] | null => {
  try {
    const answer = budget(table as never, undefined, [["SI"]]);
    return answer.flat().some((cell) => typeof cell === "object" && cell !== null) ? null : (answer as CellValue[][]);
  } catch {
    return null;
  }
};

(hasLibreOffice ? test : test.skip)("the copy computes what BUDGET computes and refuses what it refuses", async () => {
  const known = [...TAKEN, ...REFUSED, ...MORE_REFUSED];
  const later = [...TYPED, ...TOLD.map(([column, value]) => [column, value] as const), ...NEAR.map((value) => ["Fittings", value] as const)]; // prettier-ignore
  const entries = [...known, ...later];
  const answers = entries.map((entry) => said(tableOf(entry)));
  const isTaken = new Set([...TAKEN, ...later.slice(0, TYPED.length + TOLD.length)]);
  expect(entries.map(([column, value], index) => [column, value, answers[index] !== null])).toEqual(
    entries.map((entry) => [...entry, isTaken.has(entry)]),
  );
  const before = [...known.map(tableOf), ...later.map((): Table => [HEADER, SAW])];
  const copy = copyOf(
    before,
    "SI",
    before.map((table, index) => (index < known.length ? answers[index]! : said(table)) ?? [[null]]),
  );
  const values = await hardRecalculation(
    later.reduce<Workbook>(
      (book, [column, value], index) =>
        typed(book, `Runs${known.length + index}`, cellAddress(1 + HEADER.indexOf(column), 2), value),
      copy,
    ),
  );
  const told = new Map(TOLD.map(([, , words], index) => [known.length + TYPED.length + index, words]));
  const wrong = answers.flatMap((answer, index) => {
    const sheet = `Answer${index}`;
    const what = entries[index]!.join(" ");
    const words = told.get(index);
    if (words !== undefined) {
      const shown = [...values.get(sheet)!.values()];
      return shown.some((one) => String(one).startsWith(words)) && shown.every((one) => typeof one === "string")
        ? []
        : [`${what}: ${shown.join(", ")}`];
    }
    if (answer !== null) return differences(sheet, "A1", answer, values).map((one) => `${what}: ${one}`);
    const air = String(values.get(sheet)!.get("B2"));
    return /^#(?!N.A)/.test(air) ? [] : [`${what}: ${air}, though BUDGET refuses it`];
  });
  expect(wrong).toEqual([]);
});
