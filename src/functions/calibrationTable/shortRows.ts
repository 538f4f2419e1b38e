import { curveAt, leastAirflow, mostAirflow } from "../../core/fan/fanCurve";
import { covariance, seen } from "../../core/numeric/withPriors";
import { priorsOf } from "../../core/network/calibration/model";
import { inWords } from "../../reference/inWords";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import type { CalibrateCells } from "./calibrateRow";
import type { Calibration, OpenSet } from "./calibration";
import { COVERAGE, type InputRows } from "./inputRows";
import { nextInWords } from "./nextInWords";
import { namesOf, openInWords } from "./spotInWords";

/** What it comes to, always in these rows: the fan, the readings, what to read next, what is not told. */
export function shortRows(calibration: Calibration, inputs: InputRows, system: UnitSystem): CalibrateCells[] {
  const rows = {
    fan: fanInWords(calibration, system),
    readings: readingsInWords(calibration),
    next: nextInWords(calibration),
    "not told": joinNotes([
      ...notApart(inputs.apart),
      ...(inputs.untouched === 0 ? [] : [sayNote("untouched", { count: inputs.untouched })]),
    ]),
  };
  return Object.entries(rows).map(([what, words]) => ({ part: "in short", what, inWords: words }));
}

/** The first pair; all of them stand with the inputs, and a line holds no more. */
function notApart([pair, ...more]: readonly string[]): string[] {
  if (pair === undefined) return [];
  return [more.length === 0 ? sayNote("notApart", { pair }) : sayNote("notApartMore", { pair, count: more.length })];
}

/** The fan against its curve, at the airflow of the set in which it moves least air: near the end of a curve a share means little. */
function fanInWords(calibration: Calibration, system: UnitSystem): string {
  const { fan, model, judged, sets } = calibration;
  if (judged.fit.readings.length === 0) return sayNote("noReadings");
  const solved = judged.fit.state.sets.flatMap((one, set) => (one === null ? [] : [{ ...one, set }]));
  const least = solved.reduce((a, b) => (b.solution.fanAirflow < a.solution.fanAirflow ? b : a));
  const at = least.solution.fanAirflow;
  const notes = [...(judged.fit.atEnd ? [sayNote("pastCurve")] : []), ...humps(calibration, sets)];
  if (at < leastAirflow(fan.curve) || at > mostAirflow(fan.curve)) return joinNotes(notes);
  const after = curveAt(least.system.curve, at);
  const printed = curveAt(fan.curve, at).pressure;
  if (!(printed > 0)) return joinNotes(notes);
  const slopes = Float64Array.from(model.unknowns, ({ kind }) =>
    kind === "fan pressure" ? 1 : kind === "fan speed" ? 2 - (at * after.slope) / after.pressure : 0,
  );
  const answer = seen(judged.fit.narrowed, slopes);
  const ratio = after.pressure / printed;
  const error = 100 * COVERAGE * ratio * Math.sqrt(Math.max(covariance(priorsOf(model), answer, answer), 0));
  const percent = 100 * (ratio - 1);
  const said = { airflow: inWords(at, "airflow", system), error: figures(error) };
  const words =
    Math.abs(percent) < error
      ? sayNote("fanAsPrinted", said)
      : sayNote(percent < 0 ? "fanWeaker" : "fanStronger", { ...said, percent: figures(Math.abs(percent)) });
  return joinNotes([words, ...notes]);
}

const humps = ({ judged }: Calibration, sets: readonly OpenSet[]): string[] =>
  judged.fit.state.sets.flatMap((one, set) =>
    one !== null && one.solution.crossings > 1 ? [sayNote("humpInSet", { open: openInWords(itemAt(sets, set)) })] : [],
  );

function readingsInWords({ typed, judged }: Calibration): string {
  const out = new Set(judged.slips.flatMap(({ readings, instead }) => [...readings, ...instead]));
  const total = typed.filter(({ reading }) => reading !== null).length;
  const wrong = typed.filter(({ reading }) => reading === null).length;
  const count = out.size;
  return joinNotes([
    ...(total === 0
      ? [sayNote("noReadings")]
      : count === 0
        ? [sayNote("readingsAgree", { count: total })]
        : [sayNote("readingsAside", { count, total, which: namesOf([...out], typed) })]),
    ...(wrong === 0 ? [] : [sayNote("rowsWrong", { count: wrong })]),
  ]);
}

const figures = (percent: number): number => Number(percent.toPrecision(percent < 1 ? 1 : 2));
