import { TABLES_DATE } from "../../../reference";
import { INCH_OF_WATER } from "../../../reference/quantities";
import { formula, input, text } from "../../cells";
import type { Sheet, SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { printing } from "../parts/printing";
import { itemAt } from "../../../reference/itemAt";

/** Whether the workbook's numbers are an invented example; null where they are nobody's yet. */
export type AboutContents = { readonly invented: string } | null;

const WIDTHS = [31, 9, 78];
const LEGEND = 4;
const ROWS_OF_ABOUT = 15; // a few more than ABOUT has

/** What this workbook is. What must be readable without the add-in is text; what computes it says so itself, last. */
export const aboutSheet: SheetOf<AboutContents> = (frame, contents): Sheet => {
  const facts = lines(frame, contents);
  const computed = LEGEND + 5 + facts.length + 3; // row of ABOUT's formula
  return {
    name: frame.sheet("about"),
    columns: WIDTHS,
    tallRows: facts.flatMap(([, words], index) =>
      words.length > itemAt(WIDTHS, 2) ? [{ row: LEGEND + 6 + index, lines: 2 }] : [],
    ),
    frozen: { rows: 0, columns: 0 },
    cells: [
      text("A1", "About this workbook", "title"),
      text(
        "A2",
        "It budgets the air of a small dust-collection system: what each hood asks for, what the fan gives, what leaks, and what to mend.",
      ),
      ...legend(),
      text(`A${LEGEND + 5}`, "What to know", "section"),
      ...facts.flatMap(([label, words], index) => [
        text(`A${LEGEND + 6 + index}`, label, "label"),
        text(`C${LEGEND + 6 + index}`, words, "paragraph"),
      ]),
      text(`A${computed - 1}`, "What computes it: version and definitions", "section"),
      ...about(computed),
    ],
    lists: [],
    flags: [],
    print: { ...printing(frame, "landscape"), pagesHigh: 1 },
  };
};

function legend(): SheetCell[] {
  return [
    text(`A${LEGEND}`, "Which cells are yours", "section"),
    input(`A${LEGEND + 1}`, "boxed cell"),
    text(`C${LEGEND + 1}`, "An input: type, choose or leave blank. Nothing else needs a change."),
    text(`A${LEGEND + 2}`, "no box", "result"),
    text(`C${LEGEND + 2}`, "A result or an explanation. Typed over, it no longer computes; undo brings it back."),
    text(`A${LEGEND + 3}`, "orange, bold", "flag"),
    text(`C${LEGEND + 3}`, "The words in the cell, or beside it, say what is wrong or to be done."),
  ];
}

function lines(frame: Frame, contents: AboutContents): (readonly [string, string])[] {
  const start = frame.sheet("start");
  return [
    ...(contents === null ? [] : [["Its numbers", contents.invented] as const]),
    [
      "Units",
      `The sheet ${start} names them once; every formula takes them from there. Numbers that are typed are not converted.`,
    ],
    ["What it is not", "A permit, an engineer's design or a measurement. Local codes and licensed practice decide."],
    ["Sources", `Tables of ${TABLES_DATE}. Each row has its source; rows from memory and estimates are marked weak.`],
    ["Inch of water gauge", `${INCH_OF_WATER} Pa, of water at 60 °F. Inside all is computed in SI and converted once.`],
    [
      "Help with a function",
      "Type =DUCT. in a cell and choose; each argument is explained while you type. The pane has a page for each.",
    ],
    ["An error in a cell", "Select it: a sentence says which argument is wrong and what it must be."],
    [
      "Without the add-in",
      "Text, inputs and ordinary formulas stay. Cells with DUCT. functions keep what they last showed until they compute again.",
    ],
    ["Your data", "Nothing leaves the workbook: the functions compute on your own machine."],
  ];
}

/** The answer of ABOUT: three columns, so many rows as it has. */
function about(at: number): SheetCell[] {
  const cells: SheetCell[] = [formula(`A${at}`, "=DUCT.ABOUT()", "text")];
  for (let row = at; row < at + ROWS_OF_ABOUT; row++)
    for (const letter of ["A", "B", "C"])
      if (row > at || letter !== "A") cells.push({ at: `${letter}${row}`, value: null, style: "text" });
  return cells;
}
