import { LEAST_PERCENT } from "../../reference/leastPercent";
import { type Limits, requireWithin } from "../errors";
import { sectionArea } from "../section/section";
import { FASTEST_READING } from "./traverseVelocity";

export const READING_LIMITS: Limits = { atLeast: 0, atMost: FASTEST_READING }; // m/s
export const PERCENT_LIMITS: Limits = { atLeast: LEAST_PERCENT, atMost: 100 }; // or 0

/**
 * Plus or minus of an airflow that was computed from a velocity reading and a measured diameter.
 *
 *     dQ = A sqrt( (a V / 100)^2 + b^2 + (2 V dD / D)^2 )
 *
 * a the meter's percent of the reading, b its floor. The three parts are independent, so their squares add; the area goes with
 * D^2, hence the 2. It says nothing of a reading taken in the wrong place, or by a probe too big for the duct.
 *
 * @param velocity [m/s] 0 to 60
 * @param diameter [m] above 0 to 20
 * @param percent [%] of the reading, 0 or 0.1 to 100
 * @param floor [m/s] at least 0
 * @param diametererror [m] at least 0, below the diameter
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source doebelinMeasurement propagation of independent errors
 */
export function airflowError(
  velocity: number,
  diameter: number,
  percent: number,
  floor: number,
  diametererror: number,
): number {
  const area = sectionArea(diameter, null);
  requireWithin("velocity", velocity, READING_LIMITS, "m/s");
  if (percent !== 0) requireWithin("percent", percent, PERCENT_LIMITS, "%");
  requireWithin("floor", floor, { atLeast: 0 }, "m/s");
  requireWithin("diametererror", diametererror, { atLeast: 0, below: diameter }, "m");
  return area * Math.hypot((percent / 100) * velocity, floor, (2 * velocity * diametererror) / diameter);
}
