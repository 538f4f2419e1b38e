import { type Limits, requireWithin } from "../errors";

/** Diameter or side of a duct; beyond this it is none. [m] */
export const DUCT_SIZE: Limits = { above: 0, atMost: 20 };

const requireDiameter = (argument: string, value: number): void => requireWithin(argument, value, DUCT_SIZE, "m");

/**
 * Cross-section of a round or, with a height, a rectangular duct.
 *
 *     A = pi D^2 / 4   or   A = width * height
 *
 * @param diameter [m] inside diameter, or the width of a rectangle; above 0 to 20
 * @param height [m] height of a rectangle, above 0 to 20; null for a round duct
 * @returns [m2]
 * @throws DomainError if an argument is outside its range
 * @source geometry
 * @example sectionArea(0.1, null) // => 0.00785
 * @example sectionArea(0.3, 0.2) // => 0.06
 */
export function sectionArea(diameter: number, height: number | null): number {
  requireDiameter("diameter", diameter);
  if (height === null) return (Math.PI / 4) * diameter * diameter;
  requireDiameter("height", height);
  return diameter * height;
}

/**
 * Mean velocity of an airflow through an area.
 *
 *     V = Q / A
 *
 * @param airflow [m3/s] at least 0
 * @param area [m2]
 * @returns [m/s]
 * @throws DomainError if the airflow is negative
 * @source geometry
 * @example meanVelocity(0.5, 0.02) // => 25
 */
export function meanVelocity(airflow: number, area: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  return airflow / area;
}

/**
 * Exact round diameter that carries an airflow at a velocity.
 *
 *     D = sqrt(4 Q / (pi V))
 *
 * @param airflow [m3/s] above 0
 * @param velocity [m/s] above 0
 * @returns [m]
 * @throws DomainError if an argument is not above 0
 * @source geometry
 * @example diameterForVelocity(0.15708, 20) // => 0.1
 */
export function diameterForVelocity(airflow: number, velocity: number): number {
  requireWithin("airflow", airflow, { above: 0 }, "m³/s");
  requireWithin("velocity", velocity, { above: 0 }, "m/s");
  return Math.sqrt((4 * airflow) / (Math.PI * velocity));
}

/**
 * Round diameter with the same friction as a rectangle at the same airflow.
 *
 *     D = 1.30 (a b)^0.625 / (a + b)^0.25
 *
 * For friction only: velocity comes from the rectangle's own area.
 *
 * @param width [m] above 0 to 20
 * @param height [m] above 0 to 20
 * @returns [m]
 * @throws DomainError if an argument is outside its range
 * @source ashrae2009si Huebscher's equation, duct design chapter
 */
export function equivalentDiameter(width: number, height: number): number {
  requireDiameter("width", width);
  requireDiameter("height", height);
  return (1.3 * (width * height) ** 0.625) / (width + height) ** 0.25;
}
