import type { ReferenceTable } from "../../reference";
import { quantities, type UnitSystem } from "../../reference/quantities";
import { brief, type Cell, type Value } from "./values";
import { valuesInWords } from "./wording";
import { fold, wordsOf } from "./words";

/** A number of a row with its unit, as a search names them. */
export interface Amount {
  readonly numbers: readonly [number, number]; // as the table has it, and as the row shows it
  readonly unit: string; // "" where it has none
}

/** All numbers of a row; those that its layout keeps apart from their unit stand without one. */
export function amountsOf(table: ReferenceTable, row: readonly Cell[]): Amount[] {
  const amount = (number: number, unit: string): Amount => ({ numbers: [number, brief(number)], unit: searched(unit) });
  const shown = valuesInWords(table, row).flatMap(({ parts }) =>
    parts.flatMap(({ cell, unit }) => (typeof cell === "number" ? [amount(cell, unit)] : [])),
  );
  const all = row.flatMap((cell) => (typeof cell === "number" ? [amount(cell, "")] : []));
  return [...shown, ...all.filter(({ numbers }) => !shown.some((one) => one.numbers[0] === numbers[0]))];
}

/** A unit as the words of a search have it. */
const searched = (unit: string): string => wordsOf(fold(unit)).join(" ");

const labels = (system: UnitSystem): ReadonlySet<string> =>
  new Set(Object.values(quantities).flatMap((of) => (of.IP.label === of.SI.label ? [] : [of[system].label])));
const unitsOf = { IP: labels("IP"), SI: labels("SI") };

/** The system whose unit this is; null where it is of both, or of none. */
export function systemOfUnit(unit: string): UnitSystem | null {
  if (unitsOf.IP.has(unit) === unitsOf.SI.has(unit)) return null;
  return unitsOf.IP.has(unit) ? "IP" : "SI";
}

/** The system in which a row's numbers are the rounder ones: that in which its source prints them. */
export function printedIn(table: ReferenceTable, row: readonly Cell[]): UnitSystem | null {
  const figures = { IP: 0, SI: 0 };
  for (const { parts } of valuesInWords(table, row).filter(isTwice))
    for (const { cell, unit } of parts) {
      const system = systemOfUnit(unit);
      if (typeof cell === "number" && system !== null) figures[system] += figuresOf(cell);
    }
  if (figures.IP === figures.SI) return null;
  return figures.IP < figures.SI ? "IP" : "SI";
}

const isTwice = ({ parts }: Value): boolean => parts.length === 2;

/** Significant figures: 2 of 820, 4 of 482.6. */
const figuresOf = (number: number): number =>
  Math.abs(number)
    .toPrecision(6)
    .replace(/e.*$/, "")
    .replace(".", "")
    .replace(/^0+|0+$/g, "").length;
