import { DomainError } from "../../core/errors";
import type { FanCurve } from "../../core/fan/fanCurve";
import { itemAt } from "../../reference/itemAt";
import type { UnitSystem } from "../../reference/quantities";
import { toMatrix } from "../cells";
import { readCurve } from "../fanTable/readCurve";

/** A fan that may be bought. */
export interface NamedFan {
  readonly name: string;
  readonly curve: FanCurve;
}

const MOST_FANS = 8;

/**
 * A fan's curve in two columns, or several beside each other: airflow, then a column of pressures for each. There a fan has no
 * point where its cell is blank, nor where it is 0, since some hosts send blanks as 0: a curve that ends early is never made longer.
 *
 * @throws DomainError that names the row, and the column where there are several
 */
export function readFans(given: unknown, system: UnitSystem): NamedFan[] {
  const matrix = toMatrix(given);
  const fans = itemAt(matrix, 0).length - 1;
  if (fans < 2) return [{ name: "", curve: readCurve(given, system) }];
  if (fans > MOST_FANS) throw new DomainError("curve", fans, `airflows and at most ${MOST_FANS} columns of pressures`);
  const read = Array.from({ length: fans }, (_, place): NamedFan => {
    const column = matrix.map((line) => {
      const pressure = itemAt(line, place + 1);
      return pressure === null || pressure === 0 ? [null, null] : [itemAt(line, 0), pressure];
    });
    const heading = itemAt(itemAt(matrix, 0), place + 1);
    const name = typeof heading === "string" && !Number.isFinite(Number(heading)) ? heading : `fan ${place + 1}`;
    try {
      return { name, curve: readCurve(column, system) };
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      throw new DomainError(`${error.argument}, column ${place + 2},`, error.value, error.requirement, error.limits);
    }
  });
  const isTwice = (name: string): boolean => read.filter((fan) => fan.name === name).length > 1;
  return read.map(({ name, curve }, place) => ({
    name: isTwice(name) ? `${name} (column ${place + 2})` : name,
    curve,
  }));
}
