import { placeOf } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
import { keyParts } from "./reach";
import { valueAt } from "../../reference/itemAt";

/** Cells gathered into as few rectangles as a plain rule gives: runs down a column, then equal runs side by side. */
export function rectangles(keys: readonly string[]): RangeRef[] {
  const columns = new Map<string, Map<number, number[]>>();
  for (const key of keys) {
    const { sheet, at } = keyParts(key);
    const { column, row } = placeOf(at);
    const there = columns.get(sheet) ?? new Map<number, number[]>();
    columns.set(sheet, there);
    const rows = there.get(column);
    if (rows === undefined) there.set(column, [row]);
    else rows.push(row);
  }
  return [...columns].flatMap(([sheet, there]) => sideBySide(sheet, there));
}

function sideBySide(sheet: string, columns: ReadonlyMap<number, number[]>): RangeRef[] {
  const done: RangeRef[] = [];
  let open = new Map<string, RangeRef>(); // by the rows they cover; they reach to the column before
  for (const column of [...columns.keys()].sort((a, b) => a - b)) {
    const grown = new Map<string, RangeRef>();
    for (const { top, bottom } of runs(valueAt(columns, column))) {
      const rows = `${top}:${bottom}`;
      const before = open.get(rows);
      const left = before?.right === column - 1 ? before.left : column;
      if (left < column) open.delete(rows);
      grown.set(rows, { sheet, top, bottom, left, right: column });
    }
    done.push(...open.values());
    open = grown;
  }
  return [...done, ...open.values()];
}

function runs(rows: readonly number[]): { top: number; bottom: number }[] {
  const found: { top: number; bottom: number }[] = [];
  for (const row of [...rows].sort((a, b) => a - b)) {
    const last = found.at(-1);
    if (last !== undefined && last.bottom === row - 1) found[found.length - 1] = { top: last.top, bottom: row };
    else found.push({ top: row, bottom: row });
  }
  return found;
}
