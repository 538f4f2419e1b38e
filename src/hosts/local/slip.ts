import { distance } from "fastest-levenshtein";

/**
 * What is wrong with a formula that cannot be read, in a clause. The grid says only that it cannot; these are the slips
 * that people make: a quote or a bracket too few or too many, a semicolon or a blank where a comma belongs.
 */
export function slipIn(formula: string): string {
  const quotes = formula.split('"').length - 1;
  if (quotes % 2 === 1)
    return 'a quote " is missing or stands too much: a text begins with one and ends with one, as in "SI"';
  const bare = formula.replace(/"[^"]*"/g, '""').replace(/'[^']*'/g, "''"); // without what stands in texts and sheet names
  const [opening, closing] = ["(", ")"].map((bracket) => bare.split(bracket).length - 1) as [number, number];
  if (closing > opening) return "a bracket ) closes that was never opened";
  if (opening > closing) return `${opening - closing === 1 ? "a bracket ( is" : "brackets ( are"} never closed`;
  if (bare.replace(/\{[^}]*\}/g, "").includes(";"))
    return "a semicolon stands in it: values are set apart by a comma here";
  const gap = /([\w.)"%]+)\s+([\w("]+)/.exec(bare);
  if (gap !== null)
    return `between ${wordOf(gap[1]!)} and ${wordOf(gap[2]!)} a comma is missing, or a blank stands too much`;
  return "it cannot be read as a formula: look at its commas, brackets and quotes";
}

/** A text was emptied above, and is no help to look for. */
const wordOf = (part: string): string => (part === '""' ? "a text" : part);

const FARTHEST = 3; // letters by which a name may be off and still be meant

/** What to write in place of a function that nobody knows; "" where no name is near. */
export function nearestFunction(name: string, known: readonly string[]): string {
  const wanted = name.toUpperCase();
  const bare = wanted.replace(/^.*\./, "");
  const near = known
    .map((each) => ({ each, away: Math.min(distance(wanted, each), each.endsWith(`.${bare}`) ? 1 : Infinity) }))
    .filter(({ each, away }) => away <= Math.min(FARTHEST, Math.floor(each.length / 3)))
    .sort((one, other) => one.away - other.away);
  return near[0]?.each ?? "";
}
