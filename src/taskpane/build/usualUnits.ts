import type { UnitSystem } from "../../reference/quantities";

const INCH_POUND_REGIONS = ["US", "CA"]; // where duct is sold by the inch: common practice, no source

/** The unit system that is chosen before anybody chooses, by the language of the browser: "en-US" gives I-P, "de" SI. */
export function usualUnits(language: string): UnitSystem {
  const [tongue, ...rest] = language.split("-");
  const region = rest.find((part) => /^[a-z]{2}$/i.test(part))?.toUpperCase();
  // the functions themselves take I-P where nothing is said
  if (region === undefined) return tongue === "en" || tongue === "" ? "IP" : "SI";
  return INCH_POUND_REGIONS.includes(region) ? "IP" : "SI";
}
