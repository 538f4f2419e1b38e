import { type AboutFacts, aboutCopy } from "../../src/share/aboutCopy";
import { TABLES_DATE } from "../../src/reference";
import { cautions } from "../../src/reference/cautions";
import { sources } from "../../src/reference/sources";
import type { Sheet } from "../../src/sheets/workbook";

const facts: AboutFacts = {
  name: "About this copy",
  order: { kind: "formulas", date: "2026-11-25", version: "1.2.3" },
  title: "Shop",
  maker: null,
  tries: [],
  units: "SI",
  counts: [
    { sheet: "Runs", live: 12, resting: 0 },
    { sheet: "Flow", live: 5, resting: 2 },
    { sheet: "Notes", live: 0, resting: 0 },
  ],
  fixed: [
    { sheet: "Runs", at: "B2", function: "SOLVE", why: "it is a root" },
    { sheet: "Runs", at: "B3", function: "", why: "a bracket is not closed" },
  ],
  untranslated: [{ sheet: "Other", at: "C1", function: "X.Y", why: "a function of another add-in" }],
  sources: ["colebrook1939", "commonPractice"],
  sheets: { workings: "Workings 2", lookups: "Lookups 2", fixed: "Fixed numbers", originals: "Original formulas" },
};

const TRIED =
  "Copies of Duct Ledger's two examples were recalculated in LibreOffice 7.4 and agreed in every cell; the formulas of each function were also computed by the engine IronCalc and by the grid of Duct Ledger's own page. Nobody has opened a copy in Excel or Google Sheets yet, so check a number there before you rely on it.";

/** The rows of a sheet as a reader sees them: what stands in A and in B. */
const linesOf = ({ cells }: Sheet): [string, string][] => {
  const at = new Map(cells.map((cell) => [cell.at, "value" in cell ? String(cell.value) : cell.formula]));
  const last = Math.max(...cells.map((cell) => Number(cell.at.slice(1))));
  return Array.from({ length: last }, (_, row) => [at.get(`A${row + 1}`) ?? "", at.get(`B${row + 1}`) ?? ""]);
};

/** A section of the sheet: the lines between its heading and the blank line behind it. */
const section = (sheet: Sheet, heading: string): [string, string][] => {
  const lines = linesOf(sheet);
  const first = lines.findIndex(([label]) => label === heading) + 1;
  return first === 0 ? [] : lines.slice(first, lines.findIndex(([a, b], row) => row >= first && a + b === "") >>> 0);
};
const headings = (sheet: Sheet): string[] =>
  sheet.cells.flatMap((cell) => (cell.style === "section" && "value" in cell ? [String(cell.value)] : []));

test("a copy with formulas tells what it is, what lives, what is fixed, and which sheets it added", () => {
  const sheet = aboutCopy({ ...facts, maker: "A. Maker", tries: ["Shut a gate."] });
  expect(linesOf(sheet).slice(0, 11)).toEqual([
    ["About this copy", ""],
    ["", ""],
    ["What it is", ""],
    ["Copy of", "Shop"],
    ["By", "A. Maker"],
    ["Made", `2026-11-25, by Duct Ledger 1.2.3; its tables are of ${TABLES_DATE}`],
    [
      "Kind",
      "Plain formulas, which recalculate without the add-in. Slanted numbers are fixed, and what is computed from them is as old as they are. Once you change what they were made from, they are struck out and say old.",
    ],
    ["Tried", TRIED],
    ["Units", "SI: mm, m, m³/h, m/s, Pa"],
    ["", "The units were fixed when the copy was made: another word in the units cell does not change them."],
    ["", ""],
  ]);
  expect(section(sheet, "What to try")).toEqual([["", "Shut a gate."]]);
  expect(section(sheet, "What recalculates")).toEqual([
    ["Runs", "12 formulas"],
    ["Flow", "5 formulas, and 2 that rest on fixed numbers: struck out once these are old"],
  ]);
  expect(section(sheet, "What is fixed, and why")).toEqual([
    ["Runs!B2", "SOLVE: it is a root"],
    ["Runs!B3", "a bracket is not closed"],
  ]);
  expect(section(sheet, "What could not be translated and keeps its last value")).toEqual([
    ["Other!C1", "X.Y: a function of another add-in"],
  ]);
  expect(section(sheet, "Sheets that the copy added")).toEqual([
    ["Lookups 2", "tables that the formulas look in: change a material's roughness there and the numbers follow"],
    ["Workings 2", "the steps of the formulas"],
    ["Fixed numbers", "whether the inputs of each fixed number are still what they were"],
    [
      "Original formulas",
      "the formulas of the add-in as they stood, so that it can turn this copy back into a live budget",
    ],
    ["", "These sheets are for the formulas, not for paper: only their heads are printed."],
  ]);
});

test("it says what the numbers rest on, and how to get the add-in", () => {
  const sheet = aboutCopy(facts);
  expect(headings(sheet).slice(-4)).toEqual([
    "Definitions",
    "Sources of its methods, tables and values",
    "Cautions, in short",
    "How to get the add-in",
  ]);
  expect(section(sheet, "Definitions")).toEqual([
    ["Friction", "Darcy-Weisbach; Colebrook-White from Re 4000, 64/Re to Re 2000, linear between"],
    [
      "Fittings, hoods",
      "K x velocity pressure of the fitting's own duct; where runs meet, by the momentum of their air",
    ],
    ["Suction", "deficit of total pressure below the room; static suction is that plus the velocity pressure"],
    ["Leaks", "sharp-edged opening, discharge coefficient 0.6; seams go with pressure to the power 0.65"],
    ["Budget", "each open hood gets the airflow it asks for; the strongest path at a junction governs"],
    ["Standard air", "1.20138 kg/m³ (0.075 lb/ft³)"], // 0.075 x 0.45359237 / 0.3048^3 = 1.2013848
    ["Viscosity of air", "0.00001819 Pa s, held constant"], // at 70 °F, ASHRAE
    ["Inch of water gauge", "248.84 Pa (60 °F)"],
  ]);
  const source = (id: keyof typeof sources): [string, string] => ["", `${sources[id].title} (${sources[id].year})`];
  expect(section(sheet, "Sources of its methods, tables and values")).toEqual([
    source("colebrook1939"),
    source("commonPractice"),
  ]);
  const caution = (key: string): [string, string] => ["", cautions.find((one) => one.key === key)!.text];
  expect(section(sheet, "Cautions, in short")).toEqual(
    [
      "power off",
      "carcinogen",
      "respirator",
      "explosible dust",
      "dust builds up",
      "no measurement",
      "codes decide",
    ].map(caution),
  );
  expect(section(sheet, "How to get the add-in")).toEqual([
    [
      "",
      "Whoever made this copy has Duct Ledger and can pass on its address. It is free: an add-in for Excel, or a page of its own in a browser. The page was tried in Chromium; in Excel nobody has tried the add-in yet.",
    ],
    ["", "It computes what is fixed here, and turns a copy with formulas back into a live budget."],
  ]);
});

test("a copy in which all lives says so, and has no list of what does not", () => {
  const sheet = aboutCopy({ ...facts, units: "IP", fixed: [], untranslated: [] });
  expect(section(sheet, "What it is").slice(2, 5)).toEqual([
    ["Kind", "Plain formulas: every number recalculates without the add-in."],
    ["Tried", TRIED],
    ["Units", "I-P: in, ft, cfm, fpm, in.w.g."],
  ]);
  expect(headings(sheet)).toEqual([
    "What it is",
    "What recalculates",
    "Sheets that the copy added",
    "Definitions",
    "Sources of its methods, tables and values",
    "Cautions, in short",
    "How to get the add-in",
  ]);
  expect(sheet.print).toEqual({ paper: "Letter", landscape: false });
});

test.each(["fixed", "untranslated"] as const)("one that is %s is enough to say that not all lives", (kind) => {
  const none = { ...facts, fixed: [], untranslated: [] };
  const [, , [, words]] = section(aboutCopy({ ...none, [kind]: facts[kind] }), "What it is") as [
    unknown,
    unknown,
    string[],
  ];
  expect(words).toContain("Slanted numbers are fixed");
});

test("a copy of values says that nothing recalculates, and that alone", () => {
  const order = { ...facts.order, kind: "values" } as const;
  const sheet = aboutCopy({ ...facts, order, counts: [], fixed: [], untranslated: [], sheets: null });
  expect(section(sheet, "What it is").slice(2)).toEqual([
    ["Kind", "Values only: nothing in it recalculates. Every number is as it stood on that day."],
    ["Units", "SI: mm, m, m³/h, m/s, Pa"],
  ]);
  expect(headings(sheet)[1]).toBe("Definitions");
});

test.each([
  [1000, undefined],
  [1001, "and 1 more"],
  [1234, "and 234 more"],
])("of %d fixed cells a thousand are listed", (count, more) => {
  const fixed = Array.from({ length: count }, (_, row) => ({ ...facts.fixed[0]!, at: `B${row + 1}` }));
  const lines = section(aboutCopy({ ...facts, fixed }), "What is fixed, and why");
  expect(lines[999]).toEqual(["Runs!B1000", "SOLVE: it is a root"]);
  expect(lines[1000]?.[1]).toBe(more);
  expect(lines.length).toBe(more === undefined ? 1000 : 1001);
});

test("a line longer than its column is as high as it needs, for paper of the units' countries", () => {
  const sheet = aboutCopy({ ...facts, title: "x".repeat(100) });
  const height = (row: number): number => sheet.tallRows.find((one) => one.row === row)?.lines ?? 1;
  const longer = aboutCopy({ ...facts, title: "x".repeat(201) });
  expect([height(4), height(6)]).toEqual([1, 3]);
  expect(longer.tallRows[0]).toEqual({ row: 4, lines: 3 });
  expect(sheet).toMatchObject({
    name: "About this copy",
    columns: [30, 100],
    frozen: { rows: 0, columns: 0 },
    lists: [],
    flags: [],
    print: { paper: "A4", landscape: false },
  });
  const styleOf = (at: string) => sheet.cells.find((cell) => cell.at === at)?.style;
  expect(["A1", "A3", "A4", "B4", "A9", "B9"].map(styleOf)).toEqual([
    "title",
    "section",
    "label",
    "paragraph",
    undefined,
    "paragraph",
  ]);
});
