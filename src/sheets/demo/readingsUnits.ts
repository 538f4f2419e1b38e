import { type Quantity, quantities } from "../../reference/quantities";

/** The part of a formula that is a unit in words, by the units cell. */
export const unitWord = (quantity: Quantity): string =>
  `IF(units="SI","${quantities[quantity].SI.label}","${quantities[quantity].IP.label}")`;

/** A heading that follows the units cell. */
export const headingIn = (words: string, quantity: Quantity): string => `="${words} ("&${unitWord(quantity)}&")"`;
