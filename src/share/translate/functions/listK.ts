import { LARGEST_COEFFICIENT } from "../../../core/largest";
import type { BuildCall } from "../arrayRule";
import type { Element } from "../element";
import { fittingsK, mitresK, typedListK, typedMitresK } from "../expressions/fittingList";
import { moreInSlowAir } from "../expressions/slowAir";
import { NO_ANSWER } from "../expressions/text";

/** K of a list argument in a duct whose diameter is another argument; as a check it must be a number. */
export function listK(
  list: Element | null,
  diameter: Element | null,
  { system, context }: Pick<BuildCall, "system" | "context">,
): string {
  if (list === null) return NO_ANSWER;
  const { tables, workings, sheet } = context;
  if (typeof list.literal === "number")
    return list.literal < 0 || list.literal > LARGEST_COEFFICIENT ? NO_ANSWER : list.text;
  if (typeof list.literal === "string")
    return typedListK(list.literal, "any", diameter?.text ?? null, { system, tables }) ?? NO_ANSWER;
  return fittingsK(list.text, diameter?.text ?? null, { system, tables, workings, sheet });
}

/** The same in air of a Reynolds number, in which mitres may lose more. */
export function listKInAir(
  list: Element | null,
  diameter: Element | null,
  reynolds: string,
  call: Pick<BuildCall, "system" | "context">,
): string {
  const k = listK(list, diameter, call);
  const mitres = list === null ? null : mitresOf(list, diameter, call);
  return mitres === null ? k : `(${k}+${mitres}*${moreInSlowAir(reynolds)})`;
}

function mitresOf(
  { text, literal }: Element,
  diameter: Element | null,
  { system, context }: Pick<BuildCall, "system" | "context">,
): string | null {
  const { tables, workings, sheet } = context;
  if (typeof literal === "number") return null;
  if (typeof literal === "string") return typedMitresK(literal, { system, tables });
  return mitresK(text, diameter?.text ?? null, { system, tables, workings, sheet });
}
