import {
  stringifyTokens,
  tokenize,
  translateFormulaToA1,
  translateFormulaToR1C1,
  translateTokensToA1,
} from "@borgar/fx";

/** A formula that a file says once for many cells. */
export interface SharedFormula {
  readonly characters: number;
  /** The same formula as it reads in another cell. */
  readonly at: (cell: string) => string;
}

/** @param from the cell that says it; in others its places are as many steps away */
export function sharedFormula(formula: string, from: string): SharedFormula {
  const relative = translateFormulaToR1C1(formula, from);
  // Taken apart once for all cells. Names of other workbooks, in brackets, are understood only where the whole is moved at once.
  const tokens = formula.includes("[") ? null : tokenize(relative, { r1c1: true, allowTernary: true });
  const moved = (cell: string): string =>
    tokens === null ? translateFormulaToA1(relative, cell) : stringifyTokens(translateTokensToA1(tokens, cell));
  return { characters: relative.length, at: (cell) => inOnePiece(moved(cell)) };
}

/** A text that was put together is kept in all its pieces until it is searched. */
function inOnePiece(text: string): string {
  text.search(/\n/);
  return text;
}
