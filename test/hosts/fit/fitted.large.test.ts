/** What a sheet in the browser can hold: a stray cell is left out with a word, and never where a number rests on it. */
import { fitted, leftOutWords } from "../../../src/hosts/fit/fitted";
import { FileRefusal } from "../../../src/hosts/file/fileRefusal";
import type { Sheet, SheetCell, Workbook } from "../../../src/sheets/workbook";
import { sheetOf } from "../../support/sheetOf";

const near: SheetCell[] = [
  { at: "A1", value: 4 },
  { at: "B2", formula: "=DUCT.AREA(A1)" },
];
const FAR: SheetCell = { at: "XFD1048576", value: 1 };
const bookOf = (...sheets: readonly Sheet[]): Workbook => ({ name: "x", sheets, names: [] });
const one = (cells: readonly SheetCell[], more: Partial<Sheet> = {}): Workbook => bookOf(sheetOf("One", cells, more));
const refusalOf = (workbook: Workbook): string => {
  try {
    fitted(workbook);
  } catch (error) {
    expect(error).toBeInstanceOf(FileRefusal);
    return (error as FileRefusal).message;
  }
  return "not refused";
};

describe("a cell that stands far from all others", () => {
  test.each(["XFD1048576", "A1048576", "XFD1", "A60000", "SZ1"])("%s is left out and named", (at) => {
    const { workbook, leftOut } = fitted(one([...near, { at, value: 1 }]));
    expect(leftOut).toEqual([`One!${at}`]);
    expect(workbook.sheets[0]!.cells).toEqual(near);
    expect(leftOutWords(leftOut)).toBe(
      `Left out, since it stands too far from the rest of its sheet: One!${at}. Nothing reads it; a file saved from here does not have it.`,
    );
  });

  test.each(["A50000", "SF1", "Z40000", "AZ25000"])("%s is not far", (at) => {
    const workbook = one([...near, { at, value: 1 }]);
    expect(fitted(workbook)).toEqual({ workbook, leftOut: [] });
    expect(leftOutWords([])).toBe("");
  });

  test("of two that span too much, fewer cells are lost", () => {
    const column = Array.from({ length: 30 }, (_, index) => ({ at: `A${49_971 + index}`, value: 1 }));
    expect(fitted(one([...column, { at: "SA1", value: 1 }])).leftOut).toEqual(["One!SA1"]);
    const row = Array.from({ length: 25 }, (_, index) => ({ at: `R${String.fromCharCode(65 + index)}1`, value: 1 }));
    expect(fitted(one([...row, { at: "A50000", value: 1 }])).leftOut).toEqual(["One!A50000"]);
  });

  test("a note counts as something, the look of a blank cell does not", () => {
    expect(fitted(one([...near, { at: "XFD9", value: null, note: "here" }])).leftOut).toEqual(["One!XFD9"]);
    const { workbook, leftOut } = fitted(one([...near, { at: "XFD9", value: null, style: "input" }]));
    expect([workbook.sheets[0]!.cells, leftOut]).toEqual([near, []]);
  });
});

describe("a book in which something reads such a cell is refused, since it would show another number", () => {
  test.each([
    "=SUM(A:XFD)",
    "=SUM(1048576:1048576)",
    "=XFD1048576*2",
    "=SUM(One!A1:XFD1048576)",
    "=SUM(one!$XFD$1:$XFD$1048576)",
    '=INDIRECT("XFD"&1048576)',
    "=OFFSET(A1,1048575,16383)",
    "=SUM(A1:INDEX(B:B,9))",
    "=DUCT.AREA(XFD:XFD)",
  ])("%s", (formula) => {
    expect(refusalOf(one([...near, { at: "C1", formula }, FAR]))).toBe(
      "This file reaches farther than a sheet can here, to One!XFD1048576, and the formula in One!C1 may read that: delete what stands there or move it nearer, then open it.",
    );
  });

  test("by a name, a table or a chart as well", () => {
    const named: Workbook = { ...one([...near, FAR]), names: [{ name: "far", sheet: "One", at: "XFD1048576" }] };
    expect(refusalOf(named)).toContain("the name far may read that");
    const tables = [{ name: "Far", range: "A1:XFD1048576" }];
    expect(refusalOf(one([...near, FAR], { tables }))).toContain("the table Far may read that");
    const y = { title: "", series: [{ name: "y", range: "XFD1:XFD1048576", ink: "#000000" }] };
    const chart = {
      kind: "line through points",
      over: "C1:D9",
      title: "",
      x: { title: "", range: "A1:A9" },
      y,
    } as const;
    expect(refusalOf(one([...near, FAR], { charts: [chart] }))).toContain("a chart on One may read that");
  });

  test("formulas that read other cells do not matter, nor does the far one itself", () => {
    const cells: SheetCell[] = [...near, { at: "C1", formula: "=SUM(A:C)+Two!XFD1048576" }];
    const far: SheetCell = { at: "XFD1048576", formula: "=SUM(A1:XFD1048575)" };
    const book = bookOf(sheetOf("One", [...cells, far]), sheetOf("Two", near));
    expect(fitted(book).leftOut).toEqual(["One!XFD1048576"]);
  });

  test("so is one with more of them than slips of a hand", () => {
    const many = Array.from({ length: 21 }, (_, index) => ({ at: `A${100_001 + index}`, value: 1 }));
    expect(refusalOf(one([...near, ...many]))).toBe(
      "This file has 21 cells far from the others, such as One!A100001: more than a sheet can hold here, so it is not opened.",
    );
    expect(fitted(one([...near, ...many.slice(1)])).leftOut).toHaveLength(20);
    expect(leftOutWords(fitted(one([...near, ...many.slice(1)])).leftOut)).toContain("One!A100006 and 15 more.");
  });
});

describe("ranges end where their sheet may end", () => {
  const whole = { range: "A1:XFD1048576" };
  test("lists, flags, tables, charts, print and frozen rows", () => {
    const series = { name: "y", range: "B1:B1048576", ink: "#000000" };
    const { workbook } = fitted(
      one(near, {
        columns: Array.from({ length: 16384 }, () => 9),
        tallRows: [
          { row: 2, lines: 3 },
          { row: 1048576, lines: 2 },
        ],
        frozen: { rows: 1048575, columns: 1 },
        lists: [{ ...whole, choices: ["a"], strict: true }],
        flags: [{ ...whole, containsText: "x", style: "flag" }],
        tables: [{ name: "T", ...whole }],
        charts: [
          {
            kind: "line through points",
            over: "XFA1048570:XFD1048576",
            title: "t",
            x: { title: "", range: "A1:A1048576" },
            y: { title: "", series: [series] },
          },
        ],
        print: { paper: "A4", landscape: true, area: "A1:XFD1048576", titleRows: { first: 1, last: 1048576 } },
      }),
    );
    const [sheet] = workbook.sheets;
    expect(sheet).toMatchObject({
      tallRows: [{ row: 2, lines: 3 }],
      frozen: { rows: 0, columns: 1 },
      lists: [{ range: "A1:AZ200" }],
      flags: [{ range: "A1:AZ200" }],
      tables: [{ range: "A1:AZ200" }],
      charts: [{ over: "A1:H20", x: { range: "A1:A200" }, y: { series: [{ range: "B1:B200" }] } }],
      print: { paper: "A4", landscape: true, area: "A1:AZ200" },
    });
    expect(sheet!.columns).toHaveLength(52);
    expect(sheet!.print).not.toHaveProperty("titleRows");
  });

  test("those that lie outside are gone", () => {
    const outside = { range: "XFA1:XFD9" };
    const { workbook } = fitted(
      one(near, {
        lists: [{ ...outside, choices: ["a"], strict: true }],
        flags: [{ ...outside, containsText: "x", style: "flag" }],
      }),
    );
    expect(workbook.sheets[0]).toMatchObject({ lists: [], flags: [] });
  });
});

const times = <Item>(count: number, make: (index: number) => Item): Item[] =>
  Array.from({ length: count }, (_, i) => make(i));
const column = (count: number, cell: (row: number) => SheetCell): SheetCell[] =>
  times(count, (index) => cell(index + 1));

describe("a book that would keep its reader busy for minutes is refused", () => {
  const END = "than a sheet can hold here, so it is not opened.";
  const range = "A1:XFD1048576";
  const flag = { range, containsText: "x", style: "flag" } as const;
  test.each<[string, () => Workbook, string]>([
    [
      "sheets",
      () => bookOf(...times(201, (index) => sheetOf(`S${index}`, near))),
      `This file has 201 sheets, more ${END}`,
    ],
    [
      "names",
      () => ({ ...one(near), names: times(2001, (index) => ({ name: `n${index}`, sheet: "One", at: "A1" })) }),
      `This file has 2001 names of cells, more ${END}`,
    ],
    [
      "filled cells",
      () =>
        bookOf(
          ...times(6, (index) =>
            sheetOf(
              `S${index}`,
              column(45_000, (row) => ({ at: `A${row}`, value: row })),
            ),
          ),
        ),
      `This file has sheets that reach farther ${END}`,
    ],
    [
      "filled cells close together",
      () =>
        one(times(250_001, (index) => ({ at: `${"ABCDEFGHIJ"[index % 10]!}${Math.floor(index / 10) + 1}`, value: 1 }))),
      `This file has 250001 filled cells, more ${END}`,
    ],
    [
      "formulas",
      () => one(times(50_001, (index) => ({ at: `${"AB"[index % 2]!}${Math.floor(index / 2) + 1}`, formula: "=1" }))),
      `This file has 50001 formulas, more ${END}`,
    ],
    [
      "one text",
      () => one([{ at: "A1", value: "x".repeat(32_768) }]),
      `This file has a text of 32768 characters in One!A1, longer ${END}`,
    ],
    [
      "texts",
      () => one(column(700, (row) => ({ at: `A${row}`, value: "x".repeat(30_000) }))),
      `This file has more text ${END}`,
    ],
    [
      "brackets",
      () => one([{ at: "A1", formula: `=${"(".repeat(4000)}1${")".repeat(4000)}` }]),
      `This file has a formula in One!A1 that is nested deeper ${END}`,
    ],
    [
      "signs",
      () => one([{ at: "A1", formula: `=${"-".repeat(8000)}1` }]),
      `This file has a formula in One!A1 that is nested deeper ${END}`,
    ],
    [
      "rows of operators",
      () => one(column(30, (row) => ({ at: `A${row}`, formula: `=1${"+1".repeat(500)}${"*A1".repeat(row)}` }))),
      `This file has longer formulas ${END}`,
    ],
    [
      "flags",
      () => one(near, { flags: times(5001, () => flag) }),
      `This file has 5001 lists, marks and tables, more ${END}`,
    ],
    [
      "choices",
      () => one(near, { lists: times(11, () => ({ range: "A1", choices: times(10_000, String), strict: true })) }),
      `This file has more choices in its lists ${END}`,
    ],
    [
      "flags over all of a long sheet",
      () => one([...near, { at: "A50000", value: 1 }], { flags: times(4, () => flag) }),
      `This file has lists, marks and charts over more cells ${END}`,
    ],
  ])("%s", (_, made, sentence) => expect(refusalOf(made())).toBe(sentence));

  test("the same formula in many rows is read once", () => {
    const formula = (row: number): string => `=A${row}${"+1".repeat(200)}`;
    const workbook = one(column(2000, (row) => ({ at: `B${row}`, formula: formula(row) })));
    expect(fitted(workbook)).toEqual({ workbook, leftOut: [] });
  });
});
