import type { Provenance } from "../schema";

export interface ReynoldsMultiplier extends Provenance {
  readonly reynolds: number; // [-]
  readonly value: number; // [-] times the coefficient of a mitre
}

const smacna: Provenance = {
  source: "smacna4th",
  locator: "Table A-7, p A.15, Reynolds multiplier of mitred elbows",
  basis: "read",
  checked: "2026-11-27",
};

/**
 * What a mitre loses more in slow air. At 4000 fpm a 4 in duct has a Reynolds number of 137 000, all but the last row; at
 * 2000 fpm the loss is 1.08 times as high.
 */
export const mitreReynoldsMultiplier: readonly ReynoldsMultiplier[] = [
  { reynolds: 10_000, value: 1.4, ...smacna },
  { reynolds: 20_000, value: 1.26, ...smacna },
  { reynolds: 40_000, value: 1.14, ...smacna },
  { reynolds: 60_000, value: 1.09, ...smacna },
  { reynolds: 100_000, value: 1.04, ...smacna },
  { reynolds: 140_000, value: 1, ...smacna },
];
