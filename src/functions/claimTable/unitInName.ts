import { factName, oneInBrackets } from "../../core/naming/factName";
import type { Quantity } from "../../reference/quantities";
import { factorOfTyped, isUnitOfNone } from "../../reference/typedUnit";

/** The texts of a fact's name that may say the unit of its number. */
export interface Names {
  readonly itself: string; // "CFM"
  readonly brackets: readonly string[]; // "Airflow (m³/h)"
  readonly isPair: boolean; // of which each unit is that of one part
}

const BRACKETS = /[([](.*?)[)\]]/g;
const BRACKETS_READ = 2; // as many as a copy's plain formulas take off

export const namesOf = (name: string): Names => ({
  itself: factName(name),
  brackets: [...oneInBrackets(name).matchAll(BRACKETS)].slice(0, BRACKETS_READ).map(([, text]) => text!),
  isPair: false,
});

/** Of a pair, "Rated point (m³/h at Pa)": what its first brackets say of either. */
export const namesOfPair = (name: string): Names => ({
  itself: "",
  brackets: (namesOf(name).brackets[0] ?? "").split(/@|,| at /i).slice(0, 2),
  isPair: true,
});

/** SI units in one of the unit that a name says; undefined where it says none. */
export function factorInNames({ itself, brackets }: Names, quantity: Quantity): number | undefined {
  for (const text of [itself, ...brackets]) {
    const factor = factorOfTyped(text, quantity, "");
    if (factor !== undefined) return factor;
  }
  return undefined;
}

/** What stands in the brackets of a name as a unit and is none of its number: "Airflow (in)". */
export const strayUnit = ({ brackets, isPair }: Names, quantity: Quantity, label: string): string | undefined =>
  isPair ? undefined : brackets.find((text) => isUnitOfNone(text, quantity, label));
