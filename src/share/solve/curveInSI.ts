import { type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import { cellText, rangeText } from "../../sheets/rangeRef";
import { rowsOf } from "../../sheets/rectangle";
import { quotedText } from "../references";
import { type CurveGiven, curvePlace } from "../translate/expressions/fanCurve";
import { num } from "../translate/expressions/text";
import type { Workings } from "../translate/workings";

/** A fan curve in SI on the workings: rising airflows, pressures in standard air, slopes. Rows below the last point repeat it. */
export interface CurveInSI {
  readonly rows: number;
  readonly count: string; // how many points
  readonly airflows: string; // [m3/s]
  readonly pressures: string; // [Pa]
  readonly slopes: string; // [Pa s/m3]
  readonly rises: string; // 1 where a point lies above the one before it
}

/** The points of a curve that stands in a range of two columns, in these units. */
export function curveInSI(curve: CurveGiven, system: UnitSystem, workings: Workings): CurveInSI {
  const rows = rowsOf(curve.range);
  const given = curvePlace(curve, workings);
  const factor = (quantity: Quantity): number => unitOf(quantity, system).factor;
  const [flow, pressure] = [factor("airflow"), factor("pressure")];
  const place = workings.once(`curve in SI ${JSON.stringify(curve.range)} ${system}`, () =>
    workings.place(rows + 2, 4, (range) => {
      const first = range.top + 2;
      const at = (column: number, row: number): string => cellText(range.sheet, range.left + column, first + row);
      const read = (from: string, by: number, column: number, row: number): string => {
        const there = `INDEX(${from},${row + 1})*${num(by)}`;
        return row === 0 ? there : `IF(${given.count}<${row + 1},${at(column, row - 1)},${there})`;
      };
      return [
        [quotedText("The fan's curve in SI"), "", "", ""],
        ["airflow (m³/s)", "pressure in standard air (Pa)", "slope (Pa s/m³)", "1: rises to it"].map(quotedText),
        ...Array.from({ length: rows }, (_, row) => [
          read(given.airflows, flow, 0, row),
          read(given.pressures, pressure, 1, row),
          read(given.slopes, pressure / flow, 2, row),
          row === 0 ? "0" : `IF(${at(1, row)}>${at(1, row - 1)},1,0)`,
        ]),
      ];
    }),
  );
  const column = (at: number): string => {
    const left = place.left + at;
    return rangeText({ sheet: place.sheet, top: place.top + 2, bottom: place.bottom, left, right: left });
  };
  return { rows, count: given.count, airflows: column(0), pressures: column(1), slopes: column(2), rises: column(3) };
}
