import { cellAddress, placeOf } from "../../sheets/address";
import { formula, text } from "../../sheets/cells";
import type { Rectangle } from "../../sheets/rectangle";
import { cellText, type RangeRef, plainRange, rangeText } from "../../sheets/rangeRef";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import { isAsTyped } from "./asTyped";
import type { FixedCall } from "./fixedCall";

/** What a vendor's numbers are held against does not stand among the tables that a copy carries. */
const LOOKS_NOTHING_UP = new Set(["CLAIM"]);

/** As few formulas as take all these tests: one has room for 255 arguments and 8,192 letters. */
function inFormulas(tests: readonly string[]): string[] {
  const all: string[] = [];
  let [count, letters] = [0, 0];
  for (const test of tests) {
    const isFull = count === 200 || letters + test.length > 7000;
    if (all.length === 0 || isFull) {
      all.push(test);
      [count, letters] = [1, test.length];
    } else {
      all[all.length - 1] += `,${test}`;
      [count, letters] = [count + 1, letters + test.length + 1];
    }
  }
  return all;
}

/** Whether a fixed answer may rest on figures of the look-up tables, which its formula does not name. */
export const looksUp = (call: FixedCall): boolean => !LOOKS_NOTHING_UP.has(call.function);

/**
 * The figures of the look-up tables as they were, each table beside one cell that counts those that have changed. A table whose rows
 * are no longer as many counts too. What is stored changes along with a figure that is replaced over all sheets, so beside them stands whether
 * they are those that were typed, in a spelling that no replacement finds.
 *
 * @param top the first row to use
 * @param gone the cell that says which name is gone: replaced over all sheets, it is another here, too
 */
export function figureCells(
  lookups: Sheet,
  top: number,
  gone: string,
): { readonly cells: readonly SheetCell[]; readonly counts: readonly string[] } {
  const there = new Map(lookups.cells.map((cell) => [cell.at, cell]));
  const cells: SheetCell[] = [];
  const counts: string[] = [];
  let next = top;
  for (const range of figureRanges(lookups)) {
    const [width, height] = [range.right - range.left + 1, range.bottom - range.top + 1];
    cells.push(text(`A${next}`, plainRange(range), "section"));
    const same: string[] = [];
    for (let row = 0; row < height; row++)
      for (let column = 0; column < width; column++) {
        const cell = there.get(cellAddress(range.left + column, range.top + row));
        const at = cellAddress(1 + column, next + 1 + row);
        // what a table takes from another of its rows is taken again here, so that a figure typed over it differs
        if (cell !== undefined && "formula" in cell) cells.push(formula(at, cell.formula));
        else if (cell !== undefined && cell.value !== null) {
          cells.push({ at, value: cell.value, style: "text" });
          const now = cellText(range.sheet, range.left + column, range.top + row);
          const typed = isAsTyped(now, cell.value);
          if (typed !== null) same.push(typed);
        }
      }
    inFormulas(same).forEach((some, index) =>
      cells.push(formula(cellAddress(width + 2, next + 1 + index), `=IF(IFERROR(AND(${some}),FALSE),0,1)`)),
    );
    const kept = `A${next + 1}:${cellAddress(width, next + height)}`;
    const count = cellAddress(width + 2, next);
    const typed = `${cellAddress(width + 2, next + 1)}:${cellAddress(width + 2, next + height)}`;
    cells.push(formula(count, `=IFERROR(SUMPRODUCT(--(${rangeText(range)}<>${kept})),1)+SUM(${typed})`));
    counts.push(count);
    next += height + 2;
  }
  cells.push(formula(`A${next}`, `=IF(${gone}="",0,1)`));
  counts.push(`A${next}`);
  return { cells, counts };
}

/** The rows and columns of each table that a reader may change: its boxed cells and what lies between them. */
function figureRanges({ name, cells }: Sheet): RangeRef[] {
  const filled = new Set(cells.map(({ at }) => placeOf(at).row));
  const tables: Rectangle[] = [];
  for (const { at, style } of cells) {
    if (style !== "input") continue;
    const { row, column } = placeOf(at);
    const last = tables.at(-1);
    if (last !== undefined && row <= last.bottom)
      tables[tables.length - 1] = {
        ...last,
        left: Math.min(last.left, column),
        right: Math.max(last.right, column),
      };
    else {
      let bottom = row;
      while (filled.has(bottom + 1)) bottom++;
      tables.push({ top: row, bottom, left: column, right: column });
    }
  }
  return tables.map((table) => ({ sheet: name, ...table }));
}
