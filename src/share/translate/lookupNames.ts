import { formula } from "../../sheets/cells";
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
  const gone = named
    .filter(({ heading, names }) => HELD.includes(heading) && names.every((name) => typeof name === "string"))
    .map(({ names, range }) => {
      const { top, bottom } = workings.place(names.length, 2, (there) =>
        names.map((name, index) => [
          quotedText(apart(String(name))),
          index === 0 ? firstGone(`$A$${there.top}:$A$${there.bottom}`, names.length, range) : "",
        ]),
      );
      return { at: `$B$${top}`, held: `$A$${top}:$A$${bottom}` };
    });
  const first = gone.reduceRight(
    (others, { at, held }) => `IF(${at}>0,${together(`INDEX(${held},${at})`)},${others})`,
    '""',
  );
  workings.say(formula(SAID.replaceAll("$", ""), `=${first}`));
  return { ...sheet, cells: sheet.cells.map((cell) => (cell.at === "A2" ? saying(cell, workings) : cell)) };
}

/** The place of the first of these names that the table lacks; 0 where it has all. As long as each stands in its row none is looked for. */
function firstGone(held: string, count: number, range: string): string {
  const from = held.replace(/:.*/, "");
  const isGone = `ISNA(MATCH(${together(held)},${range},0))`;
  const missing = `MOD(${count + 1}-SUMPRODUCT(MAX(${isGone}*(${held}<>"")*(${count}-ROW(${held})+ROW(${from})))),${count + 1})`;
  return `IF(IFERROR(SUMPRODUCT(1*(${together(held)}<>${range})),1)=0,0,${missing})`;
}

const together = (text: string): string => `SUBSTITUTE(${text},"${BEFORE}","")`;

function saying(cell: SheetCell, workings: Workings): SheetCell {
  if (!("value" in cell)) return cell;
  const gone = nameGone(workings);
  const told = `"${LOOK} the name "&${gone}&" is gone from the tables below, so nothing that looks up here has an answer: undo what changed it."`;
  return formula(cell.at, `=IF(${gone}="",${quotedText(String(cell.value))},${told})`, "note");
}
