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
