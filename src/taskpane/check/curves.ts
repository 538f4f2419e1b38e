import { fanCurveColumns } from "../../reference/answerColumns";
import { headerOfColumn } from "../../reference/columnsOfAnswers";
import type { UnitSystem } from "../../reference/quantities";
import { type FoundTable, type LookedThrough, numberIn, tablesWith } from "./tablesIn";

/** A fan's curve in a book, in the units of its table. */
export interface BookCurve {
  readonly table: FoundTable;
  readonly system: UnitSystem;
  readonly points: readonly (readonly [airflow: number, pressure: number])[];
  readonly lastRow: number;
}

/** Of FANCURVE's answer, which the sheet Fan takes over where its owner says so. */
const OWN = headerOfColumn(fanCurveColumns, "error");

/** Every table of a fan's airflow and static pressure with two points or more. */
export function curvesIn(sheets: readonly LookedThrough[]): BookCurve[] {
  return tablesWith(sheets, ["airflow", "fan static pressure"], ["run", OWN]).flatMap((table) => {
    const points: (readonly [number, number])[] = [];
    let lastRow = table.headerRow;
    for (const row of table.rows) {
      const airflow = numberIn(table.value(row, "airflow"));
      const pressure = numberIn(table.value(row, "fan static pressure"));
      // the first row that is no point ends the curve: what stands further down belongs to something else
      if (airflow === null || pressure === null) break;
      points.push([airflow, pressure]);
      lastRow = row;
    }
    return points.length < 2 ? [] : [{ table, system: table.system, points, lastRow }];
  });
}

/** The curve of a budget in these units; undefined where the book has none. */
export const curveFor = (
  { curves }: { readonly curves: readonly BookCurve[] },
  system: UnitSystem,
): BookCurve | undefined => curves.find((one) => one.system === system);
