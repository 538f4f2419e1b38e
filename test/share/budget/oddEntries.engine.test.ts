/** What people type into a runs table, odd as it is: the copy takes what BUDGET takes, and nothing that it refuses. */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import type { CellValue } from "../../../src/sheets/workbook";
import { hardRecalculation } from "../../support/hardRecalculation";
import { hasLibreOffice } from "../../support/libreOffice";
import { differences } from "../sampleBooks";
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
  ["Fittings", "elbow 1.25; elbow 1.50; branch 22.5"],
  ["Hood", "1,4"],
  ["Hood", "1,500"],
  ["Diameter", "100"],
  ["Length", " 2.75 "],
  ["Flex", "1,5 smooth-bore"],
  ["Airflow", ".5"],
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
  const entries = [...TAKEN, ...REFUSED, ...MORE_REFUSED];
  const tables = entries.map(tableOf);
  const answers = tables.map(said);
  expect(entries.map(([column, value], index) => [column, value, answers[index] !== null])).toEqual(
    entries.map(([column, value], index) => [column, value, index < TAKEN.length]),
  );
  const values = await hardRecalculation(
    copyOf(
      tables,
      "SI",
      answers.map((answer) => answer ?? [[null]]),
    ),
  );
  const wrong = answers.flatMap((answer, index) => {
    const sheet = `Answer${index}`;
    const what = entries[index]!.join(" ");
    if (answer !== null) return differences(sheet, "A1", answer, values).map((one) => `${what}: ${one}`);
    const first = String(values.get(sheet)!.get("A1"));
    return first.startsWith("#") ? [] : [`${what}: ${first}, though BUDGET refuses it`];
  });
  expect(wrong).toEqual([]);
});
