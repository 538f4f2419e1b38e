import { columnLetters } from "../address";
import { formula, text } from "../cells";
import type { SheetCell } from "../workbook";
import { ANSWER, ANSWER_END, TABLE_COLUMN, wholeTable } from "./budgetLayout";

const COLUMNS = 13; // of BUDGET's answer
const WHOLE = new Set(["C", "D", "M"]); // those without decimals
const NUMBERS = new Set("CDEFGHIJKM");

/** The table that BUDGET fills, with the warnings of its notes before each run. */
export function answer(): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${ANSWER}`, "Flags", "header"),
    text(`A${ANSWER - 2}`, "What that asks of the fan", "section"),
    text(
      `D${ANSWER - 2}`,
      `One formula fills this table: =DUCT.BUDGET(${wholeTable}, density, units). Its last row is the fan. Where an error names a row, the heading is row 1.`,
      "note",
    ),
  ];
  for (let at = ANSWER + 1; at <= ANSWER_END; at++) cells.push(formula(`A${at}`, wordsOfNote(`N${at}`)));
  for (let column = TABLE_COLUMN; column < TABLE_COLUMN + COLUMNS; column++) {
    const letter = columnLetters(column);
    const head = { at: `${letter}${ANSWER}`, style: NUMBERS.has(letter) ? "numberHeader" : "header" } as const;
    cells.push(
      column === TABLE_COLUMN
        ? { ...head, formula: `=DUCT.BUDGET(${wholeTable},density,units)` }
        : { ...head, value: null },
    );
    for (let at = ANSWER + 1; at <= ANSWER_END; at++) {
      cells.push({ at: `${letter}${at}`, value: null, style: "result", format: WHOLE.has(letter) ? "#,##0" : "0.00" });
    }
  }
  return cells;
}

/** The warnings of a long note in a word each, where they are seen without scrolling. */
function wordsOfNote(note: string): string {
  const says = (word: string): string => `ISNUMBER(SEARCH("${word}",${note}))`;
  return `=IF(${says("settles")},IF(${says("resize")},"settles, resize","settles"),IF(${says("resize")},"resize",""))`;
}
