import type { Guide } from "../guide";
import { inHost } from "../inHost";
import { aboutTable as aboutRows } from "../tables/about";

/**
 * Version, definitions and the date of the tables, as rows (no unit).
 * @customfunction ABOUT
 * @returns table
 */
export function about(): unknown[][] {
  return inHost(null, aboutRows);
}

export const guide: Guide = {
  maths: "Version, definitions and dates as rows",
  source: "tables",
  basis: "",
  limits: "Says which version computed a sheet.",
  also: ["version", "source of the numbers"],
  example: { asks: "This version", args: [] },
};
