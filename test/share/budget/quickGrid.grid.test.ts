/**
 * BUDGET as plain formulas, computed in the grid of the local sheet (an engine that is not ours), against BUDGET itself: a small cut
 * of what the other engines are asked, quick enough for `npm run mutate`.
 */
import type { CellValue } from "../../../src/sheets/workbook";
import { differences } from "../sampleBooks";
import { answerOf, copied, isRefused, type Table, wrongIn } from "./inGrid";
import { hardTable, seededTable } from "./seededTable";

const without = (table: Table, column: string): Table => {
  const at = table[0]!.indexOf(column);
  return table.map((row) => row.filter((_, index) => index !== at));
};

const twoRuns: Table = [
  ["Run", "To", "Diameter", "Length", "Fittings", "K", "Hood", "Airflow"],
  ["saw", "main", 4, 6, "elbow 1.5; branch 30", 0.1, "plain end", 350],
  ["main", "fan", 6, 5, "0.3 x2", null, null, null],
];

test("a few shut and open runs in I-P", () =>
  expect(wrongIn(without(seededTable(3, 4, "IP"), "Fittings"), "IP")).toEqual([]));
test("a few more in SI, in thin air", () =>
  expect(wrongIn(without(seededTable(5, 6, "SI"), "Fittings"), "SI", 0.9)).toEqual([]));
test("each hard case once", () => expect(wrongIn(hardTable, "SI")).toEqual([]));
test("lists of fittings", () => expect(wrongIn(twoRuns, "IP")).toEqual([]));
test("no hood that asks for air", () =>
  expect(wrongIn([...twoRuns.slice(0, 1), ["saw", "fan", 4, 6, null, null, "plain end", null]], "IP")).toEqual([]));

const LOOP = "To must lead to the fan: these runs join each other in a loop";

/** What stands wrong in a row, and what the copy says of that row. */
const REFUSED: readonly (readonly [column: string, value: CellValue, words: string])[] = [
  ["Run", null, "Run must be a name"],
  ["Run", "FAN", 'Run must be another word than "fan"'],
  ["Run", "Main", LOOP], // as the name of the first row, which then joins itself
  ["Side", "up", 'Side must be "suction" or "discharge"'],
  ["To", "chimney", 'To must be the name of another suction run, or "fan"'],
  ["To", "saw", LOOP],
  ["Diameter", "wide", "Diameter must be a number above 0"],
  ["Diameter", -4, "Diameter must be a number above 0"],
  ["Diameter", 20_001, "Diameter must be a number above 0"],
  ["Length", -1, "Length must be a number from 0 to 10,000 ft (3048 m)"],
  [
    "Flex",
    "long",
    "Flex must be a number from 0 to 10,000 ft (3048 m), or one with its kind and how it lies, such as: 10 compressed 15%",
  ],
  // what Excel makes of 1/2 as it is typed: the 2nd of January 2026, a day by its number
  ["Length", 46_024, "Length must be a number from 0 to 10,000 ft (3048 m)"],
  [
    "Flex",
    46_024,
    "Flex must be a number from 0 to 10,000 ft (3048 m), or one with its kind and how it lies, such as: 10 compressed 15%",
  ],
  ["K", 46_024, "Fittings and K must be names in the tables of this copy, or numbers from 0 to 10000"],
  [
    "Hood",
    46_024,
    "Hood must be a name in the tables of this copy, or a number from 0 to 10000; or blank beside a port suction and its airflow",
  ],
  [
    "Material",
    "cheese",
    "Material must be a name in the tables of this copy, or a roughness of at most a fifth of the diameter",
  ],
  [
    "Material",
    21,
    "Material must be a name in the tables of this copy, or a roughness of at most a fifth of the diameter",
  ],
  ["Material", 0, 'Material must be blank for the usual one, or "smooth" where 0 is meant'],
  ["Hood", 0, "Hood must be blank where no hood is, or its K above 0"],
  ["K", -0.1, "Fittings and K must be names in the tables of this copy, or numbers from 0 to 10000"],
  [
    "Hood",
    "cheese",
    "Hood must be a name in the tables of this copy, or a number from 0 to 10000; or blank beside a port suction and its airflow",
  ],
  [
    "Hood",
    -2,
    "Hood must be a name in the tables of this copy, or a number from 0 to 10000; or blank beside a port suction and its airflow",
  ],
  ["Airflow", -1, "Airflow must be a number from 0 on"],
  ["Gate", "ajar", 'Gate must be "open", "shut" or blank'],
  ["Leak", "cheese", "Leak must be an area smaller than the duct, or a gate's condition in the tables of this copy"],
  // (pi/4) x 100^2 mm² is 7854 mm², and an opening of 0.6 of 13100 mm² passes 7860
  ["Leak", 13_100, "Leak must be an area smaller than the duct, or a gate's condition in the tables of this copy"],
  ["Device loss", -1, "Device loss must be a number from 0 on"],
  ["Device airflow", null, "Device airflow must stand beside a device loss, and its exponent be from 0.5 to 2.5"],
  ["Device exponent", 0.4, "Device airflow must stand beside a device loss, and its exponent be from 0.5 to 2.5"],
  ["Device exponent", 2.6, "Device airflow must stand beside a device loss, and its exponent be from 0.5 to 2.5"],
  ["Dust", "cheese", "Dust must be a name in the tables of this copy"],
  // a slip of the hand is told the name that it comes nearest to
  [
    "Hood",
    "Plian-end",
    'Hood must be a name in the tables of this copy, or a number from 0 to 10000; or blank beside a port suction and its airflow (nearest: "plain end")',
  ],
  [
    "Material",
    "galvanised stel",
    'Material must be a name in the tables of this copy, or a roughness of at most a fifth of the diameter (nearest: "galvanised steel")',
  ],
  ["Dust", "wood chip", 'Dust must be a name in the tables of this copy (nearest: "wood chips")'],
];

const HEADER = [
  ...["Run", "To", "Diameter", "Length", "Flex", "Material", "K", "Hood", "Airflow", "Gate", "Leak"],
  ...["Device loss", "Device airflow", "Device exponent", "Side", "Dust"],
];
const SAW: CellValue[] = ["saw", "main", 100, 3, 1, "pvc pipe", 0.1, 0.9, 600, "open", 50, 100, 800, 2, null, null];
const OTHERS: CellValue[][] = [
  ["main", "fan", 150, 3],
  ["chimney", null, 150, 3, null, null, null, null, null, null, null, null, null, null, "discharge"],
].map((row) => [...row, ...new Array<CellValue>(HEADER.length - row.length).fill(null)]);
const withSaw = (column: string, value: CellValue): Table => [
  HEADER,
  SAW.map((own, at) => (HEADER[at] === column ? value : own)),
  ...OTHERS,
];

/** What is taken: the ends of limits, and words in other spellings. */
const TAKEN: readonly (readonly [column: string, value: CellValue])[] = [
  ["Diameter", 20_000],
  ["Material", 20],
  ["Leak", 13_080], // 0.6 x 13080 is 7848, below 7854
  ["Device exponent", 0.5],
  ["Device exponent", 2.5],
  ["Gate", " SHUT"],
  ["Airflow", null],
  ["Material", " PVC_pipe"],
];

test("what BUDGET refuses is refused with its reason beside the row, and what it takes at the limits is taken", () => {
  const refused = REFUSED.map(([column, value]) => withSaw(column, value));
  for (const table of refused) expect(isRefused(table, "SI")).toBe(true);
  const taken = TAKEN.map(([column, value]) => withSaw(column, value));
  const answers = taken.map((table) => answerOf(table, "SI"));
  const values = copied([...taken, ...refused], "SI", [...answers, ...refused.map(() => [[null]])]);
  expect(answers.flatMap((answer, index) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
  const shown = (index: number, at: string): string =>
    String(values.get(`Answer${taken.length + index}`)!.get(at) ?? "");
  expect(REFUSED.map(([column, value], index) => [column, value, shown(index, "M2")])).toEqual(REFUSED);
  // the answer stands, and the wrong row is an error that is no #N/A
  expect(REFUSED.map((_, index) => shown(index, "A1"))).toEqual(REFUSED.map(() => "Run"));
  expect(REFUSED.map((_, index) => shown(index, "B2"))).toEqual(
    REFUSED.map((): unknown => expect.stringMatching(/^#(?!N.A)/)),
  );
  expect(REFUSED.map((_, index) => shown(index, "B1"))).toEqual(REFUSED.map(() => "Airflow (m³/h)"));
});
