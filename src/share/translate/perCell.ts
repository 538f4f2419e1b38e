import { type Token, tokenize } from "@borgar/fx";
import type { Extent } from "../../sheets/calculated";
import { cellOf } from "../formula/ranges";
import { type RangeRef, readRange } from "../../sheets/rangeRef";
import { columnsOf, isOneCell, rowsOf } from "../../sheets/rectangle";
import { itemAt } from "../../reference/itemAt";

/** A formula over ranges that has no plain formula for each of its cells; the message says why. */
export class NotPlain extends Error {
  constructor(message: string) {
    super(message);
    this.name = "NotPlain";
  }
}

/** Functions that a range makes work cell by cell. All others take a range as a whole and answer with one value. */
const LIFTED = new Set(
  "IF IFERROR IFNA AND OR NOT ABS ROUND ROUNDUP ROUNDDOWN INT TRUNC SQRT EXP LN LOG POWER MOD SIGN TEXT VALUE LEFT RIGHT MID LEN TRIM UPPER LOWER PROPER CLEAN EXACT REPT CHAR CODE FIND SEARCH REPLACE SUBSTITUTE ISNUMBER ISTEXT ISBLANK ISERROR ISNA PI CEILING FLOOR".split(
    " ",
  ),
);
/** AND and OR would fold a range into one value. */
const FOLDED = new Set(["AND", "OR"]);

/** Functions whose answer may be a range: what they fill cannot be told from their text. */
const SPREADING = new Set(
  "FILTER SORT SORTBY UNIQUE SEQUENCE TRANSPOSE OFFSET INDIRECT LET LAMBDA MAP BYROW BYCOL MAKEARRAY SCAN REDUCE VSTACK HSTACK TAKE DROP TOROW TOCOL WRAPROWS WRAPCOLS CHOOSECOLS CHOOSEROWS EXPAND MMULT MINVERSE FREQUENCY LINEST TREND XLOOKUP RANDARRAY TEXTSPLIT".split(
    " ",
  ),
);

interface Found {
  readonly token: Token;
  readonly range: RangeRef | null; // a range of several cells that the formula takes cell by cell
  readonly isBranch: boolean; // a text that is the whole of a branch of IF
}

/** The tokens of a formula's text, each with what becomes of it when the formula is written cell by cell. */
function readTokens(text: string, sheet: string): Found[] {
  const calls: string[] = [];
  let opens = "";
  return tokenize(text).map((token, at, tokens) => {
    const { type, value } = token;
    if (type === "func") {
      opens = value.toUpperCase().replace(/^_XLFN\./, "");
      if (SPREADING.has(opens)) throw new NotPlain(`${opens} beside it may fill any number of cells`);
    } else if (type === "operator" && value === "(") {
      calls.push(opens);
      opens = "";
    } else if (type === "operator" && value === ")") calls.pop();
    const lifted = calls.every((name) => name === "" || (LIFTED.has(name) && !FOLDED.has(name)));
    const range = type === "range" && lifted ? readRange(value, sheet) : null;
    if (range === null && lifted && (type === "range_beam" || type === "structured"))
      throw new NotPlain(type === "structured" ? "it takes a table by its name" : "it takes whole columns or rows");
    return {
      token,
      range: range === null || isOneCell(range) ? null : range,
      isBranch: calls.at(-1) === "IF" && isBranch(tokens, at),
    };
  });
}

function isBranch(tokens: readonly Token[], at: number): boolean {
  const before = tokens
    .slice(0, at)
    .reverse()
    .find(({ type }) => type !== "whitespace");
  const after = tokens.slice(at + 1).find(({ type }) => type !== "whitespace");
  return (
    itemAt(tokens, at).type === "string" && before?.value === "," && (after?.value === "," || after?.value === ")")
  );
}

/** How many cells a formula fills. */
export function shapeOf(text: string, sheet: string): Extent {
  const ranges = readTokens(text, sheet).flatMap(({ range }) => (range === null ? [] : [range]));
  const rows = Math.max(1, ...ranges.map(rowsOf));
  const columns = Math.max(1, ...ranges.map(columnsOf));
  const fits = (size: number, whole: number): boolean => size === 1 || size === whole;
  if (!ranges.every((range) => fits(rowsOf(range), rows) && fits(columnsOf(range), columns)))
    throw new NotPlain("its ranges are of different sizes");
  return { rows, columns };
}

/**
 * The formula of one of its cells, rows and columns from 0. A text that stands alone in a branch of IF fills the first cell
 * only, as it would if that branch were the answer.
 */
export const perCell = (text: string, sheet: string, row: number, column: number): string =>
  readTokens(text, sheet)
    .map(({ token, range, isBranch }) => {
      if (range !== null) return cellOf(range, row, column, sheet);
      return isBranch && row + column > 0 ? '""' : token.value;
    })
    .join("");
