import { DomainError, requireWithin } from "../errors";
import { plain } from "../naming/findNamed";

/** How a hose lies, as the column Flex tells it. */
export interface HoseText {
  readonly length: number; // in the unit of the column
  readonly smooth: boolean; // smooth-bore; else corrugated
  readonly lies: "drawn out" | "as it hangs" | { readonly compressed: number }; // [%] shorter than drawn out
}

/** Compressed by more than this, nobody has measured it. [%] */
export const MOST_COMPRESSED = 30;

const FORM =
  /^(\d+(?:[.,]\d*)?|[.,]\d+)(?: (corrugated|smooth(?: bore)?))?(?: (drawn out|as it hangs|compressed (\d+(?:[.,]\d*)?) ?%))?$/;

/**
 * Reads what stands in the column Flex: `10`, `10 compressed 15%`, `10 smooth-bore`, `10 smooth-bore as it hangs`.
 *
 * The length is that of the hose as it lies; a hose compressed by 15 % would be longer drawn out.
 *
 * @param argument the name that a sentence uses for this text
 * @param text what stands there
 * @returns the length, the kind and how it lies
 * @throws DomainError if it is written otherwise, or compressed by more than was measured
 * @source house grammar
 */
export function hoseText(argument: string, text: string): HoseText {
  const [, length, kind, lies, percent] = FORM.exec(plain(text)) ?? [];
  if (length === undefined)
    throw new DomainError(
      argument,
      text,
      'a length, or one with its kind and how it lies: "10", "10 smooth-bore", "10 compressed 15%", "10 as it hangs"',
    );
  const number = (digits: string): number => Number(digits.replace(",", "."));
  const smooth = kind !== undefined && kind !== "corrugated";
  if (percent !== undefined) {
    const compressed = number(percent);
    requireWithin(`${argument}: compressed`, compressed, { atLeast: 0, atMost: MOST_COMPRESSED }, "%");
    return { length: number(length), smooth, lies: { compressed } };
  }
  return { length: number(length), smooth, lies: lies === "as it hangs" ? lies : "drawn out" };
}
