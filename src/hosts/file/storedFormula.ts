import { type Token, tokenize } from "@borgar/fx";
import { ourName, typedName } from "../../sheets/ourCalls";
import { withoutPrefix, withPrefix } from "./futureFunctions";
import { itemAt } from "../../reference/itemAt";

/**
 * Formulas as a file keeps them. Excel stores DUCT.AREA as _xldudf_DUCT_AREA; other programs lower the case of a name that
 * they do not know, and Excel's older add-ins put a workbook's number before it ([2]!_xldudf_...). A text in quotes is left
 * alone, whatever it says.
 */

/** "=DUCT.AREA(4)" becomes "_xldudf_DUCT_AREA(4)". */
export function toStored(formula: string): string {
  if (staysAsItIs(formula)) return formula.slice(1);
  const tokens = tokensOf(formula);
  const words = tokens.map((token, index) => {
    if (token.type === "whitespace" && index > 0 && isCall(tokens, index - 1)) return ""; // a file allows none there
    if (token.type === "operator" && token.value === "#" && isRange(tokens[index - 1])) return ")";
    const word = isCall(tokens, index) ? storedName(token.value) : token.value;
    const spills = isRange(token) && tokens[index + 1]?.value === "#"; // B5# is kept as a call
    return spills ? `_xlfn.ANCHORARRAY(${word}` : word;
  });
  return words.join("");
}

/** A formula in which nothing needs another spelling, seen without taking it apart: a copy has forty thousand of them. */
const staysAsItIs = (formula: string): boolean =>
  formula.startsWith("=") &&
  !/#|duct|\s\(/i.test(formula) &&
  (formula.match(/[a-z_][\w.]*(?=\()/gi) ?? []).every((name) => withPrefix(name) === name);

/** "_xldudf_duct_area(4)" becomes "=DUCT.AREA(4)". */
export function fromStored(stored: string): string {
  const tokens = withoutWorkbookNumbers(tokensOf(stored.startsWith("=") ? stored : `=${stored}`));
  let formula = "=";
  for (let index = 0; index < tokens.length; index++) {
    const token = itemAt(tokens, index);
    const [open, range, close] = tokens.slice(index + 1, index + 4);
    if (/^_xlfn\.ANCHORARRAY$/i.test(token.value) && open?.value === "(" && isRange(range) && close?.value === ")") {
      formula += `${range!.value}#`;
      index += 3;
    } else formula += isCall(tokens, index) ? nameTyped(token.value) : token.value;
  }
  return formula;
}

const tokensOf = (formula: string): Token[] =>
  tokenize(formula, { mergeRefs: true }).filter(({ type }) => type !== "fx_prefix");

const isRange = (token: Token | undefined): boolean => token?.type === "range";

/** A name right before an opening parenthesis is a function's, with a blank between them as well. */
function isCall(tokens: readonly Token[], index: number): boolean {
  const { type } = itemAt(tokens, index);
  if (type === "func") return true;
  if (type !== "range_named") return false;
  let next = index + 1;
  while (tokens[next]?.type === "whitespace") next++;
  return tokens[next]?.value === "(";
}

function storedName(name: string): string {
  const ours = ourName(name);
  return ours === null ? withPrefix(name) : `_xldudf_DUCT_${ours.replaceAll(".", "_")}`;
}

function nameTyped(name: string): string {
  const plain = withoutPrefix(name);
  const ours = ourName(plain);
  return ours === null ? plain : typedName(ours);
}

function withoutWorkbookNumbers(tokens: readonly Token[]): Token[] {
  const drop = new Set<number>();
  tokens.forEach((token, index) => {
    const before = tokens.slice(Math.max(0, index - 4), index);
    const isNumbered = /^\[\d+\]!$/.test(before.map(({ value }) => value).join(""));
    if (/^_xldudf_duct_/i.test(token.value) && isNumbered) before.forEach((_, step) => drop.add(index - 1 - step));
  });
  return tokens.filter((_, index) => !drop.has(index));
}
