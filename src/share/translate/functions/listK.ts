import type { BuildCall } from "../arrayRule";
import type { Element } from "../element";
import { fittingsK, typedListK } from "../expressions/fittingList";
import { NO_ANSWER } from "../expressions/text";

/** K of a list argument in a duct whose diameter is another argument; as a check it must be a number. */
export function listK(
  list: Element | null,
  diameter: Element | null,
  { system, context }: Pick<BuildCall, "system" | "context">,
): string {
  if (list === null) return NO_ANSWER;
  const { tables, workings, sheet } = context;
  if (typeof list.literal === "number") return list.literal < 0 ? NO_ANSWER : list.text;
  if (typeof list.literal === "string")
    return typedListK(list.literal, "any", diameter?.text ?? null, { system, tables }) ?? NO_ANSWER;
  return fittingsK(list.text, diameter?.text ?? null, { system, tables, workings, sheet });
}
