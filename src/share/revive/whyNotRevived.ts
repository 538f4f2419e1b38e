import { tokenize } from "@borgar/fx";
import { callsOurs } from "../../sheets/ourCalls";
import { foreignFunction } from "../foreign";
import { formulaTree, UnreadableFormula } from "../formula/tree";
import { namesIn, reachesOutside } from "../outside";
import { sheetsIn } from "./sheetsIn";

const READABLE = new Set(
  "fx_prefix func operator number string bool error whitespace newline range range_beam range_ternary range_named structured".split(
    " ",
  ),
);

/**
 * Why a recorded formula is not made live again, as a clause; null where it may be. Anybody can write into a copy's sheet of
 * formulas, so only what is plainly a formula of ours comes back.
 *
 * @param sheets names of the sheets that the live budget has
 */
export function whyNotRevived(formula: string, sheets: ReadonlySet<string>): string | null {
  if (!formula.startsWith("=") || !isWhole(formula)) return "what is recorded is no formula that can be read";
  const outside = reachesOutside(formula);
  if (outside !== null) return outside;
  const names = namesIn(formula);
  const vague = names.find((name) => name === "INDIRECT" || name === "HYPERLINK");
  if (vague !== undefined) return `${vague} may lead out of this workbook`;
  if (!callsOurs(formula)) return "what is recorded calls no function of Duct Ledger";
  if (foreignFunction(formula.replace(/duct\./gi, "")) !== null) return "it calls a function of another add-in";
  const strange = sheetsIn(formula).find((sheet) => !sheets.has(sheet.toLowerCase()));
  return strange === undefined ? null : `it reads a sheet that is not there (${strange})`;
}

/** Whether every word of it is known for what it is, every text ends and every bracket closes. */
function isWhole(formula: string): boolean {
  const tokens = tokenize(formula, { mergeRefs: true });
  if (tokens.some((token) => !READABLE.has(token.type) || ("unterminated" in token && token.unterminated === true)))
    return false;
  try {
    formulaTree(formula);
    return true;
  } catch (error) {
    if (error instanceof UnreadableFormula) return false;
    throw error;
  }
}
