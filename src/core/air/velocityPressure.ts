import { requireWithin } from "../errors";
import { DENSITY_LIMITS } from "./constants";

/**
 * Velocity pressure, the pressure of the air's motion.
 *
 *     p_v = rho V^2 / 2
 *
 * @param velocity [m/s] at least 0
 * @param density [kg/m3] 0.2 to 5
 * @returns [Pa]
 * @throws DomainError if an argument is outside its range
 * @source ductLectureSlides p_v = 0.602 V^2 at 1.204 kg/m3
 * @example velocityPressure(20, 1.2) // => 240
 */
export function velocityPressure(velocity: number, density: number): number {
  requireWithin("velocity", velocity, { atLeast: 0 }, "m/s");
  requireWithin("density", density, DENSITY_LIMITS, "kg/m³");
  return 0.5 * density * velocity * velocity;
}

/**
 * Velocity that has a velocity pressure: what a Pitot tube reads.
 *
 *     V = sqrt(2 p_v / rho)
 *
 * @param pressure [Pa] velocity pressure, at least 0
 * @param density [kg/m3] 0.2 to 5
 * @returns [m/s]
 * @throws DomainError if an argument is outside its range
 * @source abulencia2009 example 19.2
 * @example velocityFromPressure(240, 1.2) // => 20
 */
export function velocityFromPressure(pressure: number, density: number): number {
  requireWithin("pressure", pressure, { atLeast: 0 }, "Pa");
  requireWithin("density", density, DENSITY_LIMITS, "kg/m³");
  return Math.sqrt((2 * pressure) / density);
}
