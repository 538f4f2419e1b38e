import type { BuildCall, Element, Parameter } from "../answer";
import { fittingsK, typedListK } from "../expressions/fittingList";
import { NO_ANSWER } from "../expressions/text";
import { nothing } from "../readers";

/** A list of fittings as its cell stands: its K needs the diameter beside it. */
export const listCell: Parameter = {
  needed: true,
  read: (element) => (element === null ? nothing : { value: element.text, checks: [] }),
};

/** K of a list argument in a duct whose diameter is another argument; as a check it must be a number. */
export function listK(list: Element | null, width: Element | null, { system, context }: BuildCall): string {
  if (list === null) return NO_ANSWER;
  const { tables, workings, sheet } = context;
  if (typeof list.literal === "number") return list.literal < 0 ? NO_ANSWER : list.text;
  if (typeof list.literal === "string")
    return typedListK(list.literal, "any", width?.text ?? null, { system, tables }) ?? NO_ANSWER;
  return fittingsK(list.text, width?.text ?? null, { system, tables, workings, sheet });
}
