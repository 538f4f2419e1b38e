import { NO_MARK } from "../../../reference/zeroWords";
import { formula, input, text } from "../../cells";
import { cellAddress, columnLetters } from "../../address";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { MOST_GATES, MOST_SETS, SETS, SETS_COLUMN, SETS_LAST } from "../flow/flowLayout";
import { aboveHeadings } from "../parts/aboveHeadings";
import { formatOf, headingIn, unitWord } from "../parts/units";
import {
  ASKED,
  FASTEST_ROW,
  KEEP_ROW,
  LISTS,
  LISTS_COLUMNS,
  LISTS_FIRST,
  LISTS_LAST,
  MARGIN_ROW,
  MOST_ROW,
} from "./sizesLayout";

const { open, searched, stock, price, fromFlow } = LISTS_COLUMNS;

/** What the search goes by: which gates are open together, what can be bought, what stays. */
export function sizesAsked(frame: Frame): SheetCell[] {
  const rows = Array.from({ length: LISTS_LAST - LISTS }, (_, index) => index);
  return [
    text(`A${ASKED}`, "What is asked", "section"),
    text(`A${MARGIN_ROW}`, "More than needed, %", "label"),
    input(`B${MARGIN_ROW}`, 15, {
      note: "Each hood's airflow and each run's velocity by so much more. Write none for 0.",
    }),
    text(`C${MARGIN_ROW}`, "Bought to the last digit, sizes leave nothing for what nobody measured.", "note"),
    formula(`A${FASTEST_ROW}`, headingIn(frame, "Not faster than", "velocity"), "label"),
    input(`B${FASTEST_ROW}`, null, {
      format: formatOf(frame, "velocity"),
      note: "Greatest velocity in each run whose diameter is chosen, less the margin. Blank: none.",
    }),
    text(`C${FASTEST_ROW}`, "Faster air is louder and costs pressure. Leave room above what the dust needs.", "note"),
    text(`A${KEEP_ROW}`, "Diameter stays in", "label"),
    input(`B${KEEP_ROW}`, null, {
      note: "Names of runs between ; such as planer; trunk. Runs with a device stay anyway.",
    }),
    text(`C${KEEP_ROW}`, "Runs that are in the wall already. A machine's port keeps its size in any case.", "note"),
    text(`A${MOST_ROW}`, "Open at once at most", "label"),
    input(`B${MOST_ROW}`, null, {
      note: "Gates of hoods, for the table of machines below. Blank: two, or one where more than eight runs have a gate, since every set is solved for.",
    }),
    text(`C${MOST_ROW}`, "For the table of machines at the end of this sheet.", "note"),
    formula(
      `${searched}${LISTS - 1}`,
      `=${[open, stock].map((letter) => aboveHeadings(letter, LISTS - 1, LISTS)).join("&")}`,
      "note",
    ),
    text(`${open}${LISTS}`, "Open together", "header", {
      note: "Names of runs between ; in each row: all of these sets shall work. Blank: the scenarios of the sheet Flow; without any there, each machine alone and any two.",
    }),
    text(`${searched}${LISTS}`, "Searched for", "header"),
    ...["C", "D"].map((letter): SheetCell => ({ at: `${letter}${LISTS}`, value: null, style: "header" })),
    text(`${fromFlow}${LISTS}`, "Open on Flow", "header"),
    formula(`${stock}${LISTS}`, headingIn(frame, "Can be bought", "diameter"), "numberHeader", {
      note: "Diameters that you can buy. Blank: the sizes of the trade, from half the narrowest run to one and a half times the widest.",
    }),
    formula(`${price}${LISTS}`, `="Price per "&${unitWord(frame, "length")}`, "numberHeader", {
      note: "In any money. Blank: the diameter stands for it.",
    }),
    ...rows.flatMap((index): SheetCell[] => {
      const row = LISTS_FIRST + index;
      return [
        input(`${open}${row}`, null),
        formula(`${searched}${row}`, `=${searchedFor(index)}`),
        ...(index < MOST_SETS ? [formula(`${fromFlow}${row}`, `=${ofFlow(frame, index)}`, "unit")] : []),
        input(`${stock}${row}`, null),
        input(`${price}${row}`, null),
      ];
    }),
  ];
}

/** The set typed here; where none is typed at all, a scenario of the sheet Flow. */
function searchedFor(index: number): string {
  const own = `$${open}$${LISTS_FIRST}:$${open}$${LISTS_LAST}`;
  const [typed, joined] = [open, fromFlow].map((letter) => `$${letter}${LISTS_FIRST + index}`) as [string, string];
  const flows = index < MOST_SETS ? `IF(${joined}="","",LEFT(${joined},LEN(${joined})-2))` : '""';
  return `IF(COUNTA(${own})>0,${typed}&"",${flows})`;
}

/**
 * The gates that a scenario of Flow opens, as SCENARIOS reads its marks: anything but a blank, 0, a dash or a word for no; a question, or one
 * below no heading, which it refuses, is here no run's name, which SIZES refuses. Each by its place in the table there, which has a column more, so that a heading that is cut keeps its marks' place.
 */
function ofFlow(frame: Frame, index: number): string {
  const table = frame.ref("flow", `$B$${SETS}:$${columnLetters(SETS_COLUMN + MOST_GATES + 1)}$${SETS_LAST}`);
  const parts = Array.from({ length: MOST_GATES }, (_, gate) => {
    const [mark, head] = [index + 2, 1].map((row) => `INDEX(${table},${row},${gate + 2})`) as [string, string];
    const isNone = `ISNUMBER(FIND("|"&LOWER(TRIM(${mark}))&"|","|${NO_MARK.join("|")}|"))`;
    return `IF(${isNone},"",IF(OR(${head}="",TRIM(${mark})="?"),"?",${head})&", ")`;
  });
  return parts.join("&");
}

/** The cells of a column of those lists. */
export const listCells = (column: keyof typeof LISTS_COLUMNS): string[] =>
  Array.from({ length: LISTS_LAST - LISTS }, (_, index) => `${LISTS_COLUMNS[column]}${LISTS_FIRST + index}`);

export const askedCell = (row: number): string => cellAddress(2, row);
