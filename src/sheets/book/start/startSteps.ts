import type { SheetKey } from "../../sheetKeys";

/** What to do, sheet by sheet, in the order in which one does it. */
export const steps: readonly (readonly [SheetKey, string])[] = [
  ["start", "Choose the units above, then your air's temperature, your altitude and the dust that the ducts carry."],
  ["runs", "One row for each piece of duct between two junctions: its name, the run it joins, its size and fittings."],
  ["fan", "Type the points of your fan's curve from its data sheet, or those of a fan that you think of buying."],
  ["budget", "Read what every run carries and costs, where dust would settle and what that asks of the fan."],
  ["flow", "Open and shut gates: what really flows with that fan, what leaks take, which change would help most."],
  ["sizes", "See which machines can run together, and have the pipe sizes chosen for those that shall."],
  ["leaks", "Write down the leaks that you find, before and after mending, and see which to mend next."],
  ["readings", "Turn readings taken in a duct into an airflow, with how far it may be off."],
  ["measured", "Type what you read in the ducts: what fan, hoses and leaks really do, and which reading is a slip."],
  ["claims", "Hold a vendor's numbers against physics before you buy."],
  ["summary", "Print this one page for the club."],
];

/** Sheets to look things up in. */
export const lookUps: readonly (readonly [SheetKey, string])[] = [
  ["tables", "The names that Runs takes for hoods, fittings, materials and dusts, each with its source."],
  ["cautions", "Read it before you open a machine or buy a fan."],
  ["about", "Version, definitions and the date of the tables."],
];
