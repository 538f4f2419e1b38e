import { clubCopy } from "../../src/share/clubCopy";
import type { Calculated } from "../../src/sheets/calculated";
import type { SheetCell } from "../../src/sheets/workbook";
import { type SampleSheet, sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const VALUES = { ...ORDER, kind: "values" } as const;

const cellOf = ({ workbook }: Calculated, sheet: string, at: string): SheetCell | undefined =>
  workbook.sheets.find(({ name }) => name === sheet)?.cells.find((cell) => cell.at === at);

const contentOf = (book: Calculated, sheet: string, at: string): unknown => {
  const cell = cellOf(book, sheet, at);
  return cell === undefined ? undefined : "formula" in cell ? cell.formula : cell.value;
};

const wordsOf = ({ workbook }: Calculated, sheet: string): string =>
  workbook.sheets
    .find(({ name }) => name === sheet)!
    .cells.map((cell) => ("value" in cell ? String(cell.value) : ""))
    .join("\n");

const duct: SampleSheet = {
  rows: [[4, "IP"], ["=1+1"]],
  formulas: {
    A4: { code: "=DUCT.AREA(A1,,units)", shows: [[0.0872664626]] },
    B4: { code: "=A4*2", shows: [[0.1745329252]] },
    A6: {
      code: "=DUCT.SOLVE(A1:B2,A1:B2)",
      shows: [
        ["Run", "Airflow (cfm)"],
        ["saw", 400],
      ],
    },
  },
};
const NAMES = [{ name: "units", sheet: "Ducts", at: "B1" }];

test("nothing of ours is left, plain formulas stay, and a text that looks like a formula stays text", () => {
  const { book, live, fixed, untranslated } = clubCopy(sampleBook({ Ducts: duct }, NAMES), ORDER);
  for (const { name, cells } of book.workbook.sheets) {
    if (name === "Original formulas") continue;
    for (const cell of cells) if ("formula" in cell) expect(cell.formula).not.toMatch(/duct\.|_xldudf/i);
  }
  expect(contentOf(book, "Ducts", "B4")).toBe("=A4*2");
  expect(cellOf(book, "Ducts", "A2")).toEqual({ at: "A2", value: "=1+1" });
  expect(contentOf(book, "Ducts", "A4")).toMatch(/^=.*A1/);
  expect(live).toBe(2); // AREA and the plain one
  expect(fixed.map(({ at, function: name }) => `${at} ${name}`)).toEqual(["A6 SOLVE"]);
  expect(untranslated).toEqual([]);
});

test("a fixed answer keeps what it showed, is marked, and has the word beside it", () => {
  const { book } = clubCopy(sampleBook({ Ducts: duct }, NAMES), ORDER);
  expect(["A6", "B6", "A7", "B7"].map((at) => contentOf(book, "Ducts", at))).toEqual([
    "Run",
    "Airflow (cfm)",
    "saw",
    400,
  ]);
  expect(cellOf(book, "Ducts", "B7")!.style).toMatchObject({ italic: true });
  expect(cellOf(book, "Ducts", "A6")!.note).toMatch(/^Fixed in this copy: SOLVE stays as it was/);
  expect(contentOf(book, "Ducts", "C6")).toBe("='Fixed numbers'!$C$6");
  expect(book.workbook.sheets.find(({ name }) => name === "Ducts")!.flags).toContainEqual({
    range: "C6",
    containsText: "inputs changed since",
    style: "flag",
  });
});

test("the word is put nowhere that a formula reads or a value stands", () => {
  const sheet: SampleSheet = {
    rows: [[4, 5], [], ["title"]],
    formulas: {
      A4: { code: "=DUCT.SOLVE(A1,B1)", shows: [[1]] },
      A9: { code: "=SUM(B4:B5)", shows: [[0]] },
    },
  };
  const { book } = clubCopy(sampleBook({ Ducts: sheet }), ORDER);
  expect(contentOf(book, "Ducts", "B4")).toBeUndefined();
  expect(contentOf(book, "Ducts", "A3")).toBe("title");
  expect(contentOf(book, "Ducts", "A5")).toBe("='Fixed numbers'!$C$6");
});

test("the copy's own sheets take names that are free, and the first says what it is", () => {
  const taken = Object.fromEntries(
    ["Workings", "about this copy", "Lookups", "FIXED NUMBERS"].map((name) => [name, { rows: [[1]] }]),
  );
  const { book } = clubCopy(sampleBook({ Ducts: duct, ...taken }, NAMES), ORDER);
  const names = book.workbook.sheets.map(({ name }) => name);
  expect(names[0]).toBe("About this copy 2");
  expect(names.slice(-4)).toEqual(["Lookups 2", "Workings 2", "Fixed numbers 2", "Original formulas"]);
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  const words = wordsOf(book, "About this copy 2");
  for (const said of [
    "2026-11-25",
    "Duct Ledger 0.2.0",
    "I-P: in",
    "Ducts!A6",
    "SOLVE: ",
    "Definitions",
    "Sources",
    "Cautions",
    "How to get the add-in",
  ])
    expect(words).toContain(said);
});

test("the units cell offers only the units of the copy", () => {
  const sheet: SampleSheet = { ...duct, with: { lists: [{ range: "B1", choices: ["IP", "SI"], strict: true }] } };
  const { book } = clubCopy(sampleBook({ Ducts: sheet }, NAMES), ORDER);
  const { lists } = book.workbook.sheets.find(({ name }) => name === "Ducts")!;
  expect(lists).toEqual([{ range: "B1", choices: ["IP"], strict: true }]);
  expect(cellOf(book, "Ducts", "B1")!.note).toContain("the formulas were made for IP");
});

test("looks, formats, notes, lists, flags, charts and names are kept, and the book itself is as it was", () => {
  const look: SampleSheet = {
    ...duct,
    with: {
      cells: [{ at: "E1", value: 3, style: "input", format: "0.0", note: "mine" }],
      lists: [{ range: "E1", choices: ["3"], strict: false }],
      flags: [{ range: "E1", containsText: "3", style: "flag" }],
      columns: [10, 20],
      tallRows: [{ row: 2, lines: 3 }],
      charts: [
        {
          kind: "line through points",
          over: "F1:H9",
          title: "t",
          x: { title: "x", range: "A1:A2" },
          y: { title: "y", series: [{ name: "s", range: "B1:B2", ink: "#000000" }] },
        },
      ],
    },
  };
  const book = sampleBook({ Ducts: look }, NAMES);
  const before =
    JSON.stringify(book.workbook) + JSON.stringify([...book.shown].map(([name, cells]) => [name, [...cells]]));
  const copy = clubCopy(book, ORDER).book.workbook;
  const sheet = copy.sheets.find(({ name }) => name === "Ducts")!;
  expect(sheet.cells).toContainEqual({ at: "E1", value: 3, style: "input", format: "0.0", note: "mine" });
  expect(sheet).toMatchObject({ columns: [10, 20], tallRows: [{ row: 2, lines: 3 }], charts: look.with!.charts! });
  expect(sheet.lists).toContainEqual({ range: "E1", choices: ["3"], strict: false });
  expect(sheet.flags).toContainEqual({ range: "E1", containsText: "3", style: "flag" });
  expect(copy.names).toEqual([{ name: "units", sheet: "Workings", at: "D1" }]);
  expect(
    JSON.stringify(book.workbook) + JSON.stringify([...book.shown].map(([name, cells]) => [name, [...cells]])),
  ).toBe(before);
});

test("the functions of others, broken calls and circles are told, and the rest is done", () => {
  const sheet: SampleSheet = {
    rows: [[4]],
    formulas: {
      B1: { code: "=OTHER.THING(A1)+1", shows: [[17]] },
      B2: { code: "=_xldudf_OTHER_THING(A1)", shows: [["words"]] },
      B3: { code: "=DUCT.NOSUCH(A1)", shows: [[{ error: "#NAME?" }]] },
      B4: { code: "=DUCT.AREA(A1", shows: [[{ error: "#NAME?" }]] },
      B5: { code: "=B6+1", shows: [[0]] },
      B6: { code: "=B5+DUCT.AREA(A1)", shows: [[0]] },
      B7: { code: "=DUCT.AREA(A1)", shows: [[0.0872664626]] },
      B8: { code: "=NORM.DIST(A1,0,1,TRUE)", shows: [[0.9999]] },
      B9: { code: "=DUCT.TRADESIZE(DUCT.DIAMETER(500,3937))", shows: [[4.5]] },
    },
  };
  const { book, fixed, untranslated } = clubCopy(sampleBook({ Ducts: sheet }), ORDER);
  expect(untranslated.map(({ at, function: name, why }) => `${at} ${name}: ${why}`)).toEqual([
    "B1 OTHER.THING: a function of another add-in",
    "B2 _xldudf_OTHER_THING: a function of another add-in",
    "B4 : a bracket is not closed",
  ]);
  expect(fixed.map(({ at, why }) => `${at}: ${why}`)).toEqual(["B3: there is no function of this name"]);
  expect(contentOf(book, "Ducts", "B1")).toBe(17);
  expect(contentOf(book, "Ducts", "B2")).toBe("words");
  expect(contentOf(book, "Ducts", "B3")).toBe("=NA()");
  expect(contentOf(book, "Ducts", "B5")).toBe("=B6+1");
  expect(contentOf(book, "Ducts", "B7")).toMatch(/^=.*A1/);
  expect(contentOf(book, "Ducts", "B8")).toBe("=NORM.DIST(A1,0,1,TRUE)");
  expect(wordsOf(book, "About this copy")).toContain("OTHER.THING: a function of another add-in");
});

test("a copy of values has no formula, and every cell is what it showed", () => {
  const { book, live } = clubCopy(sampleBook({ Ducts: duct }, NAMES), VALUES);
  expect(book.workbook.sheets.map(({ name }) => name)).toEqual(["About this copy", "Ducts"]);
  expect(book.workbook.sheets.flatMap(({ cells }) => cells.filter((cell) => "formula" in cell))).toEqual([]);
  expect(live).toBe(0);
  expect(["A4", "A6", "B6", "A7", "B7"].map((at) => contentOf(book, "Ducts", at))).toEqual([
    0.0872664626,
    "Run",
    "Airflow (cfm)",
    "saw",
    400,
  ]);
  expect(wordsOf(book, "About this copy")).toContain("nothing in it recalculates");
});

test("units are what the cell of that name shows, in any letters, and the copy's own sheets print their heads on its paper", () => {
  const unitsOf = (name: string, value: string | number, at = "B1"): string => {
    const book = sampleBook({ Ducts: { rows: [[4, value]] } }, [
      { name: "other", sheet: "Ducts", at: "A1" },
      { name, sheet: "Ducts", at },
    ]);
    const { workbook } = clubCopy(book, ORDER).book;
    const [about, , ...own] = workbook.sheets;
    const paper = about!.print!.paper;
    for (const { print } of own) expect(print).toEqual({ paper, landscape: true, area: "A1:D2" });
    expect(own).toHaveLength(4);
    return `${paper}: ${/SI: mm|I-P: in/.exec(wordsOf({ workbook, shown: new Map() }, "About this copy"))![0]}`;
  };
  expect(unitsOf("Units", " si ")).toBe("A4: SI: mm");
  expect(unitsOf("UNITS", "SI")).toBe("A4: SI: mm");
  expect([unitsOf("units", "IP"), unitsOf("units", "metric"), unitsOf("units", 5)]).toEqual(
    new Array<string>(3).fill("Letter: I-P: in"),
  );
  expect(unitsOf("system", "SI")).toBe("Letter: I-P: in");
  expect(unitsOf("units", "SI", "C9")).toBe("Letter: I-P: in"); // a cell that shows nothing
});

test("nothing spills in a copy, but what others fill is still theirs", () => {
  const sheet: SampleSheet = {
    rows: [[4, 5]],
    formulas: {
      A3: { code: "=DUCT.SOLVE(A1:B2)", shows: [["Run", 2]] },
      A5: { code: "=DUCT.AREA(A1:B1)", shows: [[1, 2]] },
      A7: { code: "=OTHER.THING(A1)", shows: [[1, 2]] },
      A9: { code: "=A1:B1*2", shows: [[8, 10]] },
    },
  };
  const shown = clubCopy(sampleBook({ Ducts: sheet }), ORDER).book.shown.get("Ducts")!;
  expect(["A3", "A5", "A7", "A9", "B9"].map((at) => shown.get(at))).toEqual([
    { value: "Run" },
    { value: 1 },
    { value: 1 },
    { value: 8, fills: { rows: 1, columns: 2 } },
    { value: 10 },
  ]);
});

test("the record of a copy tells how many cells each formula fills in it", () => {
  const sheet: SampleSheet = {
    rows: [[4, 5, 6]],
    formulas: {
      A3: { code: "=DUCT.AREA(A1:C1)", shows: [[1, 2, 3]] },
      A5: {
        code: "=DUCT.SOLVE(A1:B2)",
        shows: [
          ["Run", 2],
          ["saw", 3],
        ],
      },
    },
  };
  const { book } = clubCopy(sampleBook({ Ducts: sheet }), ORDER);
  const row = (at: number): unknown[] =>
    ["A", "B", "C"].map((one) => contentOf(book, "Original formulas", `${one}${at}`));
  expect([5, 6, 7].map(row)).toEqual([
    ["=DUCT.AREA(A1:C1)", 1, 3],
    ["=DUCT.SOLVE(A1:B2)", 2, 2],
    ["", 1, 1], // the word beside it
  ]);
});
