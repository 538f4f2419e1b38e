import type { Amount } from "../../reference/claimFacts";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { refuseCell } from "../cellErrors";
import type { Cell } from "../cells";
import { inWords } from "../../reference/inWords";
import { factorOfTyped, unitsInWords } from "../../reference/typedUnit";
import { factorInName } from "./unitInName";

const NUMBER = /^\s*([+-]?(?:\d[\d,]*\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(.*?)\s*$/i;
const LARGEST_SHARE = 1.5; // a spreadsheet holds 65 % as 0.65, a person types 65

/**
 * A number as a data sheet prints it: with its own unit, or bare in the one that its row's name says, or else in that of the call. A comma is read as the one of thousands or the
 * one of decimals where only one of them gives what such a thing can have.
 *
 * @throws DomainError with the fix, where it cannot be read or no such thing has it
 */
export function readAmount(said: string, cell: Cell, amount: Amount, system: UnitSystem, name = ""): number {
  const { quantity, low, high, unit } = amount;
  const label = unit ?? unitOf(quantity, system).label;
  const named = factorInName(name, quantity);
  const own = named ?? (unit === undefined ? unitOf(quantity, system).factor : 1);
  const found = typeof cell === "string" || typeof cell === "number" ? NUMBER.exec(String(cell)) : null;
  const typed = found?.[2] === "" ? own : found && factorOfTyped(found[2]!, quantity, label);
  if (!found || typed === undefined)
    return refuseCell(said, cell, `a number, bare (${label}) or with its unit: ${unitsInWords(quantity, label)}`);
  const asShare = (value: number): boolean => label === "%" && found[2] === "" && Math.abs(value) > LARGEST_SHARE;
  const values = readings(found[1]!).map((value) => value * (asShare(value) ? 0.01 : typed!));
  const within = values.filter((value) => value >= low && value <= high);
  if (within.length > 1) return refuseCell(said, cell, "written without a comma");
  if (within.length === 0) {
    const ends = [low, high].map((end) =>
      unit === undefined ? inWords(end, quantity, system) : `${label === "%" ? 100 * end : end} ${unit}`,
    );
    return refuseCell(
      said,
      cell,
      `from ${ends.join(" to ")} (a bare number is read in ${named === undefined ? label : "the unit of its name"})`,
    );
  }
  return label === "stages" && within[0]! % 1 !== 0 ? refuseCell(said, cell, "a whole number") : within[0]!;
}

/** What the digits may mean: "1,700" is 1700 or 1.7. */
function readings(digits: string): number[] {
  if (!digits.includes(",")) return [Number(digits)];
  const thousands = /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(digits) ? [Number(digits.replaceAll(",", ""))] : [];
  const decimals = /^[+-]?\d+,\d+$/.test(digits) ? [Number(digits.replace(",", "."))] : [];
  return [...thousands, ...decimals];
}
