import type { Workbook } from "../../sheets/workbook";

/** The open budget and what the page knows of it: what a reload must bring back. */
export interface OpenBook {
  readonly workbook: Workbook;
  readonly file: string; // the name under which it is saved
  readonly unsaved: boolean; // whether it has changes that no file has
}
