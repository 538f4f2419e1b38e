import type { Calculated } from "../../sheets/calculated";
import type { CellIndex } from "./cellIndex";
import type { FixedCall } from "./fixedCall";
import { withoutAsking } from "../standing";
import { referencesOf } from "./reach";

/** The fixed answers that a formula's number rests on, by sheet and by the formula's cell. */
export type RestsOn = ReadonlyMap<string, ReadonlyMap<string, readonly FixedCall[]>>;

/**
 * Every formula that rests on fixed answers, through whatever computes the cells between. A fixed answer itself is not among them: what
 * lies behind it, its own check compares.
 */
export function restOn(book: Calculated, calls: readonly FixedCall[], index: CellIndex): RestsOn {
  const fixed = new Set(calls.map(({ sheet, at }) => `${sheet}!${at}`));
  const readers = readersOf(book, index);
  const found = new Map<string, Map<string, FixedCall[]>>();
  for (const call of calls) {
    const seen = new Set<string>();
    const waiting = [`${call.sheet}!${call.at}`];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      for (const reader of readers.get(next) ?? []) {
        const key = `${reader.sheet}!${reader.at}`;
        if (seen.has(key) || fixed.has(key)) continue;
        seen.add(key);
        waiting.push(key);
        const there = found.get(reader.sheet) ?? new Map<string, FixedCall[]>();
        found.set(reader.sheet, there);
        const known = there.get(reader.at);
        if (known === undefined) there.set(reader.at, [call]);
        else known.push(call);
      }
    }
  }
  return found;
}

interface Reader {
  readonly sheet: string;
  readonly at: string;
}

/** For each formula's cell, the formulas that read it or a cell that it fills. */
function readersOf({ workbook }: Calculated, index: CellIndex): Map<string, Reader[]> {
  const readers = new Map<string, Reader[]>();
  const known = new Map<string, readonly string[]>(); // by range: many formulas read the same
  for (const { name: sheet, cells } of workbook.sheets) {
    for (const cell of cells) {
      if (!("formula" in cell)) continue;
      const read = new Set<string>();
      for (const range of referencesOf(withoutAsking(cell.formula), sheet, index).ranges) {
        const key = `${range.sheet}!${range.top},${range.left},${range.bottom},${range.right}`;
        const owners = known.get(key) ?? [...index.ownersIn(range)].map(({ at }) => `${range.sheet}!${at}`);
        known.set(key, owners);
        owners.forEach((owner) => read.add(owner));
      }
      for (const owner of read) {
        const others = readers.get(owner);
        if (others === undefined) readers.set(owner, [{ sheet, at: cell.at }]);
        else others.push({ sheet, at: cell.at });
      }
    }
  }
  return readers;
}
