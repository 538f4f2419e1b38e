import { fromSI, type Quantity, type UnitSystem, unitOf } from "./quantities";

export const WHOLE_FROM = 100;
export const FIGURES = 3; // below that

/**
 * A value in SI as notes and findings say it: whole where it is large, three figures where it is small, with its unit.
 *
 * @param written how the number is written; a cell has plain digits
 */
export function inWords(
  value: number,
  quantity: Quantity,
  system: UnitSystem,
  written: (number: number) => string = String,
): string {
  const unit = unitOf(quantity, system);
  const number = fromSI(value, unit);
  const rounded = Math.abs(number) >= WHOLE_FROM ? Math.round(number) : Number(number.toPrecision(FIGURES));
  return `${written(rounded)} ${unit.label}`.trim();
}
