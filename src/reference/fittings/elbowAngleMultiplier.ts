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

/** The same row, with the angles that could not be read in the other book. */
const ashrae: Provenance = {
  source: "ashrae2005copy",
  locator: "p 35.52, fitting CR3-1, angle factor",
  basis: "second-hand",
  checked: "2026-11-28",
};

/**
 * What an elbow of another turn loses, against one of 90 degrees. Printed for smooth elbows, in one book for
 * round and in the other for rectangular ones, with the same figures; we use it for segmented ones too. A second-hand manual takes half for 45 degrees where this table has 0.6.
 */
export const elbowAngleMultiplier: readonly AngleMultiplier[] = [
  { angle: 0, value: 0, ...smacna },
  { angle: 20, value: 0.31, ...ashrae },
  { angle: 30, value: 0.45, ...smacna },
  { angle: 45, value: 0.6, ...smacna },
  { angle: 60, value: 0.78, ...ashrae },
  { angle: 75, value: 0.9, ...smacna },
  { angle: 90, value: 1, ...smacna },
  { angle: 110, value: 1.13, ...ashrae },
  { angle: 130, value: 1.2, ...smacna },
  { angle: 150, value: 1.28, ...smacna },
  { angle: 180, value: 1.4, ...ashrae },
];
