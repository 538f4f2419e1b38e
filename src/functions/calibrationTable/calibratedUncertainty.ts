import { velocityPressure } from "../../core/air/velocityPressure";
import { type Direction, direction } from "../../core/network/derivative/direction";
import { linearise } from "../../core/network/derivative/linearise";
import { priorsOf, stateAt } from "../../core/network/calibration/model";
import { inputsThere, type Unknown } from "../../core/network/calibration/unknowns";
import { covariance, seen } from "../../core/numeric/withPriors";
import { sectionArea } from "../../core/section/section";
import { uncertaintyColumns, type UncertaintyKey } from "../../reference/answerColumns";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import { runFlows } from "../flowTable/runFlows";
import { COVERAGE, inWords, leakFactor, leakInWords } from "../uncertaintyTable/uncertaintyTable";
import type { Calibration } from "./calibration";
import { wordsOf } from "./inputRows";

/** What flows strays from any such model; an answer by less than a single reading does. A judgement of ours. */
export const OF_MODEL = 0.75;

/** Where leaks make more of an answer's variance than this it does not go straight, and its ± is too small. */
const STRAIGHT_ENOUGH = 0.05;

/** The answer of CALIBRATEDUNCERTAINTY: what flows in the set of open gates that was asked for, with the ± that readings leave. */
export function calibratedUncertainty(calibration: Calibration, units: UnitSystem): Value[][] {
  const { model, judged, asked, fan } = calibration;
  const { system, solution } = stateAt(model, judged.fit.state.logarithms, new Set([asked])).sets[asked]!;
  const { network } = system;
  const priors = priorsOf(model);
  const straight = linearise(system, solution);
  const there = inputsThere(model.unknowns, network).map(({ place, input }) => ({
    place,
    one: direction(straight, input),
  }));
  let bent = false;

  const spread = (value: number, changeOf: (one: Direction) => number) => {
    const slopes = new Float64Array(model.unknowns.length);
    for (const { place, one } of there) slopes[place]! += changeOf(one);
    const answer = seen(judged.fit.narrowed, slopes);
    const variance = Math.max(covariance(priors, answer, answer), 0);
    const ofLeaks = seen(judged.fit.narrowed, slopes.map((slope, place) => (model.unknowns[place]!.kind === "leak" ? slope : 0))); // prettier-ignore
    const byLeaks = covariance(priors, ofLeaks, ofLeaks);
    bent ||= byLeaks > STRAIGHT_ENOUGH * variance;
    const deviation = Math.hypot(Math.sqrt(variance), OF_MODEL * model.wander * value);
    return { slopes, variance, deviation, byLeaks: byLeaks === 0 ? 0 : byLeaks / deviation ** 2 };
  };

  /** The unknown that would take most of the variance away if it were known. */
  const mostly = (slopes: Float64Array, deviation: number): Partial<Record<UncertaintyKey, Value>> => {
    if (deviation === 0) return {};
    const answer = seen(judged.fit.narrowed, slopes);
    const shares = model.unknowns.map((unknown: Unknown, place) => {
      const own = seen(
        judged.fit.narrowed,
        Float64Array.from(priors, (_, other) => (other === place ? 1 : 0)),
      );
      const variance = covariance(priors, own, own);
      return { unknown, share: variance > 0 ? (covariance(priors, own, answer) / deviation) ** 2 / variance : 0 };
    });
    const largest = shares.reduce((a, b) => (b.share > a.share ? b : a), { unknown: null as Unknown | null, share: 0 });
    return largest.unknown === null
      ? {}
      : { mostlyFrom: wordsOf(largest.unknown, calibration), share: 100 * largest.share };
  };

  const { table } = itemAt(calibration.sets, asked);
  const rows = Array.from({ length: table.rows }, () => blankRow(uncertaintyColumns));
  const flows = runFlows({ network, solution });
  table.runs.forEach((entry, index) => {
    const flow = itemAt(flows, index);
    const isAfter = entry.run.side === "discharge";
    const airflow = isAfter
      ? spread(flow.airflow, (one) => one.fanAirflow)
      : spread(flow.airflow, (one) => one.airflow[index]!);
    const error = COVERAGE * airflow.deviation;
    const ofLeaks = isAfter || flow.fed ? null : leakFactor(flow.airflow, airflow);
    const pressure = itemAt(solution.suction, index) + velocityPressure(Math.abs(flow.velocity), fan.density);
    const suction = isAfter || flow.beyondShut ? null : spread(pressure, (one) => one.staticSuction[index]!);
    const leak = isAfter || flow.leak === 0 ? null : spread(flow.leak, (one) => one.leak[index]!);
    const factor = leak && leakFactor(flow.leak, leak);
    rows[entry.row] = answerRow(
      uncertaintyColumns,
      {
        run: entry.run.name,
        airflow: flow.airflow,
        airflowError: error,
        velocity: flow.velocity,
        velocityError: error / sectionArea(entry.run.diameter, null),
        staticSuction: suction === null ? null : pressure,
        suctionError: suction === null ? null : COVERAGE * suction.deviation,
        leak: isAfter ? null : flow.leak,
        leakFactor: factor,
        ...mostly(airflow.slopes, airflow.deviation),
        inWords: ofLeaks === null ? inWords(flow.airflow, error, units) : leakInWords(flow.airflow, ofLeaks, units),
      } satisfies Partial<Record<UncertaintyKey, Value | null>>,
      units,
    );
  });
  const [airflow, pressure] = [
    spread(solution.fanAirflow, (one) => one.fanAirflow),
    spread(solution.fanPressure, (one) => one.fanPressure),
  ];
  const total = solution.leak.reduce((sum, one) => sum + one, 0);
  const leaks = spread(total, (one) => one.leak.reduce((sum, change) => sum + change, 0));
  const ofFan = answerRow(
    uncertaintyColumns,
    {
      run: "Fan",
      airflow: solution.fanAirflow,
      airflowError: COVERAGE * airflow.deviation,
      staticSuction: solution.fanPressure,
      suctionError: COVERAGE * pressure.deviation,
      leak: total,
      leakFactor: leakFactor(total, leaks),
      ...mostly(airflow.slopes, airflow.deviation),
      inWords: inWords(solution.fanAirflow, COVERAGE * airflow.deviation, units),
      beside: joinNotes([
        sayNote("errorsAfterReadings", { count: judged.fit.readings.length }),
        ...(solution.crossings > 1 ? [sayNote("errorsAtHump")] : []),
        ...(bent ? [sayNote("errorsByLeaks")] : []),
      ]),
    },
    units,
  );
  return [headerRow(uncertaintyColumns, units), ...rows, ofFan];
}
