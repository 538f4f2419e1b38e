import { requireWithin } from "../errors";

/**
 * The airflow that a meter should have shown, had the right area been entered.
 *
 *     Q = Q_read x A_true / A_entered
 *
 * Such a meter measures a velocity and multiplies: a digit or a decimal place off in the area puts the airflow off by the
 * same factor, and what it measured is not lost.
 *
 * @param reading at least 0, any unit
 * @param areaentered above 0, any unit
 * @param areatrue above 0, the same unit
 * @returns in the reading's unit
 * @throws DomainError if an argument is outside its range
 * @source geometry
 * @example correctedReading(600, 20, 14) // => 420
 */
export function correctedReading(reading: number, areaentered: number, areatrue: number): number {
  requireWithin("reading", reading, { atLeast: 0 }, "");
  requireWithin("areaentered", areaentered, { above: 0 }, "");
  requireWithin("areatrue", areatrue, { above: 0 }, "");
  return (reading * areatrue) / areaentered;
}
