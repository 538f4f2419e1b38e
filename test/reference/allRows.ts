import { claimBoundRows } from "../../src/reference/claimBounds";
import { cautions } from "../../src/reference/cautions";
import { closedDampers } from "../../src/reference/closedDampers";
import { devices } from "../../src/reference/devices";
import { exposureLimits } from "../../src/reference/exposureLimits";
import { filters } from "../../src/reference/filters";
import { elbowAngleMultiplier } from "../../src/reference/fittings/elbowAngleMultiplier";
import { mitreReynoldsMultiplier } from "../../src/reference/fittings/mitreReynoldsMultiplier";
import { gateConditions } from "../../src/reference/gateConditions";
import { hazards } from "../../src/reference/hazards";
import { leakageClasses } from "../../src/reference/leakageClasses";
import { lossFamilies } from "../../src/reference/lossFamilies";
import { machines } from "../../src/reference/machines";
import { materials } from "../../src/reference/materials";
import { inputErrors } from "../../src/reference/inputErrors";
import { meterErrors } from "../../src/reference/meterErrors";
import type { Provenance, ReferenceRow } from "../../src/reference/schema";
import { tradeSizes } from "../../src/reference/tradeSizes";
import { transport } from "../../src/reference/transport";
import { traverseFractions } from "../../src/reference/traverseFractions";

/** Every table of keyed rows, by the name of its file. */
export const keyedTables: readonly (readonly [name: string, rows: readonly ReferenceRow[]])[] = [
  ["cautions", cautions],
  ["claimBounds", claimBoundRows],
  ["closedDampers", closedDampers],
  ["devices", devices],
  ["exposureLimits", exposureLimits],
  ["filters", filters],
  ["gateConditions", gateConditions],
  ["hazards", hazards],
  ["leakageClasses", leakageClasses],
  ["machines", machines],
  ["materials", materials],
  ["inputErrors", inputErrors],
  ["meterErrors", meterErrors],
  ["tradeSizes", tradeSizes],
  ["transport", transport],
  ["traverseFractions", traverseFractions],
];

/** Whatever names a source: keyed rows, points of loss families, multipliers. */
export const everyRow: readonly Provenance[] = [
  ...keyedTables.flatMap(([, rows]) => rows),
  ...lossFamilies.flatMap((family) => family.points),
  ...elbowAngleMultiplier,
  ...mitreReynoldsMultiplier,
];

/** As a person may type it: case, blanks and hyphens do not count. */
export const typed = (name: string): string => name.toLowerCase().replace(/[\s_-]+/g, " ");

/** Values that occur more than once. */
export const repeated = (values: readonly string[]): string[] =>
  values.filter((value, place) => values.indexOf(value) !== place);

/** Half a unit in the last printed digit: "0.152" -> 0.0005. */
export const halfLastDigit = (printed: string): number => 0.5 * 10 ** -(printed.split(".")[1] ?? "").length;

/** The row of a key; the test fails where there is none. */
export function rowOf<Row extends { readonly key: string }>(rows: readonly Row[], key: string): Row {
  const row = rows.find((one) => one.key === key);
  if (row === undefined) throw new Error(`no row "${key}"`);
  return row;
}
