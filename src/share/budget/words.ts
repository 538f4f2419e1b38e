import { numberText } from "../references";

/** Small pieces of formula that the budget's workings share. Each takes the text of a cell and gives the text of an expression. */

/** A 0 counts as blank in every column of a runs table. */
export const isBlank = (cell: string): string => `OR(TRIM(${cell})="",TRIM(${cell})="0")`;

/** A number, or a text that is one. */
export const numberOf = (cell: string): string => `IF(ISNUMBER(${cell}),${cell},VALUE(${cell}))`;

/** A number, or a text that is one, times a factor; what a name stands for otherwise. */
export const unlessNumber = (cell: string, named: string, factor: number): string =>
  `IF(ISNUMBER(${cell}),${times(cell, factor)},IF(ISERROR(VALUE(${cell})),${named},${times(`VALUE(${cell})`, factor)}))`;

/** A name as it is compared: without regard to case, blanks, hyphens and underscores. */
const plainName = (cell: string): string => `LOWER(TRIM(SUBSTITUTE(SUBSTITUTE(${cell},"-"," "),"_"," ")))`;

/** A name as something to look for: behind a prefix it is never taken for a number or a comparison, and its * ? ~ are no wildcards. */
export const nameKey = (cell: string): string =>
  `"r:"&SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${plainName(cell)},"*","＊"),"?","？"),"~","～")`;

/** One of two words, as 1 or 2; `blank` where nothing stands there. */
export const oneOfTwo = (cell: string, first: string, second: string, blank: number): string =>
  `IF(${isBlank(cell)},${blank},IF(${plainName(cell)}="${first}",1,IF(${plainName(cell)}="${second}",2,NA())))`;

/** A quantity in words: three figures where it is small, whole where it is large, with its unit. */
export const inWords = (value: string, unit: string): string =>
  `IF(${value}>=100,ROUND(${value},0),IF(${value}>0,ROUND(${value},2-INT(LOG(${value}))),0))&" ${unit}"`;

/** From SI into a unit, and back. */
export const over = (value: string, factor: number): string =>
  factor === 1 ? value : `${value}/${numberText(factor)}`;
export const times = (value: string, factor: number): string =>
  factor === 1 ? value : `${value}*${numberText(factor)}`;
