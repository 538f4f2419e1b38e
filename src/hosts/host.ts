/** What the pane may ask of the sheet it stands beside, whichever program holds that sheet. */
export interface SheetHost {
  readonly kind: "excel" | "local" | "none";

  /** Address of the selection without its sheet, such as "B4" or "B4:C9". */
  selectionAddress(): Promise<string>;

  /** Whether every selected cell is blank; a cell that a formula spills into is not. */
  isSelectionEmpty(): Promise<boolean>;

  /**
   * Writes into the first selected cell. A filled cell is left alone unless `overwrite` is set, which the caller sets only
   * when the user has said so.
   */
  insert(content: Insertion, overwrite: boolean): Promise<InsertOutcome>;
}

/** A value is never read as a formula, whatever it begins with. */
export type Insertion = { readonly value: string | number } | { readonly formula: string };

export type InsertOutcome =
  | { readonly written: true; readonly at: string }
  | { readonly written: false; readonly at: string; readonly why: "filled" | "refused" };

declare global {
  interface Window {
    ductLedgerHost?: SheetHost; // set on the local page, read by the pane in its frame
  }
}
