import type { UnitSystem } from "../../reference/quantities";
import type { SheetKey } from "../sheetKeys";
import type { Sheet } from "../workbook";

/** Names of single cells on the sheet Start, which formulas everywhere use. */
export const cellNames = ["units", "density", "dust", "transport"] as const;

export type CellNameKey = (typeof cellNames)[number];

/**
 * What a sheet needs to know of the workbook around it. Where a workbook already has a sheet or a name of that kind,
 * ours are called otherwise, so no formula spells them out.
 */
export interface Frame {
  readonly units: UnitSystem; // in which the contents' numbers stand
  /** A sheet's name as text. */
  readonly sheet: (key: SheetKey) => string;
  /** Whether the workbook has that sheet, so that texts and formulas speak only of sheets that are there. */
  readonly has: (key: SheetKey) => boolean;
  /** Whether it is made now, so that it knows of all that are made with it. */
  readonly adds: (key: SheetKey) => boolean;
  /** A range of another sheet as a formula writes it: Runs!$B$8:$S$48. */
  readonly ref: (key: SheetKey, range: string) => string;
  /** A named cell as a formula writes it. */
  readonly name: (key: CellNameKey) => string;
}

export type SheetOf<Contents> = (frame: Frame, contents: Contents) => Sheet;
