/** The sheets of a budget, in their order. */
export const sheetKeys = [
  "start",
  "runs",
  "fan",
  "budget",
  "flow",
  "sizes",
  "leaks",
  "readings",
  "measured",
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
  sizes: "Sizes",
  leaks: "Leaks",
  readings: "Readings",
  measured: "Measured",
  claims: "Claims",
  summary: "Summary",
  tables: "Tables",
  cautions: "Cautions",
  about: "About",
};

/** The hidden names by which a file says which sheet of a budget a sheet is: they point to it, whatever it is called. */
export const KEY_NAMES = "ductledger.sheet.";

export const keyName = (key: SheetKey): string => `${KEY_NAMES}${key}`;

/** The key that such a name says; null for any other name. */
export const keyOfName = (name: string): SheetKey | null =>
  sheetKeys.find((key) => keyName(key) === name.toLowerCase()) ?? null;
