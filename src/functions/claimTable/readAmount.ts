import type { Amount } from "../../reference/claimFacts";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { refuseCell } from "../cellErrors";
import type { Cell } from "../cells";
import { inWords } from "../../reference/inWords";
import { factorOfTyped, unitsInWords } from "../../reference/typedUnit";
import { readingsOfPoint } from "../readingsOfPoint";
import { factorInNames, type Names, strayUnit } from "./unitInName";

const NUMBER = /^\s*([+-]?(?:\d[\d,]*\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(.*?)\s*$/i;
const LARGEST_SHARE = 1.5; // a spreadsheet holds 65 % as 0.65, a person types 65

/**
 * A number as a data sheet prints it: with its own unit, or bare in the one that its row's name says, or else in that of the call. A comma, or a point, is read as the one of
 * thousands or the one of decimals where only one of them gives what such a thing can have.
 *
 * @param names texts that may say the unit of a bare number
 * @throws DomainError with the fix, where it cannot be read or no such thing has it
 */
export function readAmount(said: string, cell: Cell, amount: Amount, system: UnitSystem, names: Names): number {
  const { quantity, low, high, unit, thinkable = high, several } = amount;
  const also = several === undefined ? "" : `; ${several}`;
  const label = unit ?? unitOf(quantity, system).label;
  const named = unit === undefined ? factorInNames(names, quantity) : undefined;
  const own = named ?? (unit === undefined ? unitOf(quantity, system).factor : 1);
  const found = typeof cell === "string" || typeof cell === "number" ? NUMBER.exec(String(cell)) : null;
  const behind = found ? withoutWords(found[2]!, amount) : "";
  const typed = behind === "" ? own : factorOfTyped(behind, quantity, label);
  if (!found || typed === undefined)
    return refuseCell(
      said,
      cell,
      `a number, bare (${label}) or with its unit: ${unitsInWords(quantity, label)}${also}`,
    );
  const isBare = behind === "";
  const stray = isBare && named === undefined ? strayUnit(names, quantity, label) : undefined;
  if (stray !== undefined)
    return refuseCell(said, cell, `typed with its unit, for "${stray}" in its name is none of it (${unitsInWords(quantity, label)})`); // prettier-ignore
  const asShare = (value: number): boolean => label === "%" && isBare && Math.abs(value) > LARGEST_SHARE;
  const digits = typeof cell === "number" ? [cell] : readings(found[1]!);
  const meant = digits
    .map((value) => value * (asShare(value) ? 0.01 : typed))
    .filter((value) => value >= low && value <= thinkable);
  if (meant.length > 1) return refuseCell(said, cell, `written as ${digits.join(" or as ")}`);
  const [value] = meant;
  if (value === undefined || value > high) {
    const ends = [low, high].map((end) =>
      unit === undefined ? inWords(end, quantity, system) : `${label === "%" ? 100 * end : end} ${unit}`,
    );
    return refuseCell(
      said,
      cell,
      `from ${ends.join(" to ")} (a bare number is read in ${named === undefined ? label : "the unit of its name"})`,
    );
  }
  return label === "stages" && value % 1 !== 0 ? refuseCell(said, cell, "a whole number") : value;
}

/** Whether a number or its name says that it is not the one that is asked for: a peak, where a rating is. */
export function isNoRating(cell: Cell, name: string, { noRating = [] }: Amount): boolean {
  const said = `${typeof cell === "string" ? cell : ""} ${name}`.toLowerCase();
  return noRating.some((word) => said.includes(word));
}

/** What stands behind a number without the words that tell which one it is: "hp (max. developed)" is hp. */
const withoutWords = (behind: string, { noRating }: Amount): string =>
  noRating === undefined
    ? behind
    : [...noRating, "(", ")"].reduce((rest, word) => rest.replaceAll(word, ""), behind.toLowerCase()).trim();

/** What the digits may mean, the larger first: "1,700" is 1700 or 1.7, and so is "1.700". */
function readings(digits: string): number[] {
  if (!digits.includes(",")) return readingsOfPoint(digits);
  const thousands = /^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(digits) ? [Number(digits.replaceAll(",", ""))] : [];
  const decimals = /^[+-]?\d+,\d+$/.test(digits) ? [Number(digits.replace(",", "."))] : [];
  return [...thousands, ...decimals];
}
