import type { UnitSystem } from "../reference/quantities";
import type { SheetOrder } from "../sheets/book/order";
import type { Calculated } from "../sheets/calculated";
import type { CellValue } from "../sheets/workbook";

/** What the pane may ask of the sheet it stands beside, whichever program holds that sheet. */
export interface SheetHost {
  readonly kind: "excel" | "local";

  /** The selected cells as a formula on any sheet writes them, such as Runs!B4 or 'My runs'!B4:C9; of several areas the first. */
  selectionAddress(): Promise<string>;

  /**
   * Writes into the first selected cell. One that is filled, if only by a formula that shows nothing or spills nothing into it, is left alone and named; when the user has said that it may be written over,
   * the caller names it in `over`, and what is selected by then is left alone.
   */
  insert(content: Insertion, over?: string): Promise<InsertOutcome>;

  /**
   * Writes values into cells of the open workbook, in one step that one undo takes back where the program has undo for add-ins. All
   * or none: a protected sheet refuses them. The caller has asked the user where something stands there.
   *
   * @param still what cells held when the book was read: where one holds something else by now, or where rows were moved under it, nothing
   * is written. A sheet that nothing can change between reading and writing need not look.
   */
  write(blocks: readonly CellBlock[], still: readonly CellBlock[]): Promise<WriteOutcome>;

  /** Adds new sheets, never touching those that are there. Names that are taken get a number behind them. */
  addSheets(order: SheetOrder, watch: Watch): Promise<AddOutcome>;

  /**
   * Shows the example as a budget of its own, never among the sheets of another. Where it would take the place of work that no
   * file has, the user is asked first.
   */
  openExample(units: UnitSystem, watch: Watch): Promise<AddOutcome>;

  /** Everything that stands in the open workbook, with what its cells show. */
  readBook(): Promise<Calculated>;

  /** Selects a cell and brings it into view. */
  goTo(sheet: string, at: string): Promise<void>;

  /** Makes a copy for people without the functions: a new file or workbook. The open one is never changed. */
  shareCopy(kind: CopyKind, watch: Watch): Promise<CopyOutcome>;

  /** Re-enters every formula of ours that stands at #NAME? or stays at #BUSY!; values and formats stay. */
  repair(watch: Watch): Promise<RepairOutcome>;

  /** Turns a club copy that is open back into a live budget where the copy recorded how, in new sheets or a new workbook. */
  revive(watch: Watch): Promise<AddOutcome>;

  /** Calls back whenever something changed, and says what. Returns what ends that. */
  follow(changed: (what: Change) => void): () => void;
}

/** What changed: what stands in a cell, which cells are selected, or the whole, since another book was opened in its place. */
export type Change = "cells" | "selection" | "book";

/** How a long action tells how far it is, and learns that the user has cancelled it. */
export interface Watch {
  readonly progress: (done: number, of: number, what: string) => void;
  readonly signal: AbortSignal;
}

/** "formulas" recalculates by plain formulas; "values" has none. */
export type CopyKind = "formulas" | "values";

/** A value is never read as a formula, whatever it begins with. */
export type Insertion = { readonly value: string | number } | { readonly formula: string };

/** Values from a cell on, row by row; null empties a cell. None is ever read as a formula. */
export interface CellBlock {
  readonly sheet: string;
  readonly at: string;
  readonly rows: readonly (readonly CellValue[])[];
}

export type WriteOutcome = { readonly written: true } | { readonly written: false; readonly why: string };

export type InsertOutcome =
  | {
      readonly written: true;
      readonly at: string;
      readonly isBlocked: boolean; // its answer finds filled cells in its way
      readonly isText?: boolean; // the number or formula stands there as a text, since the cell is formatted so
    }
  | { readonly written: false; readonly at: string; readonly why: "filled" } // with its sheet, as `over` takes it
  | { readonly written: false; readonly at: string; readonly why: "refused" | "itself" }; // the formula would read its own cell

/** Where nothing was added, one sentence says why; a cancelled addition leaves nothing behind. */
export type AddOutcome =
  | {
      readonly added: true;
      readonly sheets: readonly string[];
      readonly left?: readonly string[]; // of a copy: cells that are not made live, each with its reason
      readonly moved?: string; // of a copy: what is told where its numbers come out otherwise now, "" where they don't
      readonly refused?: readonly string[]; // what the host refused and the sheets can do without: sentences
    }
  | { readonly added: false; readonly why: string };

export type CopyOutcome =
  | {
      readonly made: true;
      readonly name: string; // of the file or workbook
      readonly live: number; // cells that recalculate
      readonly fixed: number; // cells that stay as they are
      readonly untranslated: readonly string[]; // cells that could not be translated, each with its reason
      readonly unchecked: readonly string[]; // cells of the user's own that were not computed here and so not compared
      readonly opening?: CopyOpening; // where the host was asked to open the copy; a browser's download needs no asking
    }
  | { readonly made: false; readonly why: string };

/** A copy that the host was asked to open. Whether it did cannot be seen from here, so the copy comes along as a file. */
export interface CopyOpening {
  readonly refused: string | null; // the host's reason, a sentence
  readonly file: { readonly name: string; readonly bytes: Uint8Array };
}

export interface RepairOutcome {
  readonly repaired: number; // formulas entered again
  readonly stillWrong: readonly string[]; // addresses that stand there all the same
  readonly protectedSheets: readonly string[]; // left alone
  readonly textCells: readonly string[]; // left alone: in a cell formatted as text a formula would become its own letters
}

declare global {
  interface Window {
    ductLedgerHost?: SheetHost; // set on the local page, read by the pane in its frame
  }
}
