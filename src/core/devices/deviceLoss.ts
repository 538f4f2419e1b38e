import { STANDARD_DENSITY } from "../air/constants";
import { type Limits, requireWithin } from "../errors";

/** A separator's loss goes with the square of the airflow. */
export const SEPARATOR_EXPONENT = 2;

export const DEVICE_EXPONENT_LIMITS: Limits = { atLeast: 0.5, atMost: 2.5 };

/**
 * Loss of a separator or filter at another airflow than the rated one.
 *
 *     p = p0 (Q / Q0)^m,  m = 2 for a separator, 1 for a filter medium
 *
 * @param airflow at least 0, any unit
 * @param ratedloss at least 0, any unit
 * @param ratedairflow above 0, the airflow's unit
 * @param exponent [-] 0.5 to 2.5
 * @returns in the rated loss's unit
 * @throws DomainError if an argument is outside its range
 * @source commonPractice turbulent losses go with Q^2, a filter medium is laminar
 * @example deviceLoss(600, 2, 800, 2) // => 1.125
 */
export function deviceLoss(airflow: number, ratedloss: number, ratedairflow: number, exponent: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "");
  requireWithin("ratedloss", ratedloss, { atLeast: 0 }, "");
  requireWithin("ratedairflow", ratedairflow, { above: 0 }, "");
  requireWithin("exponent", exponent, DEVICE_EXPONENT_LIMITS, "");
  return ratedloss * (airflow / ratedairflow) ** exponent;
}

/**
 * What a device loses in other air at the same airflow, against its rating in standard air.
 *
 *     p ~ rho^(m - 1) mu^(2 - m) Q^m,  so (rho / rho standard)^(m - 1): density for m = 2, viscosity alone for m = 1
 *
 * Viscosity is taken as constant, and an exponent beyond these two counts as the nearer one.
 *
 * @param density [kg/m3] above 0
 * @param exponent [-] m
 * @returns [-]
 * @throws DomainError if the density is not above 0
 * @source commonPractice the dimensions of a loss that goes with Q^m, between laminar (1) and turbulent (2)
 * @example deviceAirFactor(1.2013846, 2) // => 1
 */
export function deviceAirFactor(density: number, exponent: number): number {
  requireWithin("density", density, { above: 0 }, "kg/m³");
  return (density / STANDARD_DENSITY) ** Math.min(Math.max(exponent - 1, 0), 1);
}
