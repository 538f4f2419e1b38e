import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";

/** A value of a note: three figures where it is small, whole where it is large, with its unit. */
export function inUnit(value: number, quantity: Quantity, system: UnitSystem): string {
  const unit = unitOf(quantity, system);
  const number = fromSI(value, unit);
  const rounded = Math.abs(number) >= 100 ? Math.round(number) : Number(number.toPrecision(3));
  return `${rounded} ${unit.label}`;
}
