import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../../reference/quantities";
import type { Limits } from "../../../core/errors";
import { numberText } from "../../references";

/** Pieces of plain formulas as text. Every piece that is a sum, product or difference carries its own brackets. */

/** What stands where there is no answer; the sentence of the function cannot be carried. */
export const NO_ANSWER = "NA()";

/** A number that no operator can tear apart, without an exponent where it is short. */
export function num(value: number): string {
  const text = numberText(value);
  return text.includes("E") && Math.abs(value) < 1 ? value.toFixed(20).replace(/0+$/, "") : text;
}

export const times = (text: string, factor: number): string => (factor === 1 ? text : `(${text}*${num(factor)})`);

/** 0 to a power is 0; some programs refuse it. */
export const power = (base: string, exponent: string): string => `IF(${base}=0,0,(${base})^${exponent})`;

/** A number of the user's unit in SI. */
export function inSI(text: string, quantity: Quantity, system: UnitSystem): string {
  const unit = unitOf(quantity, system);
  const offset = "offset" in unit ? unit.offset : 0;
  return offset === 0 ? times(text, unit.factor) : `(${text}*${num(unit.factor)}+${num(offset)})`;
}

/** A result in SI as a number of the user's unit. */
export function fromSIText(text: string, quantity: Quantity, system: UnitSystem): string {
  const { factor } = unitOf(quantity, system);
  return factor === 1 ? text : `${text}/${num(factor)}`;
}

/** Whether a cell is blank: nothing in it, or a text of blanks. */
export const isEmpty = (cell: string): string => `TRIM(${cell})=""`;

/** Blank or 0: some programs send a blank as 0, so the functions take both alike wherever 0 cannot be meant. */
export const isBlankOrZero = (cell: string): string => `OR(${cell}=0,TRIM(${cell})="")`;

/** A name as the tables spell it: case, outer and repeated blanks, hyphens and underscores do not matter. */
export const plainName = (cell: string): string => `TRIM(SUBSTITUTE(SUBSTITUTE(${cell},"-"," "),"_"," "))`;

/** An entry of the tables of fittings and hoods as a cell has it: a comma is a decimal point, a degree sign nothing. */
export const entryName = (cell: string): string => plainName(`SUBSTITUTE(SUBSTITUTE(${cell},"°",""),",",".")`);

/** Whether a name stands in a list. MATCH alone would read wildcards in it. */
export const isListed = (name: string, list: string): string =>
  `IFERROR(INDEX(${list},MATCH(${name},${list},0))=${name},FALSE)`;

/** Whether a cell has one of a few words. */
export const isOneOf = (cell: string, words: readonly string[]): string =>
  either(words.map((word) => `${plainName(cell)}="${word}"`));

const either = (checks: readonly string[]): string => (checks.length === 1 ? checks[0]! : `OR(${checks.join(",")})`);

export const both = (checks: readonly string[]): string =>
  checks.length === 1 ? checks[0]! : `AND(${checks.join(",")})`;

/** The limits of an argument as conditions on its text, both in the user's unit. */
export function within(text: string, limits: Limits, quantity: Quantity, system: UnitSystem): string[] {
  const bound = (limit: number): string => num(Number(fromSI(limit, unitOf(quantity, system)).toPrecision(15)));
  const { above, atLeast, below, atMost } = limits;
  return [
    ...(above === undefined ? [] : [`${text}>${bound(above)}`]),
    ...(atLeast === undefined ? [] : [`${text}>=${bound(atLeast)}`]),
    ...(below === undefined ? [] : [`${text}<${bound(below)}`]),
    ...(atMost === undefined ? [] : [`${text}<=${bound(atMost)}`]),
  ];
}
