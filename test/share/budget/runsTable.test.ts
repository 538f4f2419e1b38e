/** How a copy finds the columns and rows of a runs table. */
import { runsTable } from "../../../src/share/budget/runsTable";
import type { ShownValue } from "../../../src/share/translate/translation";

const HEADER: ShownValue[] = ["Run", "To", "Diameter"];
const SAW: ShownValue[] = ["saw", "fan", 100];

/** The table from C5 on, in a range of so many rows below its header. */
const read = (shown: readonly (readonly ShownValue[])[], below = shown.length - 1) =>
  runsTable(
    { sheet: "My Runs", top: 5, left: 3, bottom: 5 + below, right: 3 + (shown[0] ?? []).length - 1 },
    shown,
    (column) => column,
  );

test("columns by their headers, whatever their units, case and order; other columns are passed over", () => {
  const table = read([
    ["Note", "diameter [mm]", 7, null, "TO ", "Run", "Flex (m, or ft)"],
    [null, 100, null, null, "fan", "saw"],
  ]);
  if (typeof table === "string") throw new Error(table);
  expect(table.columns).toEqual(["Run", "To", "Diameter", "Flex"]);
  expect(table.columns.map(table.header)).toEqual(["$H$5", "$G$5", "$D$5", "$I$5"].map((at) => `'My Runs'!${at}`));
  expect([table.range, table.first]).toEqual(["'My Runs'!$C$5:$I$6", "'My Runs'!$C$5"]);
});

test("the names are counted as far below the table as nothing stands there", () =>
  expect(read([HEADER, SAW])).toMatchObject({ names: "'My Runs'!$C$5:$C$9" })); // three rows below row 6

test.each<[string, ShownValue[][]]>([
  [
    "its runs table has no column Run",
    [
      ["To", "Diameter"],
      ["fan", 100],
    ],
  ],
  [
    "its runs table has no column To",
    [
      ["Run", "Diameter"],
      ["saw", 100],
    ],
  ],
  [
    "its runs table has no column Diameter",
    [
      ["Run", "To"],
      ["saw", "fan"],
    ],
  ],
  ["its runs table has no column Run", [[]]],
  ["its runs table has no column Run", []],
  ["its runs table has the column To twice", [["Run", "To", "Diameter", "to"], SAW]],
  ["its runs table has the column Gate twice", [[...HEADER, "Gate", "gate (open)"], SAW]],
  ["its runs table has no row below the header", [HEADER]],
  ["its runs table has more than 600 rows", [HEADER, ...new Array<ShownValue[]>(601).fill(SAW)]],
])("%s", (sentence, shown) => expect(read(shown)).toBe(sentence));

test("a column for GAINS alone may stand twice, since it is not read", () =>
  expect(typeof read([[...HEADER, "Device clean loss", "Device clean loss"], SAW])).toBe("object"));

test.each([
  ["as many rows as the range has", [HEADER, SAW, SAW], 2, 2],
  ["forty spare rows below the last that is filled", [HEADER, SAW, SAW], 900, 42],
  ["a row of which one cell is filled counts", [HEADER, SAW, [null, "", "x"]], 900, 42],
  ["blank rows between count", [HEADER, [null, "", null], SAW, ["", "", null]], 900, 42],
  ["forty where nothing is filled yet", [HEADER, [null, null, null]], 900, 40],
  ["six hundred and the spare ones", [HEADER, ...new Array<ShownValue[]>(600).fill(SAW)], 900, 640],
  ["no more than the range has", [HEADER, ...new Array<ShownValue[]>(600).fill(SAW)], 600, 600],
])("%s", (_, shown, below, rows) => expect(read(shown, below)).toMatchObject({ rows }));
