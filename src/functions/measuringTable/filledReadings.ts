import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import { NOT_READ, STILL } from "../../reference/zeroWords";
import { type Cell, toMatrix } from "../cells";

/**
 * The readings in a range of any shape. A 0 and a blank are told by words, since some hosts send a blank as 0: a cell that says
 * "still" is a reading of 0, one that says "not read" is left out.
 *
 * @param read one reading from its cell, whose place a refusal begins with
 * @param nought what a reading of 0 is called in the refusal
 * @throws DomainError that names the place of the first wrong cell, or counts those that are blank or 0
 */
export function filledReadings(
  name: string,
  given: unknown,
  read: (place: string, cell: Cell) => number,
  nought: string,
): number[] {
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
      return [read(`row ${row + 1}, column ${column + 1} of ${name}`, cell)];
    }),
  );
  if (untold === 0) return readings;
  const words = `"${STILL[0]!}" ${nought}, "${NOT_READ[0]!}" where nobody read, or cells left out of the range`;
  throw new DomainError(name, `${untold} of ${cells} cells blank or 0`, `filled throughout: ${words}`);
}
