import { DomainError } from "../core/errors";
import { type Quantity, type UnitSystem, unitOf } from "../reference/quantities";
import { factorOfTyped } from "../reference/typedUnit";
import type { Cell } from "./cells";

/**
 * Refuses a header that tells another unit than that in which its numbers are read, in brackets or alone: `Diameter (mm)` in a call whose units
 * are IP, which they are where nobody said "SI". What is no unit of the quantity says nothing.
 *
 * @throws DomainError that names the unit, and the other units where they would do
 */
export function requireOwnUnit(argument: string, header: Cell, quantity: Quantity | null, system: UnitSystem): void {
  if (typeof header !== "string" || quantity === null) return;
  const { label, factor } = unitOf(quantity, system);
  const inBrackets = [...header.matchAll(/[([](.*?)[)\]]/g)].map(([, text]) => text!);
  const others = [header, ...inBrackets]
    .map((text) => factorOfTyped(text, quantity, label))
    .filter((told) => told !== undefined && told !== factor);
  if (others.length === 0) return;
  const other = system === "IP" ? "SI" : "IP";
  const wayOut = others.includes(unitOf(quantity, other).factor) ? `, unless its units are "${other}"` : "";
  throw new DomainError(`a header of ${argument}`, header, `with (${label}) or no unit in this call${wayOut}`);
}
