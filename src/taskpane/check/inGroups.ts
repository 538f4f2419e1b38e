import { inWords } from "../../reference/inWords";
import type { Quantity, UnitSystem } from "../../reference/quantities";

/** A value in words with the digits of large numbers in groups: "2,900 fpm". */
export const inGroups = (value: number, quantity: Quantity, system: UnitSystem): string =>
  inWords(value, quantity, system, (number) => number.toLocaleString("en-GB", { maximumFractionDigits: 6 }));
