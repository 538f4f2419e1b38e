import { STANDARD_DENSITY, AIR_VISCOSITY } from "../core/air/constants";
import { modelWords } from "../core/modelWords";
import { rowOf } from "../core/naming/findNamed";
import { cautions } from "../reference/cautions";
import { INCH_OF_WATER, type UnitSystem } from "../reference/quantities";
import { type SourceId, sources } from "../reference/sources";
import { TABLES_DATE } from "../reference";
import { text } from "../sheets/cells";
import { paperOf } from "../sheets/paper";
import type { Sheet, SheetCell } from "../sheets/workbook";
import type { CopyOrder, FixedCell } from "./copy";
import type { CountOfFormulas } from "./countOfFormulas";

/** What the first sheet of a copy tells. */
export interface AboutFacts {
  readonly name: string; // of the sheet
  readonly order: CopyOrder;
  readonly title: string; // of the workbook
  readonly maker: string | null; // who made it, where they said so
  readonly tries: readonly string[]; // what a reader can try
  readonly units: UnitSystem;
  readonly counts: readonly CountOfFormulas[];
  readonly fixed: readonly FixedCell[];
  readonly untranslated: readonly FixedCell[];
  readonly sources: readonly SourceId[]; // that its numbers rest on
  readonly sheets: {
    readonly workings: string;
    readonly lookups: string;
    readonly fixed: string;
    readonly originals: string;
  } | null;
}

type Line = readonly [label: string, words: string];

const DEFINITIONS: readonly Line[] = [
  ["Friction", modelWords.friction],
  ["Fittings, hoods", modelWords.fittings],
  ["Suction", modelWords.suction],
  ["Leaks", modelWords.leaks],
  ["Budget", modelWords.budget],
  ["Standard air", `${Number(STANDARD_DENSITY.toPrecision(6))} kg/m³ (0.075 lb/ft³)`],
  ["Viscosity of air", `${AIR_VISCOSITY} Pa s, held constant`],
  ["Inch of water gauge", `${INCH_OF_WATER} Pa (60 °F)`],
];

/** Those that a reader of numbers needs first; the add-in has them all, with sources. */
const CAUTIONS = [
  "power off",
  "carcinogen",
  "respirator",
  "explosible dust",
  "dust builds up",
  "no measurement",
  "codes decide",
];

/** What the tests compute copies with; a copy of values has nothing to compute. */
const TRIED =
  "Copies of Duct Ledger's two examples were recalculated in LibreOffice 7.4 and agreed in every cell; the formulas of each function were also computed by the engine IronCalc and by the grid of Duct Ledger's own page. Nobody has opened a copy in Excel or Google Sheets yet, so check a number there before you rely on it.";

const MOST_LISTED = 1000; // cells of a kind

const WIDE = 100; // characters on a line of the second column

/** The first sheet of a copy: what it is, which numbers live, and what they rest on. */
export function aboutCopy(facts: AboutFacts): Sheet {
  const { order, title, units } = facts;
  const cells: SheetCell[] = [text("A1", "About this copy", "title")];
  const tallRows: { row: number; lines: number }[] = [];
  let row = 3;
  const section = (heading: string, lines: readonly Line[]): void => {
    if (lines.length === 0) return;
    cells.push(text(`A${row}`, heading, "section"));
    for (const [label, words] of lines) {
      row++;
      if (label !== "") cells.push(text(`A${row}`, label, "label"));
      cells.push(text(`B${row}`, words, "paragraph"));
      const height = Math.ceil(words.length / WIDE);
      if (height > 1) tallRows.push({ row, lines: height });
    }
    row += 2;
  };
  section("What it is", [
    ["Copy of", title],
    ...(facts.maker === null ? [] : [["By", facts.maker] as const]),
    ["Made", `${order.date}, by Duct Ledger ${order.version}; its tables are of ${TABLES_DATE}`],
    ["Kind", kindOf(facts)],
    ...(order.kind === "formulas" ? [["Tried", TRIED] as const] : []),
    ["Units", units === "SI" ? "SI: mm, m, m³/h, m/s, Pa" : "I-P: in, ft, cfm, fpm, in.w.g."],
    ...(order.kind === "formulas"
      ? [
          [
            "",
            "The units were fixed when the copy was made: another word in the units cell does not change them.",
          ] as const,
        ]
      : []),
  ]);
  section(
    "What to try",
    facts.tries.map((words): Line => ["", words]),
  );
  section(
    "What recalculates",
    facts.counts.flatMap(({ sheet, live, resting }): Line[] =>
      live + resting === 0 ? [] : [[sheet, formulasInWords(live, resting)]],
    ),
  );
  section("What is fixed, and why", listed(facts.fixed));
  section("What could not be translated and keeps its last value", listed(facts.untranslated));
  if (facts.sheets !== null) section("Sheets that the copy added", addedSheets(facts.sheets));
  section("Definitions", DEFINITIONS);
  section(
    "Sources of its methods, tables and values",
    facts.sources.length === 0
      ? [["", "None but geometry and the definitions above."]]
      : facts.sources.map((id): Line => ["", `${sources[id].title} (${sources[id].year})`]),
  );
  section(
    "Cautions, in short",
    CAUTIONS.map((key): Line => ["", rowOf(cautions, key).text]),
  );
  section("How to get the add-in", [
    [
      "",
      "Whoever made this copy has Duct Ledger and can pass on its address. It is free: an add-in for Excel, or a page of its own in a browser. The page was tried in Chromium; in Excel nobody has tried the add-in yet.",
    ],
    ["", "It computes what is fixed here, and turns a copy with formulas back into a live budget."],
  ]);
  return {
    name: facts.name,
    columns: [30, WIDE],
    tallRows,
    frozen: { rows: 0, columns: 0 },
    gridlines: false,
    cells,
    lists: [],
    flags: [],
    print: { paper: paperOf(units), landscape: false },
  };
}

function formulasInWords(live: number, resting: number): string {
  const old = `${resting} that rest on fixed numbers: struck out once these are old`;
  return resting === 0 ? `${live} formulas` : `${live} formulas, and ${old}`;
}

function kindOf({ order, fixed, untranslated }: AboutFacts): string {
  if (order.kind === "values")
    return "Values only: nothing in it recalculates. Every number is as it stood on that day.";
  const all = fixed.length + untranslated.length === 0;
  return all
    ? "Plain formulas: every number recalculates without the add-in."
    : "Plain formulas, which recalculate without the add-in. Slanted numbers are fixed, and what is computed from them is as old as they are. Once you change what they were made from, they are struck out and say old.";
}

function listed(cells: readonly FixedCell[]): Line[] {
  const lines = cells
    .slice(0, MOST_LISTED)
    .map(({ sheet, at, function: name, why }): Line => [`${sheet}!${at}`, name === "" ? why : `${name}: ${why}`]);
  return cells.length > MOST_LISTED ? [...lines, ["", `and ${cells.length - MOST_LISTED} more`]] : lines;
}

const addedSheets = ({ workings, lookups, fixed, originals }: NonNullable<AboutFacts["sheets"]>): Line[] => [
  [lookups, "tables that the formulas look in: change a material's roughness there and the numbers follow"],
  [workings, "the steps of the formulas"],
  [fixed, "whether the inputs of each fixed number are still what they were"],
  [originals, "the formulas of the add-in as they stood, so that it can turn this copy back into a live budget"],
  ["", "These sheets are for the formulas, not for paper: only their heads are printed."],
];
