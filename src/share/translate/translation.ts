import type { ShownError, Extent } from "../../sheets/calculated";
import type { CellValue } from "../../sheets/workbook";
import type { RangeRef } from "../../sheets/rangeRef";
import type { UnitSystem } from "../../reference/quantities";
import type { LookupTables } from "./lookupTables";
import type { Workings } from "./workings";

/** What a cell shows while the copy is made: its value, null for a blank, or an error. */
export type ShownValue = CellValue | ShownError;

/** A formula's argument: its text as plain formula (already free of our functions), the range it names if it is just that, and what it shows now. */
export interface Argument {
  readonly text: string;
  readonly range?: RangeRef;
  readonly blankBelow?: (column: number) => number; // how many cells of a column below that range show nothing, up to a hundred
  readonly value: readonly (readonly ShownValue[])[]; // rows of current values; blanks where `computed`
  readonly computed?: true; // an expression or a cell of the workings: what it shows now is not known
}

/** Where a call stands and what its copy carries. */
export interface CallContext {
  readonly sheet: string;
  readonly at: string;
  readonly extent: Extent; // how far its answer reaches now
  readonly tables: LookupTables;
  readonly workings: Workings;
  /** Hears of each range of several cells that a call reads. */
  readonly takesRange?: (range: RangeRef) => void;
  /** Hears of each units cell that the call goes by: the cell that says whether it stands, and the sheet it is on. */
  readonly takesUnits?: (taken: {
    readonly sheet: string;
    readonly system: UnitSystem;
    readonly stands: string;
  }) => void;
}

/** What becomes of a call: one plain expression (no leading "=") for each cell of its answer, or the values it shows now. */
export type Translation =
  | { readonly kind: "cells"; readonly formulas: readonly (readonly string[])[] }
  | { readonly kind: "fixed"; readonly why: string };

export type Translator = (args: readonly (Argument | null)[], context: CallContext) => Translation;

export const fixed = (why: string): Translation => ({ kind: "fixed", why });
export const oneCell = (formula: string): Translation => ({ kind: "cells", formulas: [[formula]] });
