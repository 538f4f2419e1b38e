import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";

/** A formula that a file says once for many cells, its places as steps from the cell that says it. */
export const relativeFormula = (formula: string, from: string): string => translateFormulaToR1C1(formula, from);

/** The same formula as it reads in another cell; searched once, since a text that was put together is else kept in all its pieces. */
export function formulaAt(relative: string, at: string): string {
  const formula = translateFormulaToA1(relative, at);
  formula.search(/\n/);
  return formula;
}
