import { fanCurveColumns } from "../../reference/answerColumns";
import { headerOfColumn } from "../../reference/columnsOfAnswers";
import { placeOf } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
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

/** Every table of a fan's airflow and static pressure. */
export const curveTables = (sheets: readonly LookedThrough[]): FoundTable[] =>
  tablesWith(sheets, ["airflow", "fan static pressure"], ["run", OWN]);

/** Those with two points or more. */
export function curvesIn(sheets: readonly LookedThrough[]): BookCurve[] {
  return curveTables(sheets).flatMap((table) => {
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

/** The curve that stands in these cells, else the first in these units; undefined where the book has none. */
export function curveFor(
  { curves }: { readonly curves: readonly BookCurve[] },
  system: UnitSystem,
  cells: RangeRef | null,
): BookCurve | undefined {
  const inUnits = curves.filter((one) => one.system === system);
  const isThere = ({ table }: BookCurve): boolean => {
    const { column, row } = placeOf(table.address(table.headerRow, "airflow"));
    const isHere = cells?.sheet === table.sheet && column === cells.left;
    return isHere && (row === cells.top || row + 1 === cells.top); // with its headings or without
  };
  return inUnits.find(isThere) ?? inUnits[0];
}
