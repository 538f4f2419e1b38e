import { velocityFromPressure } from "../air/velocityPressure";
import { type Limits, requireWithin } from "../errors";

/**
 * Discharge coefficient of an opening. A sharp-edged orifice plate in a pipe has 0.60 (iso5167, one worked case); that a crack
 * or a slot has the same is common practice, no source.
 */
export const DISCHARGE_COEFFICIENT = 0.6;

export const COEFFICIENT_LIMITS: Limits = { above: 0, atMost: 1 };
export const LEAK_EXPONENT_LIMITS: Limits = { atLeast: 0.5, atMost: 1 };

/**
 * Airflow through an opening under a suction.
 *
 *     Q = C_d A sqrt(2 S / rho)
 *
 * @param area [m2] at least 0
 * @param suction [Pa] static, at least 0
 * @param coefficient [-] discharge coefficient, above 0 to 1; 0.6 for a crack or a sharp-edged hole
 * @param density [kg/m3] 0.2 to 5
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source commonPractice 0.6 for any opening; iso5167 for a sharp-edged orifice plate
 * @example openingLeak(0.01, 240, 0.6, 1.2) // => 0.12
 */
export function openingLeak(area: number, suction: number, coefficient: number, density: number): number {
  requireWithin("area", area, { atLeast: 0 }, "m²");
  requireWithin("suction", suction, { atLeast: 0 }, "Pa");
  requireWithin("coefficient", coefficient, COEFFICIENT_LIMITS, "");
  return coefficient * area * velocityFromPressure(suction, density);
}

/**
 * Effective leakage area of a measured leak: the opening that would pass it.
 *
 *     A = Q / (C_d sqrt(2 S / rho))
 *
 * @param airflow [m3/s] at least 0
 * @param suction [Pa] static, above 0
 * @param coefficient [-] above 0 to 1
 * @param density [kg/m3] 0.2 to 5
 * @returns [m2]
 * @throws DomainError if an argument is outside its range
 * @source commonPractice the same equation solved for the area
 * @example leakArea(0.12, 240, 0.6, 1.2) // => 0.01
 */
export function leakArea(airflow: number, suction: number, coefficient: number, density: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  requireWithin("suction", suction, { above: 0 }, "Pa");
  requireWithin("coefficient", coefficient, COEFFICIENT_LIMITS, "");
  return airflow / (coefficient * velocityFromPressure(suction, density));
}

/**
 * A measured leak at another suction.
 *
 *     Q2 = Q1 (S2 / S1)^n,  n = 0.5 for an opening, 0.65 for seams
 *
 * @param airflow at least 0, any unit
 * @param suction above 0, any unit
 * @param newsuction at least 0, the suction's unit
 * @param exponent [-] 0.5 to 1
 * @returns in the airflow's unit
 * @throws DomainError if an argument is outside its range
 * @source smacna1985 exponent 0.65 of the leakage classes
 * @example leakAtSuction(30, 2, 8, 0.5) // => 60
 */
export function leakAtSuction(airflow: number, suction: number, newsuction: number, exponent: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "");
  requireWithin("suction", suction, { above: 0 }, "");
  requireWithin("newsuction", newsuction, { atLeast: 0 }, "");
  requireWithin("exponent", exponent, LEAK_EXPONENT_LIMITS, "");
  return airflow * (newsuction / suction) ** exponent;
}
