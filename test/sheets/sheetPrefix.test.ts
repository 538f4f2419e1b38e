import fc from "fast-check";
import { readRange } from "../../src/sheets/rangeRef";
import { sheetPrefix } from "../../src/sheets/sheetPrefix";
import { inGrid } from "../support/grid";
import { sheetOf } from "../support/sheetOf";

/**
 * Names that Excel put in quotes when it wrote them into files, as collected by the project XlsxWriter
 * (xlsxwriter/test/utility/test_quote_sheetname.py, "extracted from Excel files"), read on 2026-11-27.
 */
const QUOTED_BY_EXCEL = [
  ...["Sheet-1", "Sheet 1", "Sheet#1", "#Sheet1", "Sheet'1", "Sheet''1", ".", " ", "    ", "Sheet⟦1", "Sheet᠅1"],
  ...[".Sheet1", "1Sheet1", "-Sheet1", "😀Sheet", "1", "2", "1234", "12345678"],
  ...["A1", "a1", "XFD1", "xfd1", "A1048576", "B1048576", "XFD048576", "XFD1048576", "XFD01048576"],
  ...["c", "C", "r", "R", "C8", "rc", "RC", "R4C", "R5C", "rc2", "RC2", "RC8", "R1C1", "r1c2", "rc2z", "R1C1b"],
  ...["R1C1R", "C16384", "C16385", "C16386", "C16384Z", "RC16383", "R1048576", "R1C16384", "R1C16385", "RC16384Z"],
  ...["R1048576C", "R1C16384Z", "R1048575C1", "R1048576C1", "R1048576C16384", "R1048576C16385"],
];

test.each(QUOTED_BY_EXCEL)("the sheet %p, which Excel quotes, is quoted", (name) => {
  expect(sheetPrefix(name)).toBe(`'${name.replaceAll("'", "''")}'!`);
});

// TRUE and FALSE are values; Z, S and ZS are row and column where Excel speaks German, L and C in French
test.each(["TRUE", "false", "Q1", "ABC1", "Z", "ZS", "L", "Größe", "_x", "Runs 2", "Bob's"])(
  "the sheet %p is quoted, which is never wrong",
  (name) => expect(sheetPrefix(name)).toBe(`'${name.replaceAll("'", "''")}'!`),
);

test.each(["Runs", "Fan", "budget", "XFD", "RCZ", "Sheet1", "Runs12"])("the sheet %s stands as it is", (name) =>
  expect(sheetPrefix(name)).toBe(`${name}!`),
);

test("a cell of any of these sheets is read back as its own", () => {
  const name = fc.oneof(fc.constantFrom(...QUOTED_BY_EXCEL, "TRUE", "Q1"), fc.stringMatching(/^[^[\]:\\/?*]{1,31}$/));
  fc.assert(
    fc.property(name, (sheet) =>
      expect(readRange(`${sheetPrefix(sheet)}B4`, "Here")).toEqual({ sheet, top: 4, left: 2, bottom: 4, right: 2 }),
    ),
  );
});

test("the grid finds the cell of each sheet under its name", () => {
  const names = [
    "Q1",
    "TRUE",
    "R1C1",
    "rc",
    "A1",
    "12",
    "Sheet 1",
    "Sheet1",
    "été",
    "Sheet-1",
    "Fan",
    "XFD",
    "Bob’s",
    "IF",
  ];
  const sheets = names.map((name, index) => sheetOf(name, [{ at: "B4", value: index + 1 }]));
  const asking = names.map((name, index) => ({ at: `A${index + 1}`, formula: `=${sheetPrefix(name)}B4` }));
  const shown = inGrid({ name: "Names", names: [], sheets: [sheetOf("Asking", asking), ...sheets] }).get("Asking")!;
  expect([...shown.values()]).toEqual(names.map((_, index) => index + 1));
});
