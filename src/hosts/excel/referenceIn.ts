import { fixedAddress } from "../../sheets/address";
import { type RangeRef, readReference } from "../../sheets/rangeRef";

/** A cell by its row and its column, each a number behind a letter of Excel's language: R4C2, in German Z4S2. */
const COUNTED = /\p{L}(\d+)\p{L}(\d+)/u;
const COUNTED_AT_END = new RegExp(`!${COUNTED.source}(?::${COUNTED.source})?$`, "u");

/**
 * The cells that a name points to; null where it is no such reference. Excel for Windows says it in the style of references and the language
 * that its user has chosen (office-js issues 1831 and 2834), while the formula of a cell is always in A1. The source of a drop-down is read
 * likewise, since nobody says in which style it comes.
 */
export const referenceIn = (formula: string): RangeRef | null =>
  readReference(
    formula.trim().replace(COUNTED_AT_END, (_, ...numbers: unknown[]) => {
      const [top, left, bottom, right] = numbers.slice(0, 4).map(Number) as [number, number, number, number];
      const first = fixedAddress(left, top);
      return Number.isNaN(bottom) ? `!${first}` : `!${first}:${fixedAddress(right, bottom)}`;
    }),
  );
