import { velocityPressure } from "../air/velocityPressure";
import { requireWithin } from "../errors";
import { frictionPerLength } from "../friction/frictionLoss";
import { fallingRoot } from "../numeric/fallingRoot";
import { sectionArea } from "../section/section";

/** A bare pipe end and a straight pipe behind it: the least that air must pass to reach a fan. */
export interface Passage {
  readonly diameter: number; // [m] above 0 to 20
  readonly length: number; // [m] at least 0
  readonly roughness: number; // [m] 0 to 0.2 diameters
  readonly entry: number; // [-] entry loss coefficient, above 0
  readonly density: number; // [kg/m3] 0.2 to 5
}

/**
 * Total pressure that an airflow loses in a passage.
 *
 *     p = K_h p_v + L (dp/L)
 *
 * @param airflow [m3/s] at least 0
 * @param passage an end and a straight pipe
 * @returns [Pa]
 * @throws DomainError if an argument is outside its range
 * @source ashrae2009si Darcy-Weisbach and entry losses, duct design chapter
 */
export function passageLoss(airflow: number, passage: Passage): number {
  const { diameter, length, roughness, entry, density } = passage;
  requireWithin("length", length, { atLeast: 0 }, "m");
  requireWithin("entry", entry, { above: 0 }, "");
  const friction = frictionPerLength(airflow, diameter, roughness, density);
  return entry * velocityPressure(airflow / sectionArea(diameter, null), density) + length * friction;
}

/**
 * Airflow at which a passage alone takes the whole of a pressure: no fan with that highest pressure draws more through it.
 *
 * @param pressure [Pa] above 0
 * @param passage an end and a straight pipe
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source ashrae2009si the inverse of the loss above
 */
export function mostThrough(pressure: number, passage: Passage): number {
  requireWithin("pressure", pressure, { above: 0 }, "Pa");
  const { diameter, entry, density } = passage;
  const withoutFriction = sectionArea(diameter, null) * Math.sqrt((2 * pressure) / (entry * density));
  return fallingRoot((airflow) => pressure - passageLoss(airflow, passage), 0, 2 * withoutFriction);
}
