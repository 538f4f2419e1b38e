import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";

/** A value in the units of a table, with as many digits as one reads at a glance: "2,900 fpm". */
export function inWords(value: number, quantity: Quantity, system: UnitSystem): string {
  const unit = unitOf(quantity, system);
  const shown = fromSI(value, unit);
  const rounded = Math.abs(shown) >= 1000 ? Math.round(shown) : Number(shown.toPrecision(3));
  return `${rounded.toLocaleString("en-GB", { maximumFractionDigits: 6 })} ${unit.label}`.trim();
}
