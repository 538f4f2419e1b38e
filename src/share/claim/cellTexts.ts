import { quotedText } from "../references";
import { KIND } from "./claimNames";

/** How a cell of the table of facts is told and taken apart. Each takes the text of a cell and gives the text of an expression. */

const BLANKS = [
  "CHAR(9)",
  "CHAR(10)",
  "CHAR(13)",
  ...[0xa0, 0x2009, 0x202f].map((code) => `"${String.fromCharCode(code)}"`),
];

/** A text with a plain blank for each other sign of white space. */
export const withPlainBlanks = (text: string): string =>
  BLANKS.reduce((inner, blank) => `SUBSTITUTE(${inner},${blank}," ")`, text);

/** The number of what stands in a cell, by KIND. */
export const kindOfCell = (cell: string): string =>
  `IF(ISERROR(${cell}),${KIND.error},IF(ISLOGICAL(${cell}),${KIND.truth},IF(ISNUMBER(${cell}),IF(${cell}=0,0,${KIND.number}),IF(TRIM(${withPlainBlanks(cell)})="",0,${KIND.text}))))`;

const END = quotedText("¦"); // stands for the last sign of a text

/** A text without the blanks around it; those inside stay, as TRIM would not have them. */
export function trimmed(text: string): string {
  const last = `RIGHT(TRIM(${text}),1)`;
  const from = `FIND(LEFT(TRIM(${text}),1),${text})`;
  const to = `FIND(${END},SUBSTITUTE(${text},${last},${END},LEN(${text})-LEN(SUBSTITUTE(${text},${last},""))))`;
  return `IF(TRIM(${text})=${text},${text},MID(${text},${from},${to}-${from}+1))`;
}

/** A text without the blanks around it, those inside as they were typed, by the same text with plain blanks, whole and trimmed. */
export const asTyped = (text: string, plain: string, inside: string): string =>
  `MID(${text},FIND(LEFT(${inside},1),${plain}),LEN(${inside}))`;

const LONGEST_SHOWN = 40; // as the function repeats a text
const FIGURES_SHOWN = 7;

/** A text as a sentence repeats it. */
export const inQuotes = (text: string): string =>
  `CHAR(34)&SUBSTITUTE(LEFT(${text},${LONGEST_SHOWN}),".. ",". ")&IF(LEN(${text})>${LONGEST_SHOWN},"…","")&CHAR(34)`;

/** A number other than 0 as a sentence repeats it. */
export function numberShown(cell: string): string {
  const digits = `(${FIGURES_SHOWN - 1}-INT(LOG(ABS(${cell}))))`;
  return `IF(${digits}>=0,ROUND(${cell},${digits}),ROUND(${cell}*10^${digits},0)/10^${digits})&""`;
}

/** An error value in words: what tells the others apart is not in every program, and nothing was found is the usual one. */
export const errorShown = (cell: string): string => `IF(ISNA(${cell}),"the error #N/A","an error")`;

export const truthShown = (cell: string): string => `IF(${cell},"TRUE","FALSE")`;

/** A text of "0" for every digit. */
export const digitPattern = (text: string): string =>
  [..."123456789"].reduce((inner, digit) => `SUBSTITUTE(${inner},"${digit}","0")`, text);

/**
 * With how many zeros a pattern begins: they become blanks, and the first sign that is none is found.
 *
 * @param commas whether commas count too
 */
export function zerosAhead(pattern: string, commas = false): string {
  const zeros = `SUBSTITUTE(SUBSTITUTE(${pattern}," ","_"),"0"," ")`;
  const blanked = `${commas ? `SUBSTITUTE(${zeros},","," ")` : zeros}&"|"`;
  return `(FIND(LEFT(TRIM(${blanked}),1),${blanked})-1)`;
}

export const roundBrackets = (text: string): string => `SUBSTITUTE(SUBSTITUTE(${text},"[","("),"]",")")`;

/** A text without the first part of it that stands in round brackets. */
export function withoutBrackets(text: string): string {
  const from = `FIND("(",${text})`;
  return `IFERROR(REPLACE(${text},${from},FIND(")",${text},${from})-${from}+1,""),${text})`;
}

/** What stands in the first round brackets of a text; empty where there are none. */
export function inBrackets(text: string): string {
  const from = `FIND("(",${text})`;
  return `IFERROR(MID(${text},${from}+1,FIND(")",${text},${from})-${from}-1),"")`;
}
