import { velocityFromPressure } from "../air/velocityPressure";
import { DomainError, requireWithin } from "../errors";

/** No dust duct runs faster, and few hand-held meters read further [m/s]. House judgement. */
export const FASTEST_READING = 60;

/** What was read at the points of a traverse. */
export type ReadingKind = "velocity" | "velocity pressure";

/**
 * Velocity that one reading of a traverse stands for.
 *
 * @param reading [m/s] or [Pa] at least 0, up to 60 m/s or its velocity pressure
 * @param kind what was read
 * @param density [kg/m3] 0.2 to 5, for velocity pressures
 * @returns [m/s]
 * @throws DomainError if the reading is negative or beyond what a dust duct carries
 * @source abulencia2009 example 19.2
 */
export function readingVelocity(reading: number, kind: ReadingKind, density: number): number {
  requireWithin("reading", reading, { atLeast: 0 }, kind === "velocity" ? "m/s" : "Pa");
  const velocity = kind === "velocity" ? reading : velocityFromPressure(reading, density);
  if (velocity > FASTEST_READING)
    throw new DomainError("reading", reading, `at most ${FASTEST_READING} m/s or its velocity pressure`);
  return velocity;
}

/**
 * Mean velocity of a traverse.
 *
 *     V = (V1 + V2 + ... + Vn) / n,  each Vi = sqrt(2 p_i / rho) where pressures were read
 *
 * Velocity pressures are averaged as roots. The root of their mean would be too high, the more so the less even the flow is.
 *
 * @param readings [m/s] or [Pa] one per point, at least one, each at least 0
 * @param kind what was read
 * @param density [kg/m3] 0.2 to 5, for velocity pressures
 * @returns [m/s]
 * @throws DomainError if there is no reading, or a reading is refused
 * @source certificationExam average the square roots of the velocity pressures
 */
export function traverseVelocity(readings: readonly number[], kind: ReadingKind, density: number): number {
  if (readings.length === 0) throw new DomainError("readings", null, "at least one reading");
  return readings.reduce((sum, reading) => sum + readingVelocity(reading, kind, density), 0) / readings.length;
}
