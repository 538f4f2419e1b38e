import type { Provenance } from "../schema";

export interface AngleMultiplier extends Provenance {
  readonly angle: number; // [degrees] turn of the elbow
  readonly value: number; // [-] times the coefficient for 90 degrees
}

const smacna: Provenance = {
  source: "smacna4th",
  locator: "Table A-7, p A.15, angle multiplier of smooth round elbows",
  basis: "read",
  checked: "2026-11-27",
};

/**
 * What an elbow of another turn loses, against one of 90 degrees. Printed for smooth elbows; we use it for segmented
 * ones too. A second-hand manual takes half for 45 degrees where this table has 0.6.
 */
export const elbowAngleMultiplier: readonly AngleMultiplier[] = [
  { angle: 0, value: 0, ...smacna },
  { angle: 30, value: 0.45, ...smacna },
  { angle: 45, value: 0.6, ...smacna },
  { angle: 75, value: 0.9, ...smacna },
  { angle: 90, value: 1, ...smacna },
  { angle: 130, value: 1.2, ...smacna },
  { angle: 150, value: 1.28, ...smacna },
];
