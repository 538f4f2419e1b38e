import { DomainError } from "../../core/errors";
import { FASTEST_READING, type ReadingKind, readingVelocity } from "../../core/measuring/traverseVelocity";
import { velocityPressure } from "../../core/air/velocityPressure";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { readNumber } from "../arguments";
import { toMatrix } from "../cells";
import { inUnit } from "../runsTable/inUnit";

/**
 * The readings of a traverse in a range of any shape, in SI. Blank cells are left out, and so are zeros: some hosts send
 * blanks as 0.
 *
 * @throws DomainError that names the place of the first wrong cell
 */
export function readReadings(given: unknown, kind: ReadingKind, density: number, system: UnitSystem): number[] {
  const quantity = kind === "velocity" ? "velocity" : "pressure";
  const unit = unitOf(quantity, system);
  const most = kind === "velocity" ? FASTEST_READING : velocityPressure(FASTEST_READING, density);
  return toMatrix(given).flatMap((line, row) =>
    line.flatMap((cell, column) => {
      if (cell === null || cell === 0) return [];
      const place = `row ${row + 1}, column ${column + 1} of readings`;
      const reading = readNumber(place, cell, quantity, system);
      if (reading < 0) throw new DomainError(place, fromSI(reading, unit), `at least 0 ${unit.label}`);
      try {
        readingVelocity(reading, kind, density);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        const limit = `at most ${inUnit(most, quantity, system)}, more than any dust duct carries`;
        throw new DomainError(place, fromSI(reading, unit), limit);
      }
      return [reading];
    }),
  );
}
