import { type Limits, requireWithin } from "../errors";
import type { CurvePoint } from "./fanCurve";

/** A ratio of new to rated speed, density or size. */
export const RATIO_LIMITS: Limits = { above: 0, atMost: 10 };
export const EFFICIENCY_LIMITS: Limits = { above: 0, atMost: 1 };

/**
 * A point of a fan curve at another speed, air or size.
 *
 *     Q ~ N D^3,  p ~ N^2 D^2 rho
 *
 * @param point airflow and pressure, any units
 * @param speedratio [-] new speed / rated speed, above 0 to 10
 * @param densityratio [-] new density / rated density, above 0 to 10
 * @param sizeratio [-] new diameter / rated diameter, above 0 to 10
 * @returns in the point's units
 * @throws DomainError if a ratio is outside its range
 * @source abulencia2009 examples 17.1 and 17.2
 */
export function scaledPoint(
  point: CurvePoint,
  speedratio: number,
  densityratio: number,
  sizeratio: number,
): CurvePoint {
  requireWithin("speedratio", speedratio, RATIO_LIMITS, "");
  requireWithin("densityratio", densityratio, RATIO_LIMITS, "");
  requireWithin("sizeratio", sizeratio, RATIO_LIMITS, "");
  return {
    airflow: point.airflow * speedratio * sizeratio ** 3,
    pressure: point.pressure * speedratio ** 2 * sizeratio ** 2 * densityratio,
  };
}

/**
 * Power in the air, or with an efficiency the shaft power that it takes.
 *
 *     P = Q p / eta
 *
 * @param airflow [m3/s] at least 0
 * @param pressure [Pa] at least 0
 * @param efficiency [-] above 0 to 1; 1 gives the power in the air
 * @returns [W]
 * @throws DomainError if an argument is outside its range
 * @source solbergHeatPower example 10.3
 * @example airPower(0.5, 2000, 0.5) // => 2000
 */
export function airPower(airflow: number, pressure: number, efficiency: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  requireWithin("pressure", pressure, { atLeast: 0 }, "Pa");
  requireWithin("efficiency", efficiency, EFFICIENCY_LIMITS, "");
  return (airflow * pressure) / efficiency;
}
