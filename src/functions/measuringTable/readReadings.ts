import { DomainError } from "../../core/errors";
import { FASTEST_READING, type ReadingKind, readingVelocity } from "../../core/measuring/traverseVelocity";
import { velocityPressure } from "../../core/air/velocityPressure";
import { plain } from "../../core/naming/findNamed";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { NOT_READ, STILL } from "../../reference/zeroWords";
import { readNumber } from "../arguments";
import { toMatrix } from "../cells";
import { inWords } from "../../reference/inWords";

/**
 * The readings of a traverse in a range of any shape, in SI.
 *
 * @throws DomainError that names the place of the first wrong cell, or counts those that are blank or 0
 */
export function readReadings(given: unknown, kind: ReadingKind, density: number, system: UnitSystem): number[] {
  const quantity = kind === "velocity" ? "velocity" : "pressure";
  const unit = unitOf(quantity, system);
  const most = kind === "velocity" ? FASTEST_READING : velocityPressure(FASTEST_READING, density);
  let [cells, untold] = [0, 0];
  const readings = toMatrix(given).flatMap((line, row) =>
    line.flatMap((cell, column) => {
      cells++;
      if (cell === null || cell === 0) {
        untold++;
        return [];
      }
      const word = typeof cell === "string" ? plain(cell) : "";
      if (NOT_READ.includes(word)) return [];
      if (STILL.includes(word)) return [0];
      const place = `row ${row + 1}, column ${column + 1} of readings`;
      const reading = readNumber(place, cell, quantity, system);
      if (reading < 0) throw new DomainError(place, fromSI(reading, unit), `at least 0 ${unit.label}`);
      try {
        readingVelocity(reading, kind, density);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        const limit = `at most ${inWords(most, quantity, system)}, more than any dust duct carries`;
        throw new DomainError(place, fromSI(reading, unit), limit);
      }
      return [reading];
    }),
  );
  if (untold === 0) return readings;
  const words = `"${STILL[0]!}" where the air stood still, "${NOT_READ[0]!}" where nobody read, or cells left out of the range`;
  throw new DomainError("readings", `${untold} of ${cells} cells blank or 0`, `filled throughout: ${words}`);
}
