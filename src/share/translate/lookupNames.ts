import { fixedAddress } from "../../sheets/address";
import { formula } from "../../sheets/cells";
import { rangeText, readReference } from "../../sheets/rangeRef";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import { LOOK } from "../../sheets/book/parts/look";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import { quotedText } from "../references";
import { apart, together } from "./lettersApart";
import type { CopiedTables } from "./lookupTables";
import type { Workings } from "./workings";

/**
 * Whoever replaces a name over all sheets of a copy gives the figures of one fitting to another, since the names of the look-up tables are
 * replaced, too. So the copy knows its names in a spelling that such a replacement does not find, and answers only while all are there.
 * A row that somebody adds is none of its business.
 */

const SAID = "$F$1"; // of the workings: the first name that is gone or astray, blank where none is
const HELD = ["entry", "name", "line", "unit"]; // headings of names; sizes are figures

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
    columns.forEach((one, index) => {
      const { names } = one;
      const [column, last] = [left + 2 * index, top + names.length - 1];
      const held = `${fixedAddress(column, top)}:${fixedAddress(column, last)}`;
      names.forEach((name, row) => (lines[row]![2 * index] = quotedText(apart(name))));
      lines[0]![2 * index + 1] = firstGone({ column, row: top }, one);
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

interface Place {
  readonly column: number;
  readonly row: number;
}

const MOST_ROWS = 100; // names in a column; with a row for each, the sheet would be longer than some programs hold

interface Column {
  readonly names: readonly string[];
  readonly beside: string; // the cells in which they stand
  readonly isOrdered: boolean; // each is found below those before it, where it is found first
}

/** The names of a table in columns; the last of one is the first of the next, so that all neighbours are compared. */
function columnsOf(names: readonly string[], range: string): Column[] {
  const whole = readReference(range)!;
  const step = MOST_ROWS - 1;
  return Array.from({ length: Math.max(1, Math.ceil((names.length - 1) / step)) }, (_, index) => {
    const from = index * step;
    const part = names.slice(from, from + MOST_ROWS);
    const top = whole.top + from;
    const places = part.map((name) => part.findIndex((one) => one.toLowerCase() === name.toLowerCase()));
    const isOrdered = places.length > 1 && !part.includes("") && places.every((place, at) => at === 0 || place >= places[at - 1]!); // prettier-ignore
    return { names: part, beside: rangeText({ ...whole, top, bottom: top + part.length - 1 }), isOrdered };
  });
}

/**
 * The place of the first of these names that its cells lack, or have below the one after it: two that changed places have each other's figures. 0 where
 * all are in order. As long as each stands in its row none is looked for.
 */
function firstGone(first: Place, { names, beside, isOrdered }: Column): string {
  const count = names.length;
  const last = first.row + count - 1;
  const rows = (from: number, to: number): string =>
    `${fixedAddress(first.column, from)}:${fixedAddress(first.column, to)}`;
  const held = rows(first.row, last);
  const ofFirst = (holds: string, among: string): string =>
    `MOD(${count + 1}-SUMPRODUCT(MAX(${holds}*(${count + first.row}-ROW(${among})))),${count + 1})`;
  const missing = ofFirst(`ISNA(MATCH(${together(held)},${beside},0))*(${held}<>"")`, held);
  const place = (of: string): string => `MATCH(${together(of)},${beside},0)`;
  const [before, after] = [rows(first.row, last - 1), rows(first.row + 1, last)];
  const astray = isOrdered ? `IFERROR(${ofFirst(`(${place(after)}<${place(before)})`, before)},0)` : "0";
  return `IF(IFERROR(SUMPRODUCT(1*(${together(held)}<>${beside})),1)=0,0,IF(${missing}>0,${missing},${astray}))`;
}

function saying(cell: SheetCell, workings: Workings): SheetCell {
  if (!("value" in cell)) return cell;
  const gone = nameGone(workings);
  const told = `"${LOOK} the name "&${gone}&" is gone from the tables below or out of its place, so nothing that looks up here has an answer: undo what changed it."`;
  return formula(cell.at, `=IF(${gone}="",${quotedText(String(cell.value))},${told})`, "note");
}
