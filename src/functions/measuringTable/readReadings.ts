import { velocityPressure } from "../../core/air/velocityPressure";
import { DomainError } from "../../core/errors";
import { FASTEST_READING, type ReadingKind, readingVelocity } from "../../core/measuring/traverseVelocity";
import { inWords } from "../../reference/inWords";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { readNumber } from "../arguments";
import { filledReadings } from "./filledReadings";

/**
 * The readings of a traverse in a range of any shape, in SI.
 *
 * @throws DomainError that names the place of the first wrong cell, or counts those that are blank or 0
 */
export function readReadings(given: unknown, kind: ReadingKind, density: number, system: UnitSystem): number[] {
  const quantity = kind === "velocity" ? "velocity" : "pressure";
  const unit = unitOf(quantity, system);
  const most = kind === "velocity" ? FASTEST_READING : velocityPressure(FASTEST_READING, density);
  return filledReadings(
    "readings",
    given,
    (place, cell) => {
      const reading = readNumber(place, cell, quantity, system);
      if (reading < 0) throw new DomainError(place, fromSI(reading, unit), `at least 0 ${unit.label}`);
      try {
        readingVelocity(reading, kind, density);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        const limit = `at most ${inWords(most, quantity, system)}, more than any dust duct carries`;
        throw new DomainError(place, fromSI(reading, unit), limit);
      }
      return reading;
    },
    "where the air stood still",
  );
}
