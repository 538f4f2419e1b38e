import { headerName } from "../../core/naming/headerName";
import type { Quantity } from "../../reference/quantities";
import { factorOfTyped } from "../../reference/typedUnit";

/**
 * SI units in one of the unit that the name of a fact says, itself ("CFM") or in its first brackets ("Airflow (m³/h)"); undefined where it says
 * none, or where the quantity has one unit only.
 */
export function factorInName(name: string, quantity: Quantity): number | undefined {
  const inBrackets = [...name.matchAll(BRACKETS)].slice(0, BRACKETS_READ).map(([, text]) => text!);
  for (const text of [headerName(name), ...inBrackets]) {
    const factor = factorOfTyped(text, quantity, "");
    if (factor !== undefined) return factor;
  }
  return undefined;
}

const BRACKETS = /[([](.*?)[)\]]/g;
const BRACKETS_READ = 2; // as many as a copy's plain formulas take off
