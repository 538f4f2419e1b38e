import { DENSITY_LIMITS } from "../air/constants";
import { DomainError, requireWithin } from "../errors";
import { sectionArea } from "../section/section";
import { frictionFactor, ROUGHEST } from "./frictionFactor";
import { reynoldsOf } from "./reynoldsNumber";

/**
 * Friction of a straight round duct, per length.
 *
 *     dp/L = f/D * rho V^2 / 2,  f by Colebrook-White at Re = rho V D / mu
 *
 * @param airflow [m3/s] at least 0
 * @param diameter [m] above 0 to 20
 * @param roughness [m] of the wall, 0 to 0.2 diameters
 * @param density [kg/m3] 0.2 to 5
 * @returns [Pa/m]
 * @throws DomainError if an argument is outside its range
 * @source ashrae2009si Darcy-Weisbach, duct design chapter
 */
export function frictionPerLength(airflow: number, diameter: number, roughness: number, density: number): number {
  const { velocity, factor } = frictionState(airflow, diameter, roughness, density);
  return ((factor / diameter) * density * velocity * velocity) / 2;
}

/**
 * Straight length with the same loss as a coefficient.
 *
 *     L = K D / f
 *
 * @param coefficient [-] at least 0
 * @param airflow [m3/s] above 0 (f depends on it)
 * @param diameter [m] above 0 to 20
 * @param roughness [m] 0 to 0.2 diameters
 * @param density [kg/m3] 0.2 to 5
 * @returns [m]
 * @throws DomainError if an argument is outside its range
 * @source ashrae2009si both losses are multiples of the velocity pressure
 */
export function equivalentLength(
  coefficient: number,
  airflow: number,
  diameter: number,
  roughness: number,
  density: number,
): number {
  requireWithin("coefficient", coefficient, { atLeast: 0 }, "");
  requireWithin("airflow", airflow, { above: 0 }, "m³/s");
  return (coefficient * diameter) / frictionState(airflow, diameter, roughness, density).factor;
}

function frictionState(airflow: number, diameter: number, roughness: number, density: number) {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  requireWithin("density", density, DENSITY_LIMITS, "kg/m³");
  requireWithin("material", roughness, { atLeast: 0 }, "m of roughness");
  const velocity = airflow / sectionArea(diameter, null);
  if (roughness > ROUGHEST * diameter) {
    throw new DomainError("material", roughness, `rough by at most ${ROUGHEST} of the diameter`);
  }
  const reynolds = reynoldsOf(velocity, diameter, density);
  const factor = reynolds === 0 ? 0 : frictionFactor(reynolds, roughness / diameter);
  return { velocity, factor };
}
