import { FIGURES, WHOLE_FROM } from "../../reference/inWords";
import { type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import { fromSIText, plainName as nameInTables } from "../translate/expressions/text";

/** Small pieces of formula that the budget's workings share. Each takes the text of a cell and gives the text of an expression. */

/** A 0 counts as blank in every column of a runs table. */
export const isBlank = (cell: string): string => `OR(TRIM(${cell})="",TRIM(${cell})="0")`;

/** A text in which looking up finds no wildcards. */
export const noWildcards = (text: string): string =>
  `SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${text},"*","＊"),"?","？"),"~","～")`;

/** A name as it is compared: without regard to case, blanks, hyphens and underscores. */
const plainName = (cell: string): string => `LOWER(${nameInTables(cell)})`;

/** A name as something to look for: behind a prefix it is never taken for a number or a comparison, and its * ? ~ are no wildcards. */
export const nameKey = (cell: string): string => `"r:"&${noWildcards(plainName(cell))}`;

/** One of two words, as 1 or 2; `blank`, a number or a formula, where nothing stands there. */
export const oneOfTwo = (cell: string, first: string, second: string, blank: number | string): string =>
  `IF(${isBlank(cell)},${blank},IF(${plainName(cell)}="${first}",1,IF(${plainName(cell)}="${second}",2,NA())))`;

/** A value in SI as a note says it: `inWords` of `reference/inWords.ts` as a formula. */
export function inWords(value: string, quantity: Quantity, system: UnitSystem): string {
  const number = `(${fromSIText(value, quantity, system)})`;
  const figures = `ROUND(${number},${FIGURES - 1}-INT(LOG(${number})))`;
  return `IF(${number}>=${WHOLE_FROM},ROUND(${number},0),IF(${number}>0,${figures},0))&" ${unitOf(quantity, system).label}"`;
}
