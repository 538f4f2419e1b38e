import fc from "fast-check";
import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { cellAddress } from "../../../src/sheets/address";
import type { Calculated } from "../../../src/sheets/calculated";
import { lookOf, styles, type StyleName } from "../../../src/sheets/styles";
import type { Sheet, SheetCell } from "../../../src/sheets/workbook";
import { sheetOf } from "../../support/sheetOf";
import { bookOf, sampleBook } from "./sampleBook";

const again = async (book: Calculated): Promise<Calculated> => readBook(await writeBook(book, { title: "Sample" }));

/** A cell with the look that its style stands for, since two of ours look alike. */
const asSeen = (cell: SheetCell): object => ({
  ...cell,
  ...(cell.style === undefined ? {} : { look: lookOf(cell.style) }),
  style: null,
});

const inOrder = (cells: readonly SheetCell[]): object[] =>
  [...cells].sort((one, other) => (one.at < other.at ? -1 : 1)).map(asSeen);

/** Everything of a book but which of two styles that look alike a cell has. */
const seen = ({ workbook, shown }: Calculated): object => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => ({ ...sheet, cells: inOrder(sheet.cells) })),
  shown: [...shown].map(([name, cells]) => [name, Object.fromEntries([...cells].sort())]),
});

describe("a description written and read again", () => {
  test("keeps every input, formula, name, list, flag, format, note, table, chart, width and paper", async () => {
    expect(seen(await again(sampleBook))).toEqual(seen(sampleBook));
  });

  test("keeps how its maker shared it out over pages", async () => {
    const print = { paper: "A4" as const, landscape: true, shared: { scale: 85, rows: [8, 20], columns: [4] } };
    const back = await again(bookOf([sheetOf("One", [{ at: "A1", value: "words" }], { print })]));
    expect(back.workbook.sheets[0]!.print).toEqual(print);
  });

  test("has our styles by their names", async () => {
    const back = await again(sampleBook);
    const named = (book: Calculated, at: string) =>
      book.workbook.sheets[0]!.cells.find((cell) => cell.at === at)?.style;
    expect(["A1", "A3", "C3", "A4", "D4", "B5"].map((at) => named(back, at))).toEqual([
      "title",
      "header",
      "numberHeader",
      "input",
      "result",
      "input",
    ]);
    expect(named(back, "G4")).toEqual({ ink: "#112233", fill: "#ddeeff", size: 12, align: "center" });
  });

  test("a result stays a result and a label a label, though they look alike", async () => {
    const cells: SheetCell[] = [
      { at: "A1", value: "words", style: "label" },
      { at: "A2", formula: "=1+1", style: "result" },
      { at: "A3", value: null, style: "result" },
    ];
    const back = await again(bookOf([sheetOf("One", cells)]));
    expect(back.workbook.sheets[0]!.cells).toEqual(cells);
  });

  test("what a formula fills is no input, but keeps its style", async () => {
    const back = await again(sampleBook);
    const curve = back.workbook.sheets[1]!;
    expect(curve.cells.map(({ at }) => at)).toEqual(["A1", "D1", "A2"]);
    expect(back.shown.get("Fan's curve")!.get("A1")).toEqual({ value: "Airflow", fills: { rows: 3, columns: 2 } });
    expect(back.shown.get("Fan's curve")!.get("B2")).toEqual({ value: { error: "#N/A" } });
  });

  test("a blocked spill comes back as #VALUE!, for which the format has a name", async () => {
    const shown = new Map([["A1", { value: { error: "#SPILL!" } as const }]]);
    const back = await again(bookOf([sheetOf("One", [{ at: "A1", formula: "=B1:B3" }])], new Map([["One", shown]])));
    expect(back.shown.get("One")!.get("A1")).toEqual({ value: { error: "#VALUE!" } });
  });

  test.each(Object.keys(styles) as StyleName[])("the flag style %s is known by its colours", async (style) => {
    const sheet = sheetOf("One", [{ at: "A1", value: 1 }], {
      flags: [{ range: "A1:A3", containsText: 'a"b*?~', style }],
    });
    const [flag] = (await again(bookOf([sheet]))).workbook.sheets[0]!.flags;
    expect(flag).toMatchObject({ range: "A1:A3", containsText: 'a"b*?~' });
    expect([lookOf(flag!.style).ink, lookOf(flag!.style).fill]).toEqual([lookOf(style).ink, lookOf(style).fill]);
  });
});

const word = fc.string({ unit: "grapheme", maxLength: 30 });
const styleName = fc.constantFrom(...(Object.keys(styles) as StyleName[]));
const formula = fc
  .tuple(
    fc.constantFrom("DUCT.AREA", "DUCT.LEAK", "SUM", "XLOOKUP"),
    fc.constantFrom("A1", "units", "'A b'!$C$3:$D$9", '"x"'),
  )
  .map(([name, argument]) => `=${name}(${argument},2)`);
const content = fc.oneof(
  word.map((value) => ({ value })),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => ({ value: value === 0 ? 0 : value })),
  fc.boolean().map((value) => ({ value })),
  formula.map((code) => ({ formula: code })),
);
const look = fc.record(
  {
    style: styleName,
    format: fc.constantFrom("0.00", "#,##0", "0%", '0.0 "in"', "yyyy-mm-dd"),
    note: fc.string({ minLength: 1 }),
  },
  { requiredKeys: [] },
);
const cells = fc.uniqueArray(
  fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 60 }), content, look),
  {
    selector: ([column, row]) => `${column}/${row}`,
    minLength: 1,
    maxLength: 60,
  },
);
const randomSheet = cells.map((drawn): Sheet =>
  sheetOf(
    "A b",
    drawn.map(([column, row, what, dress]) => ({ at: cellAddress(column, row), ...what, ...dress })),
    { columns: Array.from({ length: 30 }, (_, index) => 8 + (index % 5) / 2) },
  ),
);

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])("random workbooks of seed %i come back whole", async (seed) => {
  await fc.assert(
    fc.asyncProperty(randomSheet, async (sheet) => {
      const back = await again(bookOf([sheet]));
      const blanks = (cell: SheetCell): boolean =>
        !("value" in cell && cell.value === null && Object.keys(cell).length === 2);
      expect(inOrder(back.workbook.sheets[0]!.cells)).toEqual(inOrder(sheet.cells.filter(blanks)));
      expect(back.workbook.sheets[0]!.columns).toEqual(sheet.columns);
    }),
    { seed, numRuns: 3 },
  );
});
