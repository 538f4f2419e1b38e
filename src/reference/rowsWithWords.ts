import { elbowAngleMultiplier } from "./fittings/elbowAngleMultiplier";
import { mitreReynoldsMultiplier } from "./fittings/mitreReynoldsMultiplier";
import { gateConditions } from "./gateConditions";
import { leakageClasses } from "./leakageClasses";
import { lossFamilies } from "./lossFamilies";
import { materials } from "./materials";
import type { Provenance } from "./schema";
import { tradeSizes } from "./tradeSizes";
import { transport } from "./transport";

/** What a row says to a person: nothing is computed by it, and only a table shows it. */
export interface Words extends Partial<Provenance> {
  readonly label?: string;
  readonly note?: string;
}

/**
 * The rows by which single cells and budgets compute, each family before its points. The build takes their words out of the file
 * that cells wait for, and puts them into the one that shows tables, in this order.
 */
export const rowsWithWords = (): Words[] => [
  ...materials,
  ...transport,
  ...leakageClasses,
  ...gateConditions,
  ...tradeSizes,
  ...lossFamilies.flatMap((family): Words[] => [family, ...family.points]),
  ...elbowAngleMultiplier,
  ...mitreReynoldsMultiplier,
];
