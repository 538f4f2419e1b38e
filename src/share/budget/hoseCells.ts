import { AS_IT_HANGS, PER_INCH, PER_PERCENT } from "../../core/hose/hoseFactor";
import { MOST_COMPRESSED } from "../../core/hose/hoseText";
import { digitsOf } from "../translate/expressions/digits";
import { NO_ANSWER } from "../translate/expressions/text";
import { isBlank } from "./words";

/** What stands behind the length in a cell of hose: its kind and how it lies, in lower case; nothing for a number. */
export function hoseWords(cell: string): string {
  const tidy = `SUBSTITUTE(SUBSTITUTE(LOWER(TRIM(SUBSTITUTE(SUBSTITUTE(${cell},"-"," "),"_"," ")))," %","%"),"smooth bore","smooth")`;
  return `IF(OR(ISNUMBER(${cell}),${isBlank(cell)}),"",TRIM(MID(${tidy},FIND(" ",${tidy}&" ")+1,99)))`;
}

/** The length alone, as a number; #N/A where a text does not begin with one. */
export const hoseLength = (cell: string): string =>
  `IF(ISNUMBER(${cell}),${cell},${number(`LEFT(TRIM(${cell}),FIND(" ",TRIM(${cell})&" ")-1)`)})`;

/** A comma is a decimal point here. */
const number = (text: string): string => digitsOf(`SUBSTITUTE(${text},",",".")`, NO_ANSWER);

/** How it lies, from those words: without the kind before it. */
export const hoseLies = (words: string): string =>
  `IF(OR(${words}="smooth",${words}="corrugated"),"",IF(LEFT(${words},7)="smooth ",MID(${words},8,99),IF(LEFT(${words},11)="corrugated ",MID(${words},12,99),${words})))`;

export const isSmooth = (words: string): string => `LEFT(${words},6)="smooth"`;

/** How many times as much it costs as drawn out; #N/A where the words are no way to lie. */
export function hoseTimes(lies: string, diameter: string): string {
  const percent = number(`MID(${lies},12,LEN(${lies})-12)`);
  const pressed = `IF(AND(${percent}>=0,${percent}<=${MOST_COMPRESSED}),1+${PER_PERCENT}*${percent}*EXP(0${PER_INCH}*${diameter}/0.0254),NA())`;
  const isPressed = `AND(LEFT(${lies},11)="compressed ",RIGHT(${lies},1)="%")`;
  return `IF(OR(${lies}="",${lies}="drawn out"),1,IF(${lies}="as it hangs",${AS_IT_HANGS},IF(${isPressed},${pressed},NA())))`;
}
