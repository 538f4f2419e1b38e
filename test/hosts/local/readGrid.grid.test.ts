import fc from "fast-check";
import { calculatedOf } from "../../../src/hosts/local/readGrid";
import { columnLetters } from "../../../src/sheets/address";
import { type Look, type StyleName, styles } from "../../../src/sheets/styles";
import type { Sheet, SheetCell, Workbook } from "../../../src/sheets/workbook";
import { bookOf, gridOf, setUpGrid, sheetOf } from "./gridOfOurs";

beforeAll(setUpGrid);

const there = (workbook: Workbook): Workbook => calculatedOf(gridOf(workbook)).workbook;

const inOrder = (workbook: Workbook): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => ({ ...sheet, cells: [...sheet.cells].sort(byPlace) })),
});
const rowOf = ({ at }: SheetCell): number => Number(at.replace(/\D/g, ""));
const lettersOf = ({ at }: SheetCell): string => at.replace(/\d/g, "").padStart(3);
const byPlace = (one: SheetCell, other: SheetCell): number =>
  rowOf(one) - rowOf(other) || (lettersOf(one) < lettersOf(other) ? -1 : 1);

const styleNames = Object.keys(styles) as StyleName[];
const ownLook: Look = { ink: "#123456", fill: "#fedcba", italic: true, align: "center", border: "below" };
const text = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 12 }).filter((one) => one !== ""),
  fc.constantFrom(
    "=1+1",
    "@SUM(A1)",
    "+4",
    "-4",
    "12",
    "1/2/2026",
    "TRUE",
    "#N/A",
    "'x",
    "May 5",
    "[a](b)",
    "two\nlines",
  ),
);
// The grid counts no zero below zero, and reads exponents to 307, about as far as Excel's own numbers go.
const largest = { max: 9e307, min: -9e307 };
const number = fc
  .double({ ...largest, noNaN: true, noDefaultInfinity: true })
  .map((value) => (Math.abs(value) < 1e-307 ? 0 : value));
const content: fc.Arbitrary<object> = fc.oneof(
  text.map((value) => ({ value })),
  number.map((value) => ({ value })),
  fc.boolean().map((value) => ({ value })),
  fc.constant({ value: null, style: "input" }),
  fc
    .constantFrom("=1+2", "=TOY.TWICE(1)", '=IF(TRUE,,"a  b")', "=SUM($A$1:B2,Two!A1,'Two words'!B$2)", "=given*2")
    .map((formula) => ({ formula })),
);
const look = fc.record(
  {
    style: fc.constantFrom<StyleName | Look>(...styleNames, ownLook),
    format: fc.constantFrom("0.00", "#,##0", "0%"),
    note: fc.string({ minLength: 1, maxLength: 20 }),
  },
  { requiredKeys: [] },
);

const sheet = (name: string): fc.Arbitrary<Sheet> =>
  fc
    .record({
      contents: fc.uniqueArray(
        fc.record({ column: fc.integer({ min: 1, max: 30 }), row: fc.integer({ min: 1, max: 60 }) }),
        {
          maxLength: 25,
          selector: ({ column, row }) => `${column},${row}`,
        },
      ),
      looks: fc.array(fc.tuple(content, look), { minLength: 25, maxLength: 25 }),
      columns: fc.array(
        fc.integer({ min: 4, max: 80 }).map((halves) => halves / 2),
        { maxLength: 12 },
      ),
      tall: fc.uniqueArray(fc.record({ row: fc.integer({ min: 1, max: 40 }), lines: fc.integer({ min: 1, max: 9 }) }), {
        maxLength: 5,
        selector: ({ row }) => row,
      }),
      frozen: fc.record({ rows: fc.integer({ min: 0, max: 8 }), columns: fc.integer({ min: 0, max: 3 }) }),
      strict: fc.boolean(),
      landscape: fc.boolean(),
    })
    .map(({ contents, looks, columns, tall, frozen, strict, landscape }) => ({
      name,
      columns,
      tallRows: [...tall].sort((one, other) => one.row - other.row),
      frozen,
      cells: contents.map(
        ({ column, row }, index) =>
          ({ at: `${columnLetters(column)}${row}`, ...looks[index]![1], ...looks[index]![0] }) as unknown as SheetCell,
      ),
      lists: [{ range: "AF2:AF9", choices: ["open", "shut", "4"], strict }],
      flags: [{ range: "A1:C20", containsText: "settles", style: "flag" as const }],
      charts: [
        {
          kind: "line through points" as const,
          over: "AA3:AD12",
          title: "A line",
          x: { title: "Time (s)", range: "A1:A9" },
          y: {
            title: "Height (m)",
            series: [{ name: "up", range: name === "Two words" ? "B1:B9" : "'Two words'!B1:B9", ink: "#3f5f5c" }],
          },
        },
      ],
      tables: [{ name: `Runs_${name.length}`, range: "AH5:AJ9" }],
      print: {
        paper: "A4" as const,
        landscape,
        ...(landscape ? { pagesWide: 2, pagesHigh: 3 } : { shared: { scale: 83, rows: [9], columns: [4, 7] } }),
        titleRows: { first: 3, last: 4 },
        titleColumns: { first: 1, last: 2 },
        area: "A1:H40",
      },
    }));

const workbook: fc.Arbitrary<Workbook> = fc
  .tuple(sheet("One"), sheet("Two"), sheet("Two words"))
  .map((sheets) => ({ name: "Seeded", sheets, names: [{ name: "given", sheet: "Two words", at: "B2" }] }));

/** A line between two cells is one in the grid; where the lower cell has a box it is that one's, and the upper's is not told apart from it. */
const sharesLine = ({ sheets }: Workbook): boolean =>
  sheets.some(({ cells }) => {
    const lined = cells.filter(({ style }) => typeof style === "object" && style.border === "below");
    return lined.some((upper) =>
      cells.some(
        (lower) =>
          lower.style !== undefined && lettersOf(lower) === lettersOf(upper) && rowOf(lower) === rowOf(upper) + 1,
      ),
    );
  });

describe("the grid as a description", () => {
  test("whatever a description holds comes back from the grid", () => {
    fc.assert(
      fc.property(workbook, (described) => {
        fc.pre(!sharesLine(described));
        expect(there(described)).toEqual(inOrder(described));
      }),
    );
  });

  test("says what cells show, where a formula fills more cells than its own, and errors by Excel's names", () => {
    const { shown } = calculatedOf(
      gridOf(
        bookOf(
          sheetOf([
            { at: "A1", value: 1 },
            { at: "B1", value: 2 },
            { at: "A2", value: 3 },
            { at: "B2", value: 4 },
            { at: "D1", formula: "=TOY.TWICE(A1:B2)" },
            { at: "G1", formula: '=TOY.TWICE("x")' },
            { at: "G2", formula: '=1+"a"' },
            { at: "G3", formula: "=NOSUCH(1)" },
            { at: "G4", formula: "=A1:B2" },
            { at: "G5", value: "in the way" },
            { at: "G6", formula: '=""' },
            { at: "G7", value: "#N/A" },
            { at: "G8", formula: "=1/0" },
            { at: "G9", value: null, style: "input" },
          ]),
        ),
      ),
    );
    const cells = shown.get("One")!;
    expect(cells.get("D1")).toEqual({ value: 2, fills: { rows: 2, columns: 2 } });
    expect(["E1", "D2", "E2"].map((at) => cells.get(at))).toEqual([{ value: 4 }, { value: 6 }, { value: 8 }]);
    expect(cells.get("G1")).toEqual({ value: { error: "#VALUE!", message: "a number is needed; got x" } });
    expect(cells.get("G2")).toMatchObject({ value: { error: "#VALUE!" } });
    expect(cells.get("G3")).toMatchObject({ value: { error: "#NAME?" } });
    expect(cells.get("G4")).toMatchObject({ value: { error: "#SPILL!" } });
    expect(cells.get("G4")).not.toHaveProperty("fills");
    expect(cells.get("G6")).toEqual({ value: "" });
    expect(cells.get("G7")).toEqual({ value: "#N/A" }); // text
    expect(cells.get("G8")).toMatchObject({ value: { error: "#DIV/0!" } });
    expect(cells.has("G9")).toBe(false);
  });

  test("what belongs to cells moves with them: table, print area, title rows and names, when rows come above", () => {
    const model = gridOf({
      ...bookOf(
        sheetOf([{ at: "B3", value: 1 }], {
          tables: [{ name: "Readings", range: "B3:C5" }],
          print: { paper: "Letter", landscape: true, titleRows: { first: 3, last: 3 }, area: "A1:C9" },
        }),
      ),
      names: [{ name: "first", sheet: "One", at: "B3" }],
    });
    model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId: model.getters.getActiveSheetId(),
      sheetName: "One",
      dimension: "ROW",
      base: 1,
      position: "before",
      quantity: 2,
    });
    const { sheets, names } = calculatedOf(model).workbook;
    expect(sheets[0]).toMatchObject({
      tables: [{ name: "Readings", range: "B5:C7" }],
      print: { paper: "Letter", landscape: true, titleRows: { first: 5, last: 5 }, area: "A1:C11" },
    });
    expect(names).toEqual([{ name: "first", sheet: "One", at: "B5" }]);
  });

  test("a style that somebody changed is kept as a look, one that nobody set is none", () => {
    const model = gridOf(
      bookOf(
        sheetOf([
          { at: "A1", value: "a", style: "label" },
          { at: "A2", value: "b" },
        ]),
      ),
    );
    const sheetId = model.getters.getActiveSheetId();
    const cellsNow = () => calculatedOf(model).workbook.sheets[0]!.cells;
    expect(cellsNow()).toEqual([
      { at: "A1", value: "a", style: "label" },
      { at: "A2", value: "b" },
    ]);
    const target = [{ left: 0, right: 0, top: 0, bottom: 0 }];
    model.dispatch("SET_FORMATTING", { sheetId, target, style: { bold: true } });
    expect(cellsNow()[0]).toEqual({ at: "A1", value: "a", style: { ink: styles.label.ink, bold: true } });
  });

  test("a sheet whose name has an apostrophe, which the grid refuses, is called and referred to with a typographic one", () => {
    const { workbook: back, shown } = calculatedOf(
      gridOf({
        ...bookOf(
          sheetOf([{ at: "A1", value: 3 }], { name: "Bob's shop" }),
          sheetOf([{ at: "A1", formula: `='Bob''s shop'!A1*first&"'Bob''s shop'!A1"` }]),
        ),
        names: [{ name: "first", sheet: "Bob's shop", at: "A1" }],
      }),
    );
    expect(back.sheets.map(({ name }) => name)).toEqual(["Bob’s shop", "One"]);
    expect(shown.get("One")!.get("A1")).toEqual({ value: "9'Bob''s shop'!A1" });
  });

  test("a name of several cells keeps them all", () => {
    const names = [{ name: "both", sheet: "One", at: "A1:A2" }];
    expect(there({ ...bookOf(sheetOf([{ at: "A1", value: 1 }])), names }).names).toEqual(names);
  });
});
