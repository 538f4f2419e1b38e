import { fixedAddress } from "../../sheets/address";
import { formula } from "../../sheets/cells";
import { rangeText, readReference } from "../../sheets/rangeRef";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import { LOOK } from "../../sheets/book/parts/look";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import { quotedText } from "../references";
import type { CopiedTables } from "./lookupTables";
import type { Workings } from "./workings";

/**
 * Whoever replaces a name over all sheets of a copy gives the figures of one fitting to another, since the names of the look-up tables are
 * replaced, too. So the copy knows its names in a spelling that such a replacement does not find, and answers only while all are there.
 * A row that somebody adds is none of its business.
 */

const BEFORE = "·"; // every letter
const SAID = "$F$1"; // of the workings: the first name that is gone, blank where none is
const HELD = ["entry", "name", "line", "unit"]; // headings of names; sizes are figures

const apart = (name: string): string => [...name].map((letter) => BEFORE + letter).join("");

/** The cell that says which name is gone, as a formula on any sheet writes it. */
export const nameGone = (workings: Workings): string => `${sheetPrefix(workings.sheet.name)}${SAID}`;

/** A formula that looks something up, while all names are there. */
export const whileNamed = (code: string, workings: Workings): string => `IF(${nameGone(workings)}="",${code},NA())`;

/** Puts the names and their check onto the workings, and the word on the sheet of the tables. */
export function withNamesChecked({ sheet, named }: CopiedTables, workings: Workings): Sheet {
  const columns = named
    .filter(({ heading, names }) => HELD.includes(heading) && names.every((name) => typeof name === "string"))
    .flatMap(({ names, range }) => columnsOf(names.map(String), range));
  const rows = Math.max(0, ...columns.map(({ names }) => names.length));
  const gone: { at: string; held: string }[] = [];
  workings.place(rows, 2 * columns.length, ({ top, left }) => {
    const lines = Array.from({ length: rows }, () => new Array<string>(2 * columns.length).fill(""));
    columns.forEach(({ names, beside, range }, index) => {
      const [column, last] = [left + 2 * index, top + names.length - 1];
      const held = `${fixedAddress(column, top)}:${fixedAddress(column, last)}`;
      names.forEach((name, row) => (lines[row]![2 * index] = quotedText(apart(name))));
      lines[0]![2 * index + 1] = firstGone(held, names.length, beside, range);
      gone.push({ at: fixedAddress(column + 1, top), held });
    });
    return lines;
  });
  const first = gone.reduceRight(
    (others, { at, held }) => `IF(${at}>0,${together(`INDEX(${held},${at})`)},${others})`,
    '""',
  );
  workings.say(formula(SAID.replaceAll("$", ""), `=${first}`));
  return { ...sheet, cells: sheet.cells.map((cell) => (cell.at === "A2" ? saying(cell, workings) : cell)) };
}

const MOST_ROWS = 100; // names in a column; with a row for each, the sheet would be longer than some programs hold

/** The names of a table in columns, each with the cells in which its names stand there. */
function columnsOf(names: readonly string[], range: string): { names: string[]; beside: string; range: string }[] {
  const whole = readReference(range)!;
  return Array.from({ length: Math.ceil(names.length / MOST_ROWS) }, (_, index) => {
    const from = index * MOST_ROWS;
    const part = names.slice(from, from + MOST_ROWS);
    const top = whole.top + from;
    return { names: part, beside: rangeText({ ...whole, top, bottom: top + part.length - 1 }), range };
  });
}

/** The place of the first of these names that the table lacks; 0 where it has all. As long as each stands in its row none is looked for. */
function firstGone(held: string, count: number, beside: string, range: string): string {
  const from = held.replace(/:.*/, "");
  const isGone = `ISNA(MATCH(${together(held)},${range},0))`;
  const missing = `MOD(${count + 1}-SUMPRODUCT(MAX(${isGone}*(${held}<>"")*(${count}-ROW(${held})+ROW(${from})))),${count + 1})`;
  return `IF(IFERROR(SUMPRODUCT(1*(${together(held)}<>${beside})),1)=0,0,${missing})`;
}

const together = (text: string): string => `SUBSTITUTE(${text},"${BEFORE}","")`;

function saying(cell: SheetCell, workings: Workings): SheetCell {
  if (!("value" in cell)) return cell;
  const gone = nameGone(workings);
  const told = `"${LOOK} the name "&${gone}&" is gone from the tables below, so nothing that looks up here has an answer: undo what changed it."`;
  return formula(cell.at, `=IF(${gone}="",${quotedText(String(cell.value))},${told})`, "note");
}
