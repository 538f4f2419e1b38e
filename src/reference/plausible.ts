import type { Quantity } from "./quantities";

/**
 * Beyond these an answer is mostly a slip of units: it is told of, never refused. House judgement, common practice without a
 * source: dust is carried at 15 to 30 m/s, and a meter of the trade reads to 60; half an atmosphere of pressure is more than any
 * fan makes; a straight run of more than 100 m is longer than the shop; at 100 m/s a pipe of 50 mm costs about 2400 Pa/m (f 0.02: 0.02/0.05 x 1.2 x 100²/2), and a duct of 0.8 m passes 50 m³/s.
 */
export const PLAUSIBLE = {
  velocity: 100, // m/s
  pressure: 50_000, // Pa
  lossPerLength: 5000, // Pa/m
  airflow: 50, // m³/s
  length: 100, // m
} as const satisfies Partial<Record<Quantity, number>>;

/** A duct beyond these is mostly one in other units: the inch sizes of a shop in mm, and its sizes in mm in inches. House judgement: a hose of 27 mm is sold. */
export const DUCT_ACROSS = { narrowest: 0.025, widest: 1.5 } as const; // m

/** Air beyond these is mostly in other units. House judgement: hot as under a tin roof in summer, cold as a shed in a hard winter, high as few towns are. */
export const WORKSHOP_AIR = {
  coldest: 243.15, // K
  hottest: 323.15, // K
  highest: 4500, // m
} as const;

/**
 * A curve whose greatest pressure or airflow lies beyond these is mostly printed in other units: Pa, mm of water or kPa for the table's, m³/min
 * for m³/h. House judgement: a single wheel at usual speeds makes less than 7.5 kPa, the turbines of a vacuum cleaner up to 30 kPa with little air,
 * and a fan that makes less than 400 Pa, or moves less than a small vacuum cleaner, pulls no dust through ducts.
 */
export const WORKSHOP_FAN = {
  leastPressure: 400, // Pa
  mostPressure: 7500, // Pa
  turbinePressure: 30_000, // Pa, of one that moves no more than
  turbineAirflow: 0.15, // m³/s
  leastAirflow: 100 / 3600, // m³/s
} as const;

/**
 * Where a fan's curve that has fallen below a share of its first pressure steps up again by a share of its greatest, one of its points is mostly
 * another curve's. House judgement: the dip of a fan with a hump stays shallower, and a step this small is a reading off the print.
 */
export const RISES_AGAIN = { below: 0.6, step: 0.02 } as const;
