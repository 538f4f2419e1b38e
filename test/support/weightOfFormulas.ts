import { cellAddress } from "../../src/sheets/address";
import type { Calculated } from "../../src/sheets/calculated";
import { cellIndex } from "../../src/share/fixed/cellIndex";
import { referencesOf } from "../../src/share/fixed/reach";

/** What a program has to do for a book of plain formulas when all of it is computed. */
export interface Weight {
  readonly named: number; // cells in the ranges of all formulas, each as often as a formula names it
  readonly chain: number; // formulas of which each waits for the one before
}

export function weightOf(book: Calculated): Weight {
  const index = cellIndex(book);
  const chains = new Map<string, number>(); // by cell, the longest that ends in it
  let named = 0;
  const chainTo = (sheet: string, at: string, formula: string): number => {
    const key = `${sheet}!${at}`;
    const known = chains.get(key);
    if (known !== undefined) return known;
    chains.set(key, 0); // a formula that leads back to itself waits for nothing
    let longest = 0;
    for (const range of referencesOf(formula, sheet, index).ranges)
      for (let row = range.top; row <= range.bottom; row++)
        for (let column = range.left; column <= range.right; column++) {
          named++;
          const before = index.ownerOf(range.sheet, cellAddress(column, row));
          if (before !== null) longest = Math.max(longest, chainTo(range.sheet, before.at, before.formula));
        }
    chains.set(key, longest + 1);
    return longest + 1;
  };
  for (const { name, cells } of book.workbook.sheets)
    for (const cell of cells) if ("formula" in cell) chainTo(name, cell.at, cell.formula);
  return { named, chain: Math.max(0, ...chains.values()) };
}
