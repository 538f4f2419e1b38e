import { cellAddress } from "../../sheets/address";
import type { Calculated, ShownError } from "../../sheets/calculated";
import { formula, text } from "../../sheets/cells";
import type { CellValue, Sheet, SheetCell } from "../../sheets/workbook";
import { quotedText } from "../references";
import { cellText, plainRange, rangeText, type RangeRef } from "../../sheets/rangeRef";
import type { CellIndex } from "./cellIndex";
import { figureCells, looksUp } from "./figures";
import { comparesSomething, type FixedCall, OLD, OLD_FLAG } from "./fixedCall";
import { reachOf } from "./reach";
import { rectangles } from "./rectangles";
import { itemAt } from "../../reference/itemAt";
import { isAsTyped } from "./asTyped";

/** The sheet that tells of every fixed number whether its inputs still are what they were, and where each call's count stands. */
export interface FixedSheet {
  readonly sheet: Sheet;
  readonly state: (call: FixedCall) => string; // the cell with the call's state, as a formula on any sheet writes it
  readonly changed: (calls: readonly FixedCall[]) => string; // how many of their inputs have changed, as a formula on any sheet
}

const FIRST_CALL = 6;

interface Block {
  readonly range: RangeRef;
  readonly kind: "typed" | "computed";
  readonly users: readonly number[]; // calls that use it
}

/**
 * Every input that a fixed number used, stored beside a comparison with the cell as it is now.
 *
 * @param lookups the sheet of tables, whose figures a fixed number may rest on
 * @param gone the cell that says which name is gone from those tables, as a formula on any sheet writes it
 */
export function fixedSheet(
  calls: readonly FixedCall[],
  book: Calculated,
  index: CellIndex,
  name: string,
  date: string,
  lookups: Sheet,
  gone: string,
): FixedSheet {
  const reaches = calls.map((call) => reachOf(call.sheet, call.formula, index));
  const blocks = [
    ...blocksOf(
      reaches.map(({ typed }) => typed),
      "typed",
    ),
    ...blocksOf(
      reaches.map(({ computed }) => computed),
      "computed",
    ),
  ];
  const cells: SheetCell[] = [
    text("A1", "Fixed numbers", "title"),
    text(
      "A2",
      `These numbers are as of ${date}: plain formulas cannot compute them. Each is compared with the inputs it was made from.`,
    ),
    text(
      "A3",
      "Below stand the inputs as they were, and beside them a 1 for each cell that has changed since. Change nothing here.",
      "note",
    ),
    ...["Cell", "Function", "State", "Inputs changed", "Why it is fixed"].map((words, column) =>
      text(cellAddress(column + 1, FIRST_CALL - 1), words, "header"),
    ),
  ];
  let next = FIRST_CALL + calls.length + 2;
  const counts = calls.map((): string[] => []);
  for (const block of blocks) {
    const made = blockCells(block, next, book, index);
    cells.push(...made.cells);
    block.users.forEach((user) => itemAt(counts, user).push(made.count));
    next += block.range.bottom - block.range.top + 3;
  }
  const watching = calls.filter((call) => comparesSomething(call) && looksUp(call));
  if (watching.length > 0) {
    const figures = figureCells(lookups, next, gone);
    cells.push(...figures.cells);
    for (const call of watching) itemAt(counts, calls.indexOf(call)).push(...figures.counts);
  }
  calls.forEach((call, place) =>
    cells.push(...callCells(call, FIRST_CALL + place, itemAt(counts, place), itemAt(reaches, place).unfollowed, date)),
  );
  return {
    sheet: {
      name,
      columns: [26, 16, 44, 16, 60],
      tallRows: [],
      frozen: { rows: 0, columns: 0 },
      cells,
      lists: [],
      flags:
        calls.length === 0
          ? []
          : [{ range: `C${FIRST_CALL}:C${FIRST_CALL + calls.length - 1}`, containsText: OLD_FLAG, style: "flag" }],
    },
    state: (call) => cellText(name, 3, FIRST_CALL + calls.indexOf(call)),
    changed: (some) => {
      const ranges = rectangles(some.map((call) => `${name}!${cellAddress(4, FIRST_CALL + calls.indexOf(call))}`));
      const sums =
        ranges.length > MOST_ADDED ? [{ ...itemAt(ranges, 0), bottom: FIRST_CALL + calls.length - 1 }] : ranges;
      return `SUM(${sums.map(rangeText).join(",")})`;
    },
  };
}

const MOST_ADDED = 200; // counts in one sum

function callCells(
  call: FixedCall,
  row: number,
  counts: readonly string[],
  unfollowed: readonly string[],
  date: string,
): SheetCell[] {
  const sums: string[] = [];
  for (let from = 0; from < counts.length; from += MOST_ADDED)
    sums.push(`SUM(${counts.slice(from, from + MOST_ADDED).join(",")})`);
  const blind =
    unfollowed.length === 0 ? "" : `. Not all of its inputs can be compared (${unfollowed.slice(0, 3).join(", ")}).`;
  return [
    text(`A${row}`, `${call.sheet}!${call.at}`),
    text(`B${row}`, call.function),
    formula(`C${row}`, `=IF(IFERROR(D${row},1)=0,${quotedText(`as of ${date}`)},${quotedText(OLD)})`),
    formula(`D${row}`, `=${sums.length === 0 ? "0" : sums.join("+")}`),
    text(`E${row}`, call.why + blind),
  ];
}

/** Cells that the same calls use, as rectangles. */
function blocksOf(lists: readonly (readonly string[])[], kind: Block["kind"]): Block[] {
  const users = new Map<string, number[]>();
  lists.forEach((keys, call) =>
    keys.forEach((key) => {
      const known = users.get(key);
      if (known === undefined) users.set(key, [call]);
      else known.push(call);
    }),
  );
  const groups = new Map<string, { calls: readonly number[]; keys: string[] }>();
  for (const [key, calls] of users) {
    const group = groups.get(calls.join(",")) ?? { calls, keys: [] };
    groups.set(calls.join(","), group);
    group.keys.push(key);
  }
  return [...groups.values()].flatMap(({ calls, keys }) =>
    rectangles(keys).map((range) => ({ range, kind, users: calls })),
  );
}

function blockCells(
  { range, kind }: Block,
  top: number,
  book: Calculated,
  index: CellIndex,
): { cells: SheetCell[]; count: string } {
  const width = range.right - range.left + 1;
  const height = range.bottom - range.top + 1;
  const differs = width + 2; // first column of the comparisons
  const cells: SheetCell[] = [text(`A${top}`, plainRange(range), "section")];
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const at = cellAddress(range.left + column, range.top + row);
      const kept = cellAddress(1 + column, top + 1 + row);
      const value =
        kind === "typed"
          ? typedValue(index.cell(range.sheet, at))
          : (book.shown.get(range.sheet)?.get(at)?.value ?? null);
      const stored = storedCell(kept, value);
      if (stored !== null) cells.push(stored);
      const now = cellText(range.sheet, range.left + column, range.top + row);
      const was = kind === "typed" ? typedValue(index.cell(range.sheet, at)) : null;
      cells.push(formula(cellAddress(differs + column, top + 1 + row), `=${differenceOf(now, kept, kind, was)}`));
    }
  }
  const compared = `${cellAddress(differs, top + 1)}:${cellAddress(differs + width - 1, top + height)}`;
  if (kind === "computed" || width * height === 1) return { cells, count: compared };
  // A row that is inserted brings cells that nothing is compared with, but it makes the range longer. A cell that is cut and pasted elsewhere
  // takes its comparison along, while a table stays and reads what is typed in its place: so the range is compared as a whole, too.
  const filled = cells.length - 1 - width * height;
  const now = rangeText(range);
  const stored = `${cellAddress(1, top + 1)}:${cellAddress(width, top + height)}`;
  const elsewhere = `AND(ROWS(${now})*COLUMNS(${now})=${width * height},IFERROR(SUMPRODUCT((${now}<>${stored})+0),0)>SUM(${compared}))`;
  cells.push(formula(cellAddress(differs, top), `=IF(COUNTA(${now})=${filled},IF(${elsewhere},1,0),1)`));
  return { cells, count: `${cellAddress(differs, top)},${compared}` };
}

/** A file drops an empty text that is typed, so the cell is blank in the copy. */
const typedValue = (cell: SheetCell | undefined): CellValue =>
  cell !== undefined && "value" in cell && cell.value !== "" ? cell.value : null;

/** An empty text that a formula shows is stored by a formula, since files drop an empty text that is typed. */
function storedCell(at: string, value: CellValue | ShownError): SheetCell | null {
  if (value === null) return null;
  if (typeof value === "object") return formula(at, "=NA()");
  return value === "" ? formula(at, '=""') : { at, value, style: "text" };
}

/**
 * 0 while a cell is what was stored: the same kind, and the same text in the same case or the same number.
 *
 * @param was what was typed; null where it was nothing, or is computed
 */
function differenceOf(now: string, kept: string, kind: Block["kind"], was: CellValue): string {
  const sameKind = ["ISTEXT", "ISNUMBER", "ISLOGICAL"].map((test) => `${test}(${now})=${test}(${kept})`);
  // What a formula computes may differ in its last digits from one program to the next.
  const number = kind === "typed" ? `${now}=${kept}` : `ABS(${now}-${kept})<=1E-9*ABS(${kept})`;
  const blank = kind === "typed" ? [`ISBLANK(${now})=ISBLANK(${kept})`] : [];
  const known = isAsTyped(now, was) ?? `IF(ISNUMBER(${kept}),${number},EXACT(${now},${kept}))`;
  return `IF(IFERROR(AND(${[...sameKind, ...blank, known].join(",")}),ISERROR(${now})=ISERROR(${kept})),0,1)`;
}
