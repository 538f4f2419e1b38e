import { cellAddress } from "../../src/sheets/address";
import type { Calculated } from "../../src/sheets/calculated";
import { ourCallsIn } from "../../src/sheets/ourCalls";
import { cellIndex } from "../../src/share/fixed/cellIndex";
import { referencesOf } from "../../src/share/fixed/reach";

export interface Calls {
  readonly calls: number; // of our functions, as they stand in the formulas
  readonly cells: readonly string[]; // whose formulas have them
  readonly chain: readonly string[]; // the longest row of such cells, each of which waits for the one before
}

/** Which cells of a book call our functions and wait for one another: Excel asks for a function's answer once all that it reads has come. */
export function callsOf(book: Calculated): Calls {
  const index = cellIndex(book);
  const chains = new Map<string, readonly string[]>(); // by cell, the longest that ends in it
  const chainTo = (sheet: string, at: string, formula: string): readonly string[] => {
    const key = `${sheet}!${at}`;
    const known = chains.get(key);
    if (known !== undefined) return known;
    chains.set(key, []); // a formula that leads back to itself waits for nothing
    let longest: readonly string[] = [];
    for (const range of referencesOf(formula, sheet, index).ranges)
      for (let row = range.top; row <= range.bottom; row++)
        for (let column = range.left; column <= range.right; column++) {
          const owner = index.ownerOf(range.sheet, cellAddress(column, row));
          const before = owner === null ? [] : chainTo(range.sheet, owner.at, owner.formula);
          if (before.length > longest.length) longest = before;
        }
    const chain = ourCallsIn(formula).length > 0 ? [...longest, key] : longest;
    chains.set(key, chain);
    return chain;
  };
  const formulas = book.workbook.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => ("formula" in cell ? [{ sheet: name, ...cell }] : [])),
  );
  const all = formulas.map(({ sheet, at, formula }) => chainTo(sheet, at, formula));
  const calling = formulas.filter(({ formula }) => ourCallsIn(formula).length > 0);
  return {
    calls: calling.reduce((sum, { formula }) => sum + ourCallsIn(formula).length, 0),
    cells: calling.map(({ sheet, at }) => `${sheet}!${at}`),
    chain: all.reduce((longest, chain) => (chain.length > longest.length ? chain : longest)),
  };
}
