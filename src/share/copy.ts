import type { Calculated } from "../sheets/calculated";

/** What a copy is asked to be. The date and the version are given, since nothing here has a clock. */
export interface CopyOrder {
  readonly kind: "formulas" | "values";
  readonly date: string; // 2026-11-25
  readonly version: string;
}

/** A copy for people without the functions, and what became of each cell. */
export interface ClubCopy {
  readonly book: Calculated; // formulas that are plain; a cell whose value is not known here is missing from `shown`
  readonly live: number; // formulas that recalculate
  readonly fixed: readonly FixedCell[];
  readonly untranslated: readonly FixedCell[]; // what could not be read at all: it stays as its last value
}

export interface FixedCell {
  readonly sheet: string;
  readonly at: string;
  readonly function: string; // SOLVE
  readonly why: string;
}
