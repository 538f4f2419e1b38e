import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";

/** A formula that a file says once for many cells, as it reads in another of them: its relative places move along. */
export const movedFormula = (formula: string, from: string, to: string): string =>
  translateFormulaToA1(translateFormulaToR1C1(formula, from), to);
