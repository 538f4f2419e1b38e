import { covariance, seen } from "../../core/numeric/withPriors";
import { priorsOf, saidBy, slopesOf } from "../../core/network/calibration/model";
import type { Fit } from "../../core/network/calibration/mostPlausible";
import type { Reading } from "../../core/network/calibration/reading";
import { LIMIT, type Slip, withoutEach } from "../../core/network/calibration/slips";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import type { CalibrateCells } from "./calibrateRow";
import type { Calibration } from "./calibration";
import { COVERAGE } from "./inputRows";
import { namesOf, spotInWords } from "./spotInWords";
import { slipInWords } from "./slipInWords";

/** A row for each reading, in their order: what was read, what the model says of it before and after, and a word. */
export function readingRows(calibration: Calibration, system: UnitSystem): CalibrateCells[] {
  const { model, asTold, judged, typed } = calibration;
  const priors = priorsOf(model);
  const straight = withoutEach(model, judged.fit);
  const usable = typed.flatMap(({ reading }) => (reading === null ? [] : [{ ...reading, meter: -1 }]));
  const before = { state: asTold, narrowed: [], slopes: slopesOf(asTold, usable) };
  const after = { ...judged.fit, slopes: slopesOf(judged.fit.state, usable) };
  let place = -1; // among those that can be used
  return typed.map(({ row, one, reading, refusal }): CalibrateCells => {
    const where = { part: "reading", open: row.openWords, row: row.row };
    if (one === null || reading === null)
      return { ...where, what: one === null ? row.at : spotInWords(one.what, row.at), inWords: refusal ?? "" };
    const unit = unitOf(reading.what === "airflow" || reading.what === "velocity" ? reading.what : "pressure", system);
    place++;
    const told = (
      by: Pick<Fit, "state" | "narrowed" | "slopes">,
    ): { readonly value: number; readonly error: number } => {
      const answer = seen(by.narrowed, itemAt(by.slopes, place));
      const value = saidBy(by.state, reading);
      return { value, error: COVERAGE * value * Math.sqrt(Math.max(covariance(priors, answer, answer), 0)) };
    };
    const [first, then] = [told(before), told(after)];
    const slip = judged.slips.find(({ readings }) => readings.includes(reading));
    const another = judged.slips.find(({ instead }) => instead.includes(reading));
    const kept = slip === undefined && another === undefined ? straight([reading]) : null;
    const inUnit = (value: number): number => fromSI(value, unit);
    return {
      ...where,
      what: spotInWords(reading.what, row.at),
      read: inUnit(reading.value),
      before: inUnit(first.value),
      after: inUnit(then.value),
      errorBefore: inUnit(first.error),
      errorAfter: inUnit(then.error),
      unit: unit.label,
      ...(kept === null ? (slip === undefined ? {} : { misfit: slip.misfit }) : { misfit: kept.misfit }),
      inWords:
        slip !== undefined
          ? leftOut(slip, calibration, system)
          : another !== undefined
            ? sayNote("orThis", { which: namesOf(another.readings, typed) })
            : sayNote("agrees", { factor: Number(Math.exp(LIMIT * kept!.deviation).toPrecision(2)) }),
    };
  });
}

function leftOut(slip: Slip, calibration: Calibration, system: UnitSystem): string {
  const { kind, readings, factor, instead } = slip;
  return joinNotes([
    sayNote("leftOut", { factor: Number(factor.toPrecision(2)) }),
    ...(kind === "place" ? [sayNote("placeOff")] : kind === "meter" ? [sayNote("meterOff")] : []),
    ...slipInWords(slip, calibration, system),
    ...(mayBeBlocked(readings, factor, calibration) ? [sayNote("orBlocked")] : []),
    ...(instead.length === 0 ? [] : [sayNote("orAnother", { which: namesOf(instead, calibration.typed) })]),
  ]);
}

/** Too little air in a run behind whose hood nobody read a suction: a blocked duct would look the same. */
function mayBeBlocked(readings: readonly Reading[], factor: number, { typed, model }: Calibration): boolean {
  const [first] = readings;
  if (first === undefined || factor > 1 || first.run < 0 || readings.some(({ run }) => run !== first.run)) return false;
  const isEnd = itemAt(itemAt(model.systems, 0).network.joining, first.run).length === 0;
  const isAir = first.what === "airflow" || first.what === "velocity";
  return isEnd && isAir && !typed.some(({ reading }) => reading?.what === "suction" && reading.run === first.run);
}
