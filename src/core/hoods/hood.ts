import { velocityFromPressure, velocityPressure } from "../air/velocityPressure";
import { requireWithin } from "../errors";
import { sectionArea } from "../section/section";

/**
 * Static suction in the duct just behind a hood or an open pipe end.
 *
 *     S = (1 + K_h) p_v
 *
 * @param airflow [m3/s] at least 0
 * @param diameter [m] above 0 to 20
 * @param entry [-] entry loss coefficient K_h, at least 0
 * @param density [kg/m3] 0.2 to 5
 * @returns [Pa]
 * @throws DomainError if an argument is outside its range
 * @source certificationExam "hood" rows: entry 0.6 at 2 in.w.g. gives 3.2 in.w.g.
 * @example hoodSuction(0.157080, 0.1, 0.6, 1.2) // => 384
 */
export function hoodSuction(airflow: number, diameter: number, entry: number, density: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  requireWithin("entry", entry, { atLeast: 0 }, "");
  return (1 + entry) * velocityPressure(airflow / sectionArea(diameter, null), density);
}

/**
 * Airflow into a hood from the static suction behind it (a throat tap, about three diameters down the duct).
 *
 *     Q = Ce A sqrt(2 S / rho),  Ce = 1 / sqrt(1 + K_h)
 *
 * @param suction [Pa] at least 0
 * @param diameter [m] above 0 to 20
 * @param entry [-] entry loss coefficient K_h, at least 0
 * @param density [kg/m3] 0.2 to 5
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source certificationExam "hood" rows: Ce 0.98, 4 in.w.g., 0.196 ft2 gives 1539 cfm
 * @example hoodAirflow(384, 0.1, 0.6, 1.2) // => 0.157
 */
export function hoodAirflow(suction: number, diameter: number, entry: number, density: number): number {
  requireWithin("suction", suction, { atLeast: 0 }, "Pa");
  requireWithin("entry", entry, { atLeast: 0 }, "");
  return (sectionArea(diameter, null) * velocityFromPressure(suction, density)) / Math.sqrt(1 + entry);
}
