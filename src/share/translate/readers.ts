import type { Limits } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import type { NeededNumber, OptionalNumber } from "../../functions/signature";
import { DEFAULT_MATERIAL } from "../../reference/materials";
import { type Quantity, toSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { SMOOTH } from "../../reference/zeroWords";
import { quotedText } from "../references";
import type { Element, Reader, Reading } from "./element";
import {
  NO_ANSWER,
  both,
  inSI,
  isBlankOrZero,
  isEmpty,
  isListed,
  isOneOf,
  plainName,
  times,
  within,
} from "./expressions/text";
import type { BlockName } from "./tableBlocks/blocks";
import type { LookupTables } from "./lookupTables";

/** An argument that has no value: the answer is #N/A, even where its value is not used. */
export const nothing: Reading = { value: NO_ANSWER, checks: ["FALSE"] };

/** A number that must be there. */
export function neededNumber(element: Element | null, { quantity, limits }: NeededNumber, system: UnitSystem): Reading {
  if (element === null) return nothing;
  const { text, literal } = element;
  if (typeof literal === "number") return literalNumber(text, literal, quantity, limits, system);
  return {
    value: inSI(text, quantity, system),
    checks: [`ISNUMBER(${text})`, ...within(text, limits, quantity, system)],
  };
}

/**
 * A number that may be left out.
 * @param usual what stands for it then, as the formula writes it
 */
export function optionalNumber(
  element: Element | null,
  { quantity, limits, zero }: Pick<OptionalNumber<number | null>, "quantity" | "limits" | "zero">,
  usual: string,
  system: UnitSystem,
): Reading {
  if (element === null) return { value: usual, checks: [] };
  const { text, literal } = element;
  if (typeof zero === "object") return wordedNumber(element, quantity, limits, zero, system);
  if (typeof literal === "number") {
    if (literal === 0 && zero === "usual") return { value: usual, checks: [] };
    return literalNumber(text, literal, quantity, limits, system);
  }
  const bounds = within(text, limits, quantity, system);
  const [blank, value] = zero === "usual" ? [isBlankOrZero(text), usual] : [isEmpty(text), "0"];
  const right = `AND(${[`ISNUMBER(${text})`, ...bounds].join(",")})`;
  return {
    value: `IF(${blank},${value},${inSI(text, quantity, system)})`,
    checks: [`IF(${blank},TRUE,${right})`],
  };
}

/** A number whose 0 is said in a word: a blank or a 0 is none. */
function wordedNumber(
  { text, literal }: Element,
  quantity: Quantity,
  limits: Limits,
  words: readonly string[],
  system: UnitSystem,
): Reading {
  const nought = inSI("0", quantity, system);
  if (literal === 0) return nothing;
  if (typeof literal === "number") return literalNumber(text, literal, quantity, limits, system);
  if (typeof literal === "string") return words.includes(plain(literal)) ? { value: nought, checks: [] } : nothing;
  const right = [`${text}<>0`, ...within(text, limits, quantity, system)];
  return {
    value: `IF(ISNUMBER(${text}),${inSI(text, quantity, system)},${nought})`,
    checks: [`IF(ISNUMBER(${text}),${both(right)},${isOneOf(text, words)})`],
  };
}

/** A number without which the formula is another one: its cell as it stands, an empty text where it is left out. */
export function bareNumber(
  element: Element | null,
  { quantity, limits }: OptionalNumber<null>,
  system: UnitSystem,
): Reading {
  if (element === null || element.literal === 0) return { value: "", checks: [] };
  const { text } = element;
  const right = [`ISNUMBER(${text})`, ...within(text, limits, quantity, system)].join(",");
  return { value: text, checks: [`IF(${isBlankOrZero(text)},TRUE,AND(${right}))`] };
}

/** A number that only another argument gives a meaning: its cell as it stands. */
export const asItStands: Reader = (element) => ({ value: element?.text ?? "", checks: [] });

/** A number typed into the call needs no conditions: it is right now or never. */
function literalNumber(text: string, value: number, quantity: Quantity, limits: Limits, system: UnitSystem): Reading {
  const { above, atLeast, below, atMost } = limits;
  const si = toSI(value, unitOf(quantity, system));
  const right =
    (above === undefined || si > above) &&
    (atLeast === undefined || si >= atLeast) &&
    (below === undefined || si < below) &&
    (atMost === undefined || si <= atMost);
  return right ? { value: inSI(text, quantity, system), checks: [] } : nothing;
}

/** Wall roughness [m] from a material's name, a number or the word for none; the usual material where it is left out. */
export function roughness(element: Element | null, system: UnitSystem, tables: LookupTables): Reading {
  const block = tables.block("materials");
  const factor = unitOf("diameter", tables.units).factor;
  const row = (name: string): string | null => {
    const at = block.rowOf(plain(name));
    return at === null ? null : times(block.cell("roughness", at), factor);
  };
  const usual = row(DEFAULT_MATERIAL)!;
  if (element === null) return { value: usual, checks: [] };
  const { text, literal } = element;
  if (literal === 0) return nothing;
  if (typeof literal === "string") {
    if (SMOOTH.includes(plain(literal))) return { value: "0", checks: [] };
    const value = row(literal);
    return value === null ? nothing : { value, checks: [] };
  }
  const names = block.range("name");
  const name = plainName(text);
  const listed = times(`INDEX(${block.range("roughness")},MATCH(${name},${names},0))`, factor);
  return {
    value: `IF(ISNUMBER(${text}),${inSI(text, "diameter", system)},IF(${isOneOf(text, SMOOTH)},0,${listed}))`,
    checks: [`IF(ISNUMBER(${text}),${text}<>0,OR(${isOneOf(text, SMOOTH)},${isListed(name, names)}))`],
  };
}

/** Row of a table by the name in its first column, as a formula; and whether the name is there. */
export function namedRow(element: Element, block: BlockName, tables: LookupTables): { row: string; checks: string[] } {
  const names = tables.block(block).range(block === "units" ? "unit" : "name");
  const name = typeof element.literal === "string" ? quotedText(plain(element.literal)) : plainName(element.text);
  return { row: `MATCH(${name},${names},0)`, checks: [isListed(name, names)] };
}
