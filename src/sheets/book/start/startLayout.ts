import type { CellNameKey } from "../frame";

/** Where the settings stand on the sheet Start. */
export const SETTINGS = 5; // row of their heading
export const TEMPERATURE_CELL = "$B$7";
export const ALTITUDE_CELL = "$B$8";

/** The cells that formulas everywhere call by name. */
export const namedCells: Readonly<Record<CellNameKey, string>> = {
  units: "$B$6",
  density: "$B$9",
  dust: "$B$10",
  transport: "$B$11",
};

/** What is to say of the density, beside it. */
export const AIR_SAID = "$D$9";

/** What is to say of the units, above them. */
export const UNITS_SAID = "A4";

export const STEPS = 13; // row of the heading of what to do
