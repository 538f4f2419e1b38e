import { constantOfClass } from "../../core/leaks/seamLeak";
import { plain } from "../../core/naming/findNamed";
import { unitOf } from "../../reference/quantities";
import type { Element, Reader, Reading } from "./element";
import { isEmpty, num, plainName, times } from "./expressions/text";
import { namedRow, nothing } from "./readers";
import { itemAt } from "../../reference/itemAt";

/** One of a few words; the first where it is left out. */
export function wordOf(element: Element | null, words: readonly string[]): Reading {
  const first: Reading = { value: itemAt(words, 0), checks: [] };
  if (element === null) return first;
  const { text, literal } = element;
  if (typeof literal === "string") {
    const word = plain(literal);
    if (word === "") return first;
    return words.includes(word) ? { value: word, checks: [] } : nothing;
  }
  const word = plainName(text);
  return {
    value: word,
    checks: [`OR(${text}=0,${isEmpty(text)},${words.map((one) => `${word}="${one}"`).join(",")})`],
  };
}

/** A gate's condition as the opening that it leaves per diameter [m]. */
export const gateCondition: Reader = (element, _, { tables }) => {
  if (element === null) return nothing;
  const gates = tables.block("gates");
  const { row, checks } = namedRow(element, "gates", tables);
  const gap = times(`INDEX(${gates.range("gap")},${row})`, unitOf("diameter", tables.units).factor);
  return { value: `(${gap}*INDEX(${gates.range("length")},${row}))`, checks };
};

/** A leakage class as the constant of its law: a number is a class of the US kind, a text a name in the table. */
export const leakageClass: Reader = (element, _, { tables }) => {
  if (element === null) return nothing;
  const { text, literal } = element;
  const { row, checks } = namedRow(element, "leakage", tables);
  const named = `INDEX(${tables.block("leakage").range("constant")},${row})`;
  if (typeof literal === "string") return { value: named, checks };
  const number = `${text}*${num(constantOfClass(1))}`;
  return {
    value: `IF(ISNUMBER(${text}),${number},${named})`,
    checks: [`IF(ISNUMBER(${text}),${text}>=0,${itemAt(checks, 0)})`],
  };
};

/** A unit by name, as its row in the table of units. */
export const unitName: Reader = (element, _, { tables }) => {
  if (element === null) return nothing;
  const { row, checks } = namedRow(element, "units", tables);
  return { value: row, checks };
};
