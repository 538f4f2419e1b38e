import type { Reader } from "./element";
import { hoodK } from "./expressions/entryK";
import { typedListK } from "./expressions/fittingList";
import { nothing } from "./readers";

/** A list of fittings as its cell stands: its K needs the diameter beside it. */
export const listCell: Reader = (element) => (element === null ? nothing : { value: element.text, checks: [] });

/** K of a hood entry by name or as a number. */
export const hoodEntry: Reader = (element, system, { tables }) => {
  if (element === null) return nothing;
  const { text, literal } = element;
  if (typeof literal === "string") {
    const k = typedListK(literal, "hood", null, { system, tables });
    return k === null ? nothing : { value: k, checks: [] };
  }
  const { value, check } = hoodK(text, system, tables);
  return { value, checks: [check] };
};
