import type { CellValue } from "../../sheets/workbook";
import { apart, BEFORE, together } from "../translate/lettersApart";

const MOST_LETTERS = 255; // of a text in a formula
const MOST_DIGITS = 15; // that every program keeps

/**
 * Whether a cell holds what was typed, as a formula asks it without spelling that out: a find-and-replace over all sheets changes what is
 * stored for a comparison along with the input, and would leave an old number unmarked. Null where it cannot be said so.
 */
export function isAsTyped(now: string, was: CellValue): string | null {
  if (typeof was === "number") {
    const number = numberApart(was);
    return number === null ? null : `${now}=${number}`;
  }
  if (typeof was !== "string" || was === "" || was.includes(BEFORE) || was.includes('"')) return null;
  const letters = apart(was);
  return letters.length > MOST_LETTERS ? null : `EXACT(${now},${together(`"${letters}"`)})`;
}

/** 52.5 as VALUE(5&2&5)/1E1, which is the same to the last digit: two whole numbers, divided once. */
function numberApart(value: number): string | null {
  const [, sign = "", whole, part = ""] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(String(value)) ?? [];
  if (whole === undefined) return null;
  const digits = `${whole}${part}`.replace(/^0+(?=.)/, "");
  return digits.length > MOST_DIGITS ? null : `${sign}VALUE(${[...digits].join("&")})/1E${part.length}`;
}
