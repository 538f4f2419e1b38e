import { AIR_VISCOSITY, DENSITY_LIMITS } from "../air/constants";
import { requireWithin } from "../errors";
import { meanVelocity, sectionArea } from "../section/section";

/**
 * Reynolds number of the air in a round duct: whether it flows in layers or turbulent, and where in a friction chart.
 *
 *     Re = rho V D / mu
 *
 * Up to 2000 the air flows in layers, from 4000 on it is turbulent, as in nearly every dust duct.
 *
 * @param airflow [m3/s] at least 0
 * @param diameter [m] inside, above 0 to 20
 * @param density [kg/m3] 0.2 to 5
 * @returns [-] 0 in still air
 * @throws DomainError if an argument is outside its range
 * @source ashrae2009si duct design chapter; the viscosity is the constant of the model
 * @example reynoldsNumber(0.157080, 0.1, 1.2) // => 131941
 */
export function reynoldsNumber(airflow: number, diameter: number, density: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  requireWithin("density", density, DENSITY_LIMITS, "kg/m³");
  return reynoldsOf(meanVelocity(airflow, sectionArea(diameter, null)), diameter, density);
}

/**
 * The same from a velocity, for callers that have checked what they give.
 *
 * @param velocity [m/s]
 * @param diameter [m]
 * @param density [kg/m3]
 * @returns [-]
 * @source ashrae2009si duct design chapter
 */
export const reynoldsOf = (velocity: number, diameter: number, density: number): number =>
  velocity * ((density * diameter) / AIR_VISCOSITY);
