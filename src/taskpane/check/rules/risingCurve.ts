import { itemAt } from "../../../reference/itemAt";
import { RISES_AGAIN } from "../../../reference/plausible";
import { type Quantity, toSI, unitOf } from "../../../reference/quantities";
import type { BookCurve } from "../curves";
import { type CheckRule, type Finding, practice } from "../finding";
import { inGroups } from "../inGroups";

const SHARE = 0.5; // of the curve's greatest pressure: humps and dips of real fans rise by less. House judgement.

/** A fan's curve that rises with the airflow by more than any fan's does, or again where it had fallen. */
export const risingCurve: CheckRule = ({ curves }) => curves.flatMap(inCurve);

function inCurve({ table, system, points }: BookCurve): Finding[] {
  const sorted = points.map(([airflow, pressure], place) => ({ airflow, pressure, place })).sort((a, b) => a.airflow - b.airflow); // prettier-ignore
  const greatest = Math.max(...points.map(([, pressure]) => pressure));
  let low = itemAt(sorted, 0);
  const fallen = RISES_AGAIN.below * itemAt(sorted, 0).pressure;
  for (const [place, point] of sorted.entries()) {
    if (point.pressure < low.pressure) low = point;
    const before = sorted[place - 1] ?? point;
    const again = before.pressure < fallen && point.pressure - before.pressure > RISES_AGAIN.step * greatest;
    if (point.pressure - low.pressure <= SHARE * greatest && !again) continue;
    const said = (value: number, quantity: Quantity): string =>
      inGroups(toSI(value, unitOf(quantity, system)), quantity, system);
    const at = (one: typeof point): string => `${said(one.pressure, "pressure")} at ${said(one.airflow, "airflow")}`;
    return [
      {
        rule: "A fan's curve rises",
        what: `It rises from ${at(low)} to ${at(point)}.`,
        why: "The more air a fan moves, the less pressure it gives, but for a hump or a dip. Points of an older curve may stand below yours, one column may have been sorted or pasted without the other, or a point is mistyped. All that flows is computed with it.",
        source: practice,
        sheet: table.sheet,
        at: table.address(itemAt(table.rows, point.place), "fan static pressure"),
      },
    ];
  }
  return [];
}
