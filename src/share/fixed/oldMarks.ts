import { fixedAddress, cellAddress, placeOf } from "../../sheets/address";
import type { ShownCell } from "../../sheets/calculated";
import { formula, text } from "../../sheets/cells";
import { addressesIn, filledAddresses, rectangleOf, rectangleText } from "../../sheets/rectangle";
import { CHANGED, type OldMark, type Sheet, type SheetCell } from "../../sheets/workbook";
import type { FixedCall } from "./fixedCall";
import type { FixedSheet } from "./fixedSheet";
import { rectangles } from "./rectangles";

/** What marks a sheet's old numbers where they stand. */
interface Marks {
  readonly cells: readonly SheetCell[]; // right of all that the sheet has: whether inputs have changed, for each set of fixed answers
  readonly marks: readonly OldMark[];
  readonly last: string; // the last cell before those, where what is printed ends
}

/**
 * Every cell of a sheet that a fixed answer fills or that rests on one is struck out once an input of that answer has changed. The counts
 * that this goes by stand on the sheet itself, since not every program lets a mark look at another sheet.
 *
 * @param here fixed answers on the sheet
 * @param rests its other formulas that rest on fixed answers
 * @param shown what the sheet's cells show, with how far they reach
 */
export function oldMarks(
  sheet: Sheet,
  here: readonly FixedCall[],
  rests: ReadonlyMap<string, readonly FixedCall[]>,
  shown: ReadonlyMap<string, ShownCell>,
  checks: FixedSheet,
): Marks {
  const sets = new Map<string, { calls: readonly FixedCall[]; at: string[] }>();
  const put = (calls: readonly FixedCall[], addresses: readonly string[]): void => {
    const key = calls.map((call) => `${call.sheet}!${call.at}`).join(" ");
    const known = sets.get(key) ?? { calls, at: [] };
    sets.set(key, known);
    known.at.push(...addresses);
  };
  for (const call of here) put([call], filledAddresses(call.at, call.extent));
  for (const [at, calls] of rests) put(calls, filledAddresses(at, shown.get(at)?.fills ?? { rows: 1, columns: 1 }));
  const end = endOf(sheet, shown);
  const column = end.column + APART;
  const states = [...sets.values()].map(({ calls }, place) =>
    formula(
      cellAddress(column, place + 2),
      `=IF(IFERROR(${checks.changed(calls)},1)=0,"as made","${CHANGED}")`,
      "unit",
    ),
  );
  return {
    cells: states.length === 0 ? [] : [text(cellAddress(column, 1), "inputs, for the marks", "note"), ...states],
    marks: [...sets.values()].map(({ at }, place) => ({
      ranges: rectangles(at.map((one) => `${sheet.name}!${one}`)).map(rectangleText),
      state: fixedAddress(column, place + 2),
    })),
    last: cellAddress(end.column, end.row),
  };
}

const APART = 4; // columns, so that words in the last one can run over the next

/** The last column and row in which a sheet has a cell, what a formula fills, or a chart. */
function endOf({ cells, charts }: Sheet, shown: ReadonlyMap<string, ShownCell>): { column: number; row: number } {
  let [column, row] = [1, 1];
  const reach = (to: { column: number; row: number }): void => {
    column = Math.max(column, to.column);
    row = Math.max(row, to.row);
  };
  for (const { at } of cells) {
    const from = placeOf(at);
    const { rows, columns } = shown.get(at)?.fills ?? { rows: 1, columns: 1 };
    reach({ column: from.column + columns - 1, row: from.row + rows - 1 });
  }
  for (const { over } of charts ?? []) for (const at of addressesIn(rectangleOf(over))) reach(placeOf(at));
  return { column, row };
}
