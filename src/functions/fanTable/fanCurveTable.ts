import { DomainError } from "../../core/errors";
import { curveAt, type FanCurve, leastAirflow, mostAirflow } from "../../core/fan/fanCurve";
import { measuredCurve } from "../../core/fan/measuredCurve";
import { rowOf } from "../../core/naming/findNamed";
import { fanCurveColumns, type FanCurveKey } from "../../reference/answerColumns";
import { inputErrors } from "../../reference/inputErrors";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import type { readThrottles } from "./readThrottles";

/** Judgements of ours, wider than elsewhere: a printed curve that is right costs nothing by it, and one of another fan spoils less. */
const PRINTED = { speed: 0.25, pressure: 0.15, shape: 0.08 };

/** What is written is two standard deviations, as in UNCERTAINTY. */
const COVERAGE = 2;

/** Readings that are needed with a printed curve, and without. */
const NEEDED = [2, 3] as const;

/** The answer of FANCURVE: a header, then the points of the curve; the first says what to know of all. */
export function fanCurveTable(
  { rows, blowsFreely }: ReturnType<typeof readThrottles>,
  told: FanCurve | null,
  reach: "read" | "printed",
  system: UnitSystem,
): Value[][] {
  const needed = told === null ? NEEDED[1] : NEEDED[0];
  const flows = new Set(rows.map(({ airflow }) => airflow)).size;
  if (flows < needed)
    throw new DomainError("readings", flows, `at ${needed} different airflows at least ${told === null ? "where no curve is given" : "beside a curve"}`); // prettier-ignore
  const doubt = { ...PRINTED, meter: rowOf(inputErrors, "meter").percent! / 100 };
  const { points, left, bends } = measuredCurve(rows, told, doubt, reach);
  const rises = points.some(({ pressure }, index) => index > 0 && pressure > points[index - 1]!.pressure);
  const all = [
    sayNote("throttlesRead", { count: rows.length - left.length }),
    ...left.map(({ place, factor }) =>
      sayNote("throttleLeftOut", { row: itemAt(rows, place).row, factor: Number(factor.toPrecision(2)) }),
    ),
    ...(bends ? [sayNote("throttlesBend")] : []),
    ...(rises ? [sayNote("throttlesRise")] : []),
    ...(blowsFreely ? [sayNote("freeBlowing")] : []),
  ];
  const answer = points.map(({ airflow, pressure, deviation, beyond }, index): Value[] => {
    const isPrinted = told !== null && airflow >= leastAirflow(told) && airflow <= mostAirflow(told);
    const printed = isPrinted ? curveAt(told, airflow).pressure : null;
    const row: Record<FanCurveKey, Value | null> = {
      ...{ airflow, pressure, error: COVERAGE * deviation, printed },
      share: printed === null || printed === 0 ? null : (100 * pressure) / printed,
      inWords: joinNotes([...(index === 0 ? all : []), ...(beyond ? [sayNote("beyondRead")] : [])]),
    };
    return answerRow(fanCurveColumns, row, system);
  });
  return [headerRow(fanCurveColumns, system), ...answer];
}
