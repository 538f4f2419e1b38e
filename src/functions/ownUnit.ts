import { DomainError } from "../core/errors";
import { type Quantity, type UnitSystem, unitOf } from "../reference/quantities";
import { factorOfTyped, isUnitOfAnother } from "../reference/typedUnit";
import type { Cell } from "./cells";

/**
 * Refuses a header that tells another unit than that in which its numbers are read, in brackets or alone: `Diameter (mm)` in a call whose units
 * are IP, which they are where nobody said "SI", or one of another quantity: `Leak (cfm)`. What is no unit says nothing.
 *
 * @throws DomainError that names the unit, and the other units where they would do
 */
export function requireOwnUnit(argument: string, header: Cell, quantity: Quantity | null, system: UnitSystem): void {
  if (typeof header !== "string" || quantity === null) return;
  const { label, factor } = unitOf(quantity, system);
  const inBrackets = [...header.matchAll(/[([](.*?)[)\]]/g)].map(([, text]) => text!);
  const texts = [header, ...inBrackets];
  const others = texts
    .map((text) => factorOfTyped(text, quantity, label))
    .filter((told) => told !== undefined && told !== factor);
  if (others.length === 0 && !texts.some((text) => isUnitOfAnother(text, quantity))) return;
  const other = system === "IP" ? "SI" : "IP";
  const wayOut = others.includes(unitOf(quantity, other).factor) ? `, unless its units are "${other}"` : "";
  throw new DomainError(`a header of ${argument}`, header, `with (${label}) or no unit in this call${wayOut}`);
}
