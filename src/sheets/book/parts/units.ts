import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../../reference/quantities";
import type { Frame } from "../frame";

/** A part of a formula that is one thing in I-P and another in SI, by the units cell. */
export const bySystem = (frame: Frame, inIP: string, inSI: string): string =>
  `IF(${frame.name("units")}="SI",${inSI},${inIP})`;

/** A part of a formula: a value of ours, as the book's units have it, to a whole number or three figures. */
export const inBook = (frame: Frame, value: number, quantity: Quantity): string => {
  const inUnit = (system: UnitSystem): string => {
    const exact = fromSI(value, unitOf(quantity, system));
    return String(exact >= 100 ? Math.round(exact) : Number(exact.toPrecision(3)));
  };
  return bySystem(frame, inUnit("IP"), inUnit("SI"));
};

/** A part of a formula: the unit of a quantity in words. */
export const unitWord = (frame: Frame, quantity: Quantity): string =>
  bySystem(frame, `"${unitOf(quantity, "IP").label}"`, `"${unitOf(quantity, "SI").label}"`);

/** A formula for a heading with its unit in brackets, which follows the units cell. */
export const headingIn = (frame: Frame, words: string, quantity: Quantity): string =>
  `="${words} ("&${unitWord(frame, quantity)}&")"`;

/** A formula for the unit alone. */
export const unitOnly = (frame: Frame, quantity: Quantity): string => `=${unitWord(frame, quantity)}`;

/** A part of a formula: a value rounded as a person says it in the unit system of the units cell. */
export const rounded = (frame: Frame, value: string, decimals: Readonly<Record<UnitSystem, number>>): string =>
  `ROUND(${value},${bySystem(frame, String(decimals.IP), String(decimals.SI))})`;

const FORMATS = {
  airflow: { IP: "#,##0", SI: "#,##0" },
  leak: { IP: "#,##0.0", SI: "#,##0.0" },
  velocity: { IP: "#,##0", SI: "0.0" },
  pressure: { IP: "0.00", SI: "#,##0" },
  density: { IP: "0.0000", SI: "0.000" },
} as const satisfies Record<string, Record<UnitSystem, string>>;

/** The number format of a quantity in the units that the sheet was made for. */
export const formatOf = (frame: Frame, quantity: keyof typeof FORMATS): string => FORMATS[quantity][frame.units];

export const SHARE = "0.0%";
