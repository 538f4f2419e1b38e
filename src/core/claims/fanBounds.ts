import { DENSITY_LIMITS } from "../air/constants";
import { requireWithin } from "../errors";

/**
 * Air power that a fan makes at least somewhere on its curve.
 *
 *     P = Q_max p_max / 4, the best point of the straight line from (0, p_max) to (Q_max, 0)
 *
 * A fan's curve is a straight line (Euler) less losses that grow with the square of the airflow: it bulges and lies on or
 * above the straight line between its ends, so its own best point is no weaker. Only a curve that sags would be.
 *
 * @param airflow [m3/s] highest, above 0
 * @param pressure [Pa] highest, above 0
 * @returns [W]
 * @throws DomainError if an argument is not above 0
 * @source eulerMemory the straight line; the bulge by algebra
 */
export function leastBestPower(airflow: number, pressure: number): number {
  requireWithin("airflow", airflow, { above: 0 }, "m³/s");
  requireWithin("pressure", pressure, { above: 0 }, "Pa");
  return (airflow * pressure) / 4;
}

/**
 * Highest pressure that the tip speed of a wheel can make.
 *
 *     p = rho u^2,  u = pi D N
 *
 * Air leaves a wheel with radial or backward-leaning blades no faster round than its tip. A forward-curved wheel throws it
 * faster and can pass this bound; it clogs with dust.
 *
 * @param diameter [m] of the impeller, above 0
 * @param speed [1/s] turns per second, above 0
 * @param density [kg/m3] 0.2 to 5
 * @returns [Pa]
 * @throws DomainError if an argument is outside its range
 * @source eulerMemory Euler's equation without pre-rotation
 */
export function tipPressure(diameter: number, speed: number, density: number): number {
  requireWithin("density", density, DENSITY_LIMITS, "kg/m³");
  return density * tipSpeed(diameter, speed) ** 2;
}

/**
 * Speed of a wheel's tip.
 *
 *     u = pi D N
 *
 * @param diameter [m] above 0
 * @param speed [1/s] turns per second, above 0
 * @returns [m/s]
 * @throws DomainError if an argument is not above 0
 * @source geometry
 */
export function tipSpeed(diameter: number, speed: number): number {
  requireWithin("diameter", diameter, { above: 0 }, "m");
  requireWithin("speed", speed, { above: 0 }, "1/s");
  return Math.PI * diameter * speed;
}
