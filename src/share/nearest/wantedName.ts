import { quotedText } from "../references";
import { withoutDigits } from "../translate/expressions/digits";
import { plainName } from "../translate/expressions/text";

/** How many words of a wanted name are looked at, and signs; of a longer one nothing is told. */
export const WORDS = 6;
const LONGEST = 60;

/** A text as names are compared. In a list of fittings a comma is a decimal point, and a degree sign nothing. */
export const inFull = (text: string, isList: boolean): string =>
  `LOWER(${plainName(isList ? `SUBSTITUTE(SUBSTITUTE(${text},"°",""),",",".")` : text)})`;

/**
 * The first word of a text.
 *
 * @returns what follows the word, the word, it again where it is one of the name, and as it is looked for in a name
 */
export function wordCells(text: string, word: string, kept: string, isList: boolean): readonly string[] {
  const isNumber = ["", ".", "deg", "degrees"].map((left) => `${withoutDigits(word)}=${quotedText(left)}`);
  return [
    `IF(TRIM(${text})="","",MID(${text},FIND(" ",${text})+1,999))`,
    `IF(TRIM(${text})="","",LEFT(${text},FIND(" ",${text})-1))`,
    isList ? `IF(OR(${isNumber.join(",")}),"",${word})` : word,
    `IF(LEN(${kept})>2," "&${kept}&" ","-")`,
  ];
}

/** The name that is wanted, of such words; an empty text where it is too long to tell, or has a diameter of its own. */
export function wantedName(full: string, isList: boolean, kept: readonly string[], rest: string): string {
  const noughts = [..."123456789"].reduce((inner, digit) => `SUBSTITUTE(${inner},"${digit}","0")`, full);
  const sized = ["in", "mm"].map((unit) => `ISNUMBER(FIND("0 ${unit} ",${noughts}&" "))`);
  const isOther = [`LEN(${full})>${LONGEST}`, `${rest}<>""`, ...(isList ? sized : [])];
  return `IF(OR(${isOther.join(",")}),"",${isList ? `TRIM(${kept.join('&" "&')})` : full})`;
}
