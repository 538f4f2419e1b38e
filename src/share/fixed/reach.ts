import { tokenize } from "@borgar/fx";
import { cellAddress } from "../../sheets/address";
import { type RangeRef, readRange } from "../../sheets/rangeRef";
import type { CellIndex } from "./cellIndex";

/** What a formula uses: cells that somebody typed (or left blank), and cells it takes that are computed. */
export interface Reach {
  readonly typed: readonly string[]; // keys of cells: sheet, "!", address
  readonly computed: readonly string[];
  readonly unfollowed: readonly string[]; // words in the formulas on the way whose cells cannot be told
}

/** Cells looked at for one formula before the walk gives up; a book that needs more says so. */
const MOST_WORK = 2_000_000;

const MOVING = /^(INDIRECT|OFFSET)$/i;

/**
 * Follows a formula to the cells it rests on, through plain formulas and through whatever fills the cells between.
 * Every cell is visited once, so circular references end.
 */
export function reachOf(sheet: string, formula: string, index: CellIndex): Reach {
  const typed = new Set<string>();
  const computed = new Set<string>();
  const unfollowed = new Set<string>();
  const seenFormulas = new Set<string>();
  const seenRanges = new Set<string>();
  const waiting: { sheet: string; formula: string; direct: boolean }[] = [{ sheet, formula, direct: true }];
  let work = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { ranges, unknown } = referencesOf(next.formula, next.sheet, index);
    unknown.forEach((word) => unfollowed.add(word));
    for (const range of ranges) {
      const key = `${next.direct}${range.sheet}!${range.top},${range.left},${range.bottom},${range.right}`;
      if (seenRanges.has(key)) continue;
      seenRanges.add(key);
      for (let row = range.top; row <= range.bottom; row++) {
        for (let column = range.left; column <= range.right; column++) {
          if (++work > MOST_WORK)
            return { typed: [...typed], computed: [...computed], unfollowed: [...unfollowed, "so many cells"] };
          const at = cellAddress(column, row);
          const cell = cellKey(range.sheet, at);
          const owner = index.ownerOf(range.sheet, at);
          if (owner === null) {
            typed.add(cell);
            continue;
          }
          if (next.direct) computed.add(cell);
          const ownerKey = cellKey(range.sheet, owner.at);
          if (seenFormulas.has(ownerKey)) continue;
          seenFormulas.add(ownerKey);
          waiting.push({ sheet: range.sheet, formula: owner.formula, direct: false });
        }
      }
    }
  }
  return { typed: [...typed], computed: [...computed], unfollowed: [...unfollowed] };
}

const cellKey = (sheet: string, at: string): string => `${sheet}!${at}`;

/** Sheet and address of a key; a sheet's name may hold an exclamation mark, an address never. */
export function keyParts(key: string): { sheet: string; at: string } {
  const cut = key.lastIndexOf("!");
  return { sheet: key.slice(0, cut), at: key.slice(cut + 1) };
}

/** The ranges that a formula names, whole columns cut to what is filled, and the words whose cells cannot be told. */
export function referencesOf(
  formula: string,
  sheet: string,
  index: CellIndex,
): { readonly ranges: readonly RangeRef[]; readonly unknown: readonly string[] } {
  const ranges: RangeRef[] = [];
  const unknown: string[] = [];
  for (const token of tokenize(formula)) {
    const { type, value } = token;
    if (type === "func" && MOVING.test(value)) unknown.push(value.toUpperCase());
    if (type === "structured") unknown.push(value);
    if (type !== "range" && type !== "range_beam" && type !== "range_named") continue;
    const range = index.resolve(value, sheet) ?? (type === "range" ? readRange(value, sheet) : null);
    if (range === null) unknown.push(value);
    else ranges.push(range);
  }
  return { ranges, unknown };
}
