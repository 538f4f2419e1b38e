import { addNewSheets } from "../../../src/hosts/excel/addNewSheets";
import { pointsOfLines } from "../../../src/hosts/excel/measures";
import { readBook } from "../../../src/hosts/excel/readBook";
import { readLayout } from "../../../src/hosts/excel/readLayout";
import { cellAddress } from "../../../src/sheets/address";
import type { Calculated } from "../../../src/sheets/calculated";
import { LISTS_SHEET } from "../../../src/sheets/longLists";
import { placesIn } from "../../../src/sheets/rectangle";
import { lookOf } from "../../../src/sheets/styles";
import type { Sheet, SheetCell } from "../../../src/sheets/workbook";
import { answersOnes, record, type Recorder } from "../../support/excelRecorder/recorder";
import { cellToChange } from "../../support/excelRecorder/places";
import { sample, woods } from "./sample";
import { watching } from "./watch";

/** The sample as it stands in Excel; BUDGET fills two columns and two rows. */
async function withSample(spilledFormulas: "anchor's" | "values"): Promise<Recorder> {
  const excel = record();
  excel.behaviour.spilledFormulas = spilledFormulas;
  excel.behaviour.calculate = (formula, ...rest) =>
    formula.includes("BUDGET")
      ? [
          ["Run", "Notes"],
          [7.5, ""],
        ]
      : answersOnes(formula, ...rest);
  await addNewSheets(async () => sample, watching().watch);
  return excel;
}

const sheetIn = ({ workbook }: Calculated, name: string): Sheet =>
  workbook.sheets.find((sheet) => sheet.name === name)!;

/** What a cell says, its look spelled out, and its note as far as an input message holds it. */
const plain = ({ style, note, ...cell }: SheetCell): [string, unknown] => [
  cell.at,
  {
    ...cell,
    ...(style === undefined ? {} : { look: lookOf(style) }),
    ...(note === undefined ? {} : { note: note.slice(0, 254) }),
  },
];

const byCell = (cells: readonly SheetCell[]) => Object.fromEntries(cells.map(plain));

describe.each(["anchor's", "values"] as const)(
  "readBook, where a filled cell answers the %s as its formula",
  (kind) => {
    test.each(sample.sheets.map((sheet) => [sheet.name, sheet] as const))(
      "gives back each cell of %s",
      async (name, sheet) => {
        await withSample(kind);
        expect(byCell(sheetIn(await readBook(), name).cells)).toEqual(byCell(sheet.cells));
      },
    );

    test("says how far a formula fills, and what it fills with", async () => {
      await withSample(kind);
      const { shown } = await readBook();
      expect(Object.fromEntries(shown.get("Answers")!)).toEqual({
        A2: { value: "Run", fills: { rows: 2, columns: 2 } },
        B2: { value: "Notes" },
        A3: { value: 7.5 },
        D2: { value: 0 },
      });
    });
  },
);

describe("readBook", () => {
  test("gives back names, lists, hints, flags, tables, sizes and print", async () => {
    await withSample("values");
    const book = await readBook();
    const wood = sheetIn(book, "Wood & air");
    expect(book.workbook.name).toBe("Mine");
    expect(book.workbook.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Wood & air", "Answers"]);
    expect(book.workbook.names).toEqual(sample.names);
    expect([...wood.lists].sort((one, other) => (one.range < other.range ? -1 : 1))).toEqual([
      { range: "A4:A6", choices: woods, strict: false },
      { range: "B1", choices: ["IP", "SI"], strict: true },
      { range: "F1", choices: ["yes, all", "no"], strict: false },
    ]);
    expect([...(wood.hints ?? [])].sort((one, other) => (one.range < other.range ? -1 : 1))).toEqual([
      { range: "A4:A6", text: "A wood that does not exist." },
      { range: "B4:B6", text: "How wide it is." },
    ]);
    const { flags, tables, print, frozen, gridlines, tallRows } = sample.sheets[0]!;
    expect(wood).toMatchObject({ flags, tables, print, frozen, gridlines, tallRows });
    expect(wood.columns.slice(0, 3)).toEqual(sample.sheets[0]!.columns);
    expect(sheetIn(book, "Answers").frozen).toEqual({ rows: 2, columns: 0 });
  });

  test("tells an error from the text of its name, and keeps an error that a file cannot hold by another name", async () => {
    const excel = record();
    excel.behaviour.calculate = (formula) => (formula.includes("1") ? "#N/A" : "#BUSY!");
    excel.fill("Sheet1", "A1:C1", [["=1", "=2", "'#N/A"]]);
    const { shown } = await readBook();
    expect(Object.fromEntries(shown.get("Sheet1")!)).toEqual({
      A1: { value: { error: "#N/A" } },
      B1: { value: { error: "#N/A", message: "#BUSY!" } },
      C1: { value: "#N/A" },
    });
  });

  test("leaves out the sheet of long lists under the name that it has through a file, and a user's hidden sheet stays", async () => {
    const excel = await withSample("values");
    excel.fill("Lists of mine", "A1", [["beech"]]).visibility = "VeryHidden"; // "Lists..." was taken for ours before
    const { workbook, shown } = await readBook();
    expect(excel.book.sheets.map(({ name }) => name)).toContain(LISTS_SHEET);
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Wood & air", "Answers", "Lists of mine"]);
    expect([...shown.keys()]).toEqual(workbook.sheets.map(({ name }) => name));
  });

  test("leaves out hidden names and names of more than a cell", async () => {
    const excel = record();
    excel.book.names.push(
      { name: "hidden", formula: "=Sheet1!$A$1", visible: false },
      { name: "area", formula: "=Sheet1!$A$1:$B$2", visible: true },
      { name: "constant", formula: "=3", visible: true },
      { name: "one", formula: "=Sheet1!$A$1", visible: true },
    );
    expect((await readBook()).workbook.names).toEqual([{ name: "one", sheet: "Sheet1", at: "A1" }]);
  });

  // office-js issues 1831 and 2834: Excel for Windows says what a name points to in the style and the language of its user
  test.each([
    ["R", "C"],
    ["Z", "S"], // German
    ["Ř", "S"], // Czech, from memory
  ])("gives back the same names where Excel counts rows and columns by %s and %s", async (...letters) => {
    const excel = record();
    excel.book.names.push(
      { name: "far", formula: "='My ducts'!$AB$120", visible: true },
      { name: "area", formula: "=Sheet1!$A$1:$B$2", visible: true },
      { name: "constant", formula: "=3", visible: true },
    );
    excel.fill("My ducts", "A1", [["words"]]);
    excel.book.countedBy = letters;
    expect((await readBook()).workbook.names).toEqual([{ name: "far", sheet: "My ducts", at: "AB120" }]);
  });

  test("a cell of the user's that nobody styled has no style, one of its own look keeps it", async () => {
    const excel = record();
    const sheet = excel.fill("Sheet1", "A1:B1", [["plain", "loud"]]);
    sheet.cells.get("B1")!.look = { "font.color": "#FF0000", "font.size": 20 };
    expect((await readBook()).workbook.sheets[0]!.cells).toEqual([
      { at: "A1", value: "plain" },
      { at: "B1", value: "loud", style: { ink: "#ff0000", size: 20 } },
    ]);
  });

  test("reads twenty thousand cells in requests that are not too large", async () => {
    const excel = record();
    const rows = Array.from({ length: 4000 }, (_, row) =>
      Array.from({ length: 5 }, (__, column) => `words of ${row} ${column}`),
    );
    excel.fill("Sheet1", "A1:E4000", rows);
    const { shown } = await readBook();
    expect(shown.get("Sheet1")!.size).toBe(20_000);
    expect(shown.get("Sheet1")!.get("E4000")).toEqual({ value: "words of 3999 4" });
  });

  // docs/excel/performance.md of office-js-docs-pr: on the web an answer holds 5 MB
  test("reads a row that is coloured to its end in requests that are not too large", async () => {
    const excel = record();
    const sheet = excel.fill("Sheet1", "A1:C2", [
      ["words", 1, 2],
      ["more", 3, 4],
    ]);
    for (const { row, column } of placesIn({ top: 2, bottom: 2, left: 1, right: 16384 }).flat())
      cellToChange(sheet, cellAddress(column, row)).look = { "fill.color": "#FFFF00" };
    const { workbook, shown } = await readBook();
    expect(Object.fromEntries(shown.get("Sheet1")!)).toEqual({
      A1: { value: "words" },
      B1: { value: 1 },
      C1: { value: 2 },
      A2: { value: "more" },
      B2: { value: 3 },
      C2: { value: 4 },
    });
    expect(workbook.sheets[0]!.cells.filter(({ style }) => style !== undefined)).toHaveLength(16384);
  });

  test("reads the heights of many rows in requests that are not too large", async () => {
    const rows = 180_000;
    record().book.sheets[0]!.heights.set(rows - 5, pointsOfLines(3));
    const layout = await Excel.run((context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      return readLayout(context, sheet, sheet.getRange(`A1:A${rows}`));
    });
    expect(layout.tallRows).toEqual([{ row: rows - 5, lines: 3 }]);
  });

  test("changes nothing", async () => {
    const excel = await withSample("values");
    const before = JSON.stringify([...excel.book.sheets[1]!.cells]);
    await readBook();
    expect(JSON.stringify([...excel.book.sheets[1]!.cells])).toBe(before);
  });
});

test("a sheet that is filled to its last cell is refused by its name, not read for hours", async () => {
  const excel = record();
  const sheet = excel.fill("Sheet1", "A1", [[1]]);
  excel.fill("Sheet1", "XFD1048576", [[1]]);
  await expect(readBook()).rejects.toThrow(
    'The sheet "Sheet1" is filled as far as XFD1048576, farther than can be read here: delete what stands far from the rest',
  );
  sheet.cells.delete("XFD1048576");
  expect((await readBook()).workbook.sheets[0]!.cells).toMatchObject([{ at: "A1", value: 1 }]);
});
