import { WORKSHOP_FAN } from "../../../reference/plausible";
import { itemAt } from "../../../reference/itemAt";
import { type Quantity, toSI, unitOf } from "../../../reference/quantities";
import type { BookCurve } from "../curves";
import { type CheckRule, type Finding, practice } from "../finding";
import { inGroups } from "../inGroups";

const WHY =
  "Mostly a curve that is printed in other units than its table: Pa, mm of water, mbar or kPa, m³/min or litres a second. Convert it; all that flows is computed with it.";

/** A curve that no fan has which pulls dust through ducts. */
export const strangeFan: CheckRule = ({ curves }) => curves.flatMap(ofCurve);

function ofCurve({ table, system, points }: BookCurve): Finding[] {
  const { leastPressure, mostPressure, turbinePressure, turbineAirflow, leastAirflow } = WORKSHOP_FAN;
  const greatest = (place: 0 | 1, quantity: Quantity): number =>
    toSI(Math.max(...points.map((point) => point[place])), unitOf(quantity, system));
  const airflow = greatest(0, "airflow");
  const pressure = greatest(1, "pressure");
  const most = airflow > turbineAirflow ? mostPressure : turbinePressure;
  const isPressure = pressure < leastPressure || pressure > most;
  if (!isPressure && airflow >= leastAirflow) return [];
  const said = isPressure ? inGroups(pressure, "pressure", system) : inGroups(airflow, "airflow", system);
  return [
    {
      rule: "A strange fan",
      what: `The fan gives at most ${said}: no duct fan's curve is like that.`,
      why: WHY,
      source: practice,
      sheet: table.sheet,
      at: table.address(itemAt(table.rows, 0), isPressure ? "fan static pressure" : "airflow"),
    },
  ];
}
