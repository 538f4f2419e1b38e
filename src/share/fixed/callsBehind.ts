import { cellAddress } from "../../sheets/address";
import type { Sheet } from "../../sheets/workbook";
import type { CellIndex } from "./cellIndex";
import type { FixedCall } from "./fixedCall";
import { referencesOf } from "./reach";

/** The fixed answers on other sheets that a sheet's formulas rest on, through whatever computes the cells between. */
export function callsBehind(sheet: Sheet, calls: readonly FixedCall[], index: CellIndex): FixedCall[] {
  const fixed = new Map(calls.map((call) => [`${call.sheet}!${call.at}`, call]));
  const found = new Set<FixedCall>();
  const seen = new Set<string>();
  const waiting = sheet.cells.flatMap((cell) => ("formula" in cell ? [{ on: sheet.name, formula: cell.formula }] : []));
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const range of referencesOf(next.formula, next.on, index).ranges) {
      for (let row = range.top; row <= range.bottom; row++) {
        for (let column = range.left; column <= range.right; column++) {
          const owner = index.ownerOf(range.sheet, cellAddress(column, row));
          if (owner === null) continue;
          const key = `${range.sheet}!${owner.at}`;
          if (seen.has(key)) continue;
          seen.add(key);
          const call = fixed.get(key);
          if (call === undefined) waiting.push({ on: range.sheet, formula: owner.formula });
          else if (call.sheet !== sheet.name) found.add(call); // what lies behind it, its own check compares
        }
      }
    }
  }
  return calls.filter((call) => found.has(call));
}
