import type { CellValue, Workbook } from "./workbook";

/** A workbook together with what its cells show. */
export interface Calculated {
  readonly workbook: Workbook;
  readonly shown: Shown;
  readonly settings?: readonly BookSetting[]; // none where it is left out
}

/** What a program may be set to, so that cells show other numbers than their formulas give. */
export type BookSetting = "calculates when asked" | "rounds as shown" | "counts in circles";

/** What the cells of a workbook show: by sheet, then by address. A cell that is not listed is blank. */
export type Shown = ReadonlyMap<string, ReadonlyMap<string, ShownCell>>;

export interface ShownCell {
  readonly value: CellValue | ShownError;
  readonly fills?: Extent; // set on the cell whose formula fills more cells than its own
  readonly merged?: Extent; // with the cells beside and below it; where a host can tell
}

/** An error as Excel names it, and the sentence that came with it. */
export interface ShownError {
  readonly error: "#VALUE!" | "#N/A" | "#NAME?" | "#NUM!" | "#DIV/0!" | "#REF!" | "#NULL!" | "#SPILL!";
  readonly message?: string;
}

/** How far the answer of a formula reaches, its own cell counted. */
export interface Extent {
  readonly rows: number;
  readonly columns: number;
}
