import { quotedText } from "../references";

/** A spelling that a find-and-replace over all sheets does not find. */
export const BEFORE = "·"; // every letter

export const apart = (text: string): string => [...text].map((letter) => BEFORE + letter).join("");

/** A formula's text as it is read again. */
export const together = (text: string): string => `SUBSTITUTE(${text},"${BEFORE}","")`;

const MOST = 100; // letters that are compared; a text in a formula has at most 255 characters

/** Whether a cell still has the text that it had, whatever its case and blanks. */
export function isSameText(cell: string, was: string): string {
  const text = was.replace(/\s+/g, " ").trim();
  const now = `TRIM(${was.includes("\n") ? `SUBSTITUTE(${cell},CHAR(10)," ")` : cell})`;
  const begin = text.length > MOST ? `LEFT(${now},${MOST})` : now;
  return text === "" ? `${begin}=""` : `${begin}=${together(quotedText(apart(text.slice(0, MOST))))}`;
}
