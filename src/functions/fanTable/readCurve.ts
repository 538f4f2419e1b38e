import { ATMOSPHERE } from "../../core/air/constants";
import { DomainError, type Limits } from "../../core/errors";
import { type CurvePoint, type FanCurve, fanCurve } from "../../core/fan/fanCurve";
import type { Quantity, UnitSystem } from "../../reference/quantities";
import { readWithin } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, isWords, type Matrix, toMatrix } from "../cells";
import { itemAt } from "../../reference/itemAt";
import { requireOwnUnit } from "../ownUnit";

const FROM_ZERO: Limits = { atLeast: 0 };

/** One row of a curve range: its place, and its point in the range's own numbers and in SI. */
export interface CurveRow {
  readonly row: number; // from 0, in the range
  readonly point: CurvePoint;
}

/**
 * The points of a fan curve in a range of two columns, airflow and pressure: a heading row is allowed, rows may stand in
 * any order, and blank rows are skipped (a row of two zeros counts as blank, since some hosts send blanks as 0).
 *
 * @throws DomainError that names the row
 */
export function curveRows(given: unknown, quantities: readonly [Quantity, Quantity], system: UnitSystem): CurveRow[] {
  const matrix = toMatrix(given);
  if (itemAt(matrix, 0).length !== 2) {
    throw new DomainError(
      "curve",
      `${matrix.length} by ${itemAt(matrix, 0).length} cells`,
      "two columns, airflow and pressure",
    );
  }
  const first = matrix.findIndex((line) => !isBlankRow(line));
  const rows: CurveRow[] = [];
  matrix.forEach(([airflow, pressure], row) => {
    if (isBlankRow([airflow!, pressure!])) return;
    if (row === first && isHeading(matrix, row)) {
      if (says(airflow, /press/i) && says(pressure, /flow/i))
        throw new DomainError("curve", airflow, "airflow in the first column and pressure in the second");
      // the fan laws take either; as static pressure the total is too high by the velocity pressure at the outlet
      if (quantities[1] === "pressure" && says(pressure, /\btotal\b/i) && !says(pressure, /static/i))
        throw new DomainError("a header of curve", pressure, "of fan static pressure: the total less the velocity pressure at the fan's outlet, as the sheet Fan works it out"); // prettier-ignore
      requireOwnUnit("curve", airflow!, quantities[0], system);
      requireOwnUnit("curve", pressure!, quantities[1], system);
      return;
    }
    const read = (name: string, cell: Cell, quantity: Quantity): number => {
      const said = `${name} in row ${row + 1} of the curve`;
      return cell === null ? refuseCell(said, cell, "given") : readWithin(said, cell, quantity, FROM_ZERO, system);
    };
    const point = {
      airflow: read("airflow", airflow!, quantities[0]),
      pressure: read("pressure", pressure!, quantities[1]),
    };
    // airflows in cfm where the pressures belong; in m³/h and Pa nobody could tell them apart
    if (point.pressure > ATMOSPHERE)
      throw new DomainError(`pressure in row ${row + 1} of the curve`, pressure, "below that of the atmosphere (airflow stands in the first column, pressure in the second)"); // prettier-ignore
    const twice = rows.find((other) => other.point.airflow === point.airflow);
    if (twice !== undefined) {
      throw new DomainError(
        `airflow in row ${row + 1} of the curve`,
        airflow,
        `another one: row ${twice.row + 1} has it too`,
      );
    }
    rows.push({ row, point });
  });
  return rows;
}

/** A fan curve, in the call's units. */
export const readCurve = (given: unknown, system: UnitSystem): FanCurve =>
  fanCurve(curveRows(given, ["airflow", "pressure"], system).map(({ point }) => point));

const isBlankRow = (line: readonly Cell[]): boolean => line.every((cell) => cell === null || cell === 0);

const says = (cell: Cell | undefined, word: RegExp): boolean => typeof cell === "string" && word.test(cell);

/** A heading is a first row of words. */
const isHeading = (matrix: Matrix, row: number): boolean =>
  itemAt(matrix, row).some(isWords) &&
  itemAt(matrix, row).every((cell) => cell === null || (typeof cell === "string" && !Number.isFinite(Number(cell))));
