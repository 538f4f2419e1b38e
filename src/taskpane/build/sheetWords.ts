import type { SheetKey } from "../../sheets/sheetKeys";

/** What each sheet is for, in a line. */
export const sheetWords: Readonly<Record<SheetKey, string>> = {
  start: "units, air and dust for the whole budget, and the steps",
  runs: "every piece of duct with its fittings and gates",
  fan: "the fan's curve and where it works",
  budget: "what the hoods ask of the fan, run by run",
  flow: "what really flows, by open gates; what would help",
  sizes: "which machines can run together; which pipe to buy",
  leaks: "measured leaks, turned into openings",
  readings: "readings with their errors, and slips put right",
  measured: "what your readings say of the whole system",
  claims: "a vendor's numbers held against physics",
  summary: "one page to print",
  tables: "the reference tables with their sources",
  cautions: "the cautions with their sources",
  about: "version and definitions",
};

/** The sheets of a first budget; the rest can follow later. */
export const usualChoice: readonly SheetKey[] = ["start", "runs", "fan", "budget", "flow", "cautions", "about"];
