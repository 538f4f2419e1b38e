import type { UnitSystem } from "../reference/quantities";
import type { PrintSetup } from "./workbook";

/** Paper of the unit system's countries. */
export const paperOf = (units: UnitSystem): PrintSetup["paper"] => (units === "SI" ? "A4" : "Letter");
