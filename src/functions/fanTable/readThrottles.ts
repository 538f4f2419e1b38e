import { STANDARD_DENSITY } from "../../core/air/constants";
import { velocityPressure } from "../../core/air/velocityPressure";
import { DomainError, type Limits } from "../../core/errors";
import type { ThrottleReading } from "../../core/fan/measuredCurve";
import { sectionArea } from "../../core/section/section";
import type { Quantity, UnitSystem } from "../../reference/quantities";
import { type ThrottleColumn, throttleColumns } from "../../reference/throttleColumns";
import { readWithin } from "../arguments";
import { notUsed, PERCENT, TIMES, USUAL_PERCENT } from "../calibrationTable/readReadingRows";
import { refuseCell } from "../cellErrors";
import { type Cell, toMatrix } from "../cells";
import { headersOf } from "../headersOf";
import { ABOVE_ZERO } from "../signature";

/** A row of readings at one throttle, with its place in the range from 1. */
export interface ThrottleRow extends ThrottleReading {
  readonly row: number;
}

const MOST_ROWS = 40;

/**
 * The table of what was read at the fan, a row for each throttle.
 *
 * Fan static pressure is the static pressure behind the fan less the total pressure in front of it: after + suction - velocity pressure.
 *
 * @param diameter [m] of the duct in which it was read
 * @param density [kg/m3] of the air; what is handed back is in standard air
 * @throws DomainError that names the row
 */
export function readThrottles(
  given: unknown,
  diameter: number,
  density: number,
  system: UnitSystem,
): { readonly rows: readonly ThrottleRow[]; readonly blowsFreely: boolean } {
  const table = toMatrix(given);
  const [header = [], ...lines] = table;
  const columns = headersOf("readings", table, throttleColumns, system);
  if (!columns.has("Suction") || !(columns.has("Airflow") || columns.has("Velocity")))
    throw new DomainError("readings", header[0], "a table whose first row has the headers Suction and Velocity or Airflow"); // prettier-ignore
  const area = sectionArea(diameter, null);
  const filled = lines.flatMap((line, index) => {
    const cellOf = (column: ThrottleColumn): Cell => {
      const place = columns.get(column);
      const cell = place === undefined ? null : (line[place] ?? null);
      return cell === 0 ? null : cell;
    };
    const isBlank = (["Velocity", "Airflow", "Suction", "After"] as const).every((name) => cellOf(name) === null);
    return isBlank || notUsed(index + 2, cellOf("Use")) ? [] : [{ row: index + 2, cellOf }];
  });
  const blowsFreely = filled.every(({ cellOf }) => cellOf("After") === null);
  const rows = filled.map(({ row, cellOf }): ThrottleRow => {
    const number = (
      column: ThrottleColumn,
      quantity: Quantity,
      usual?: number,
      limits: Limits = ABOVE_ZERO,
    ): number => {
      const [name, cell] = [`${column} in row ${row} of readings`, cellOf(column)];
      if (cell !== null) return readWithin(name, cell, quantity, limits, system);
      return usual ?? refuseCell(name, cell, column === "After" ? "given in every row, or in none" : "given");
    };
    const hasVelocity = cellOf("Velocity") !== null;
    if (hasVelocity && cellOf("Airflow") !== null)
      throw new DomainError(`Airflow in row ${row} of readings`, cellOf("Airflow"), "left out beside a velocity");
    const airflow = hasVelocity ? number("Velocity", "velocity") * area : number("Airflow", "airflow");
    const after = number("After", "pressure", blowsFreely ? 0 : undefined);
    const suction = number("Suction", "pressure");
    const pressure = after + suction - velocityPressure(airflow / area, density);
    if (!(pressure > 0))
      throw new DomainError(`Suction in row ${row} of readings`, cellOf("Suction"), "more than the velocity pressure of that airflow in this diameter"); // prettier-ignore
    const times = Math.sqrt(number("Times", "ratio", 1, TIMES));
    const spread = (column: "Air ±" | "Pressure ±", usual: number): number =>
      number(column, "ratio", usual, PERCENT) / 100 / times;
    return {
      ...{ row, airflow, pressure: (pressure * STANDARD_DENSITY) / density },
      airflowDeviation: spread("Air ±", USUAL_PERCENT.airflow),
      pressureDeviation: spread("Pressure ±", USUAL_PERCENT.suction),
    };
  });
  if (rows.length > MOST_ROWS) throw new DomainError("readings", rows.length, `at most ${MOST_ROWS} rows`);
  return { rows, blowsFreely };
}
