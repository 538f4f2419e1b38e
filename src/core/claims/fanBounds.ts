import { ATMOSPHERE, DENSITY_LIMITS } from "../air/constants";
import { requireWithin } from "../errors";
import { sectionArea } from "../section/section";

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
 * The least power that moves an airflow against a pressure, whatever the machine.
 *
 *     W = Q (p0 - p) ln(p0 / (p0 - p)),  p0 = 101 325 Pa
 *
 * Air that is squeezed takes less work than Q p, least where it stays as cool as it came. Whether the airflow was measured
 * before or behind the machine is seldom said, so it is taken on the side where this asks least. For a fan of 3 kPa it is
 * 1.5 % below Q p.
 *
 * @param airflow [m3/s] above 0
 * @param pressure [Pa] above 0, below 101 325
 * @returns [W]
 * @throws DomainError if an argument is outside its range
 * @source cengel2006 work of isothermal compression
 */
export function leastPower(airflow: number, pressure: number): number {
  requireWithin("airflow", airflow, { above: 0 }, "m³/s");
  requireWithin("pressure", pressure, { above: 0, below: ATMOSPHERE }, "Pa");
  const thin = ATMOSPHERE - pressure;
  return airflow * thin * Math.log(ATMOSPHERE / thin);
}

/**
 * Highest pressure that the tip speed of a wheel can make, in air that does not give way.
 *
 *     p = rho u^2,  u = pi D N
 *
 * Air leaves a wheel with radial or backward-leaning blades no faster round than its tip, and brings no swirl against it. A
 * forward-curved wheel throws it faster and can pass this bound; a side-channel wheel takes it up again and again.
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
 * The same bound of several stages, one behind the other, in air that is squeezed: no work done on air makes more pressure.
 *
 *     p = p0 (exp(n rho u^2 / p0) - 1),  p0 = 101 325 Pa
 *
 * @param stages how many wheels the air passes, at least 1
 * @param diameter [m] of each impeller, above 0
 * @param speed [1/s] turns per second, above 0
 * @param density [kg/m3] 0.2 to 5
 * @returns [Pa]
 * @throws DomainError if an argument is outside its range
 * @source eulerMemory Euler's equation without pre-rotation
 */
export function squeezedTipPressure(stages: number, diameter: number, speed: number, density: number): number {
  requireWithin("stages", stages, { atLeast: 1 }, "");
  return ATMOSPHERE * Math.expm1((stages * tipPressure(diameter, speed, density)) / ATMOSPHERE);
}

/**
 * Airflow of a wheel at a flow coefficient: that share of its tip speed through its whole face.
 *
 *     Q = phi u pi D^2 / 4
 *
 * No law forbids more: a wheel with radial blades gives each kilogram of air up to u^2 however much passes, and what leaves fast can be won
 * back behind it. Kinds of wheel have usual highest values.
 *
 * @param coefficient [-] above 0
 * @param diameter [m] of the impeller, above 0
 * @param speed [1/s] turns per second, above 0
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source geometry
 */
export function airflowAtCoefficient(coefficient: number, diameter: number, speed: number): number {
  requireWithin("coefficient", coefficient, { above: 0 }, "");
  return coefficient * tipSpeed(diameter, speed) * sectionArea(diameter, null);
}

/**
 * Airflow through a wheel's rim at a share of its tip speed.
 *
 *     Q = s u pi D b
 *
 * @param share [-] above 0
 * @param diameter [m] of the impeller, above 0
 * @param width [m] of its blades at the rim, above 0
 * @param speed [1/s] turns per second, above 0
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source geometry
 */
export function airflowThroughRim(share: number, diameter: number, width: number, speed: number): number {
  requireWithin("share", share, { above: 0 }, "");
  requireWithin("width", width, { above: 0 }, "m");
  return share * tipSpeed(diameter, speed) * Math.PI * diameter * width;
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
