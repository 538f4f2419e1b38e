import type { UnitSystem } from "../../reference/quantities";
import type { Sheet } from "../workbook";

/** The sheets of a budget, in their order. */
export const sheetKeys = [
  "start",
  "runs",
  "fan",
  "budget",
  "flow",
  "leaks",
  "readings",
  "claims",
  "summary",
  "tables",
  "cautions",
  "about",
] as const;

export type SheetKey = (typeof sheetKeys)[number];

/** What each sheet is called where no other sheet has taken the name. */
export const usualNames: Readonly<Record<SheetKey, string>> = {
  start: "Start",
  runs: "Runs",
  fan: "Fan",
  budget: "Budget",
  flow: "Flow",
  leaks: "Leaks",
  readings: "Readings",
  claims: "Claims",
  summary: "Summary",
  tables: "Tables",
  cautions: "Cautions",
  about: "About",
};

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
  /** A range of another sheet as a formula writes it: Runs!$B$8:$S$48. */
  readonly ref: (key: SheetKey, range: string) => string;
  /** A named cell as a formula writes it. */
  readonly name: (key: CellNameKey) => string;
}

export type SheetOf<Contents> = (frame: Frame, contents: Contents) => Sheet;
