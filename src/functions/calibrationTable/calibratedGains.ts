import { inputsThere } from "../../core/network/calibration/unknowns";
import { priorsOf } from "../../core/network/calibration/model";
import { covariance, seen } from "../../core/numeric/withPriors";
import type { Spread } from "../../core/network/derivative/spread";
import { itemAt } from "../../reference/itemAt";
import type { UnitSystem } from "../../reference/quantities";
import { toMatrix } from "../cells";
import { readCurve } from "../fanTable/readCurve";
import type { Gain } from "../flowTable/oneChange";
import type { Fan, Solved } from "../flowTable/solveRuns";
import type { TableRun } from "../runsTable/readRun";
import type { TableReader } from "../runsTable/readRuns";
import { sharedRuns } from "../runsTable/sharedRuns";
import { airflowBy } from "../uncertaintyTable/gainSpread";
import type { Deviations } from "../uncertaintyTable/readErrors";
import { inputsOfSolved } from "../uncertaintyTable/uncertaintyTable";
import { calibratedCurve } from "./calibratedCurve";
import { calibratedRuns, requireUsable } from "./calibratedRuns";
import { OF_MODEL } from "./calibratedUncertainty";
import type { Calibration } from "./calibration";
import { factorsOf } from "./factorsOf";

/** The ducts and the fan that readings speak for, as a function that is given CALIBRATEDRUNS and CALIBRATEDCURVE reads them. */
export function calibratedSystem(
  calibration: Calibration,
  runs: unknown,
  curve: unknown,
  system: UnitSystem,
): { readonly table: TableReader; readonly fan: Fan } {
  requireUsable(calibration);
  const table = sharedRuns(calibratedRuns(calibration, toMatrix(runs), system), system);
  const points = readCurve(calibratedCurve(calibration, curve, system), system);
  return { table: withHoseAsPipe(table, calibration), fan: { curve: points, density: calibration.fan.density } };
}

/** A hose that costs more than its book says is no longer by a tape: as much pipe takes its place as there is hose, calibrated as pipe. */
function withHoseAsPipe(table: TableReader, calibration: Calibration): TableReader {
  const told = itemAt(calibration.sets, 0).table.runs;
  const pipe = factorsOf(calibration)("pipe");
  return {
    ...table,
    runs: (open) => {
      const read = table.runs(open);
      const runs = read.runs.map((entry, index): TableRun => {
        return { ...entry, hoseAsPipe: itemAt(told, index).run.hoseLength * pipe };
      });
      return { ...read, runs };
    },
  };
}

/** How far each gain at a hood may be off once readings are counted, and the model's own error; diameters count as sure. */
export function calibratedGainSpreads(
  { model, judged }: Calibration,
  now: Solved,
  place: number,
  fan: Fan,
  errors: Deviations,
): (gain: Gain) => Pick<Spread, "deviation" | "byLeaks"> {
  const priors = priorsOf(model);
  const before = slopesOf(now);
  return ({ after, gained }) => {
    const then = slopesOf(after);
    const slopes = then.known.map((slope, unknown) => slope - before.known[unknown]!);
    const ofLeaks = slopes.map((slope, unknown) => (model.unknowns[unknown]!.kind === "leak" ? slope : 0));
    const unread = [...new Set([...before.unread.keys(), ...then.unread.keys()])]
      .map((leak) => (then.unread.get(leak) ?? 0) - (before.unread.get(leak) ?? 0))
      .reduce((sum, slope) => sum + (slope * (errors.get("leak") ?? 0)) ** 2, 0);
    const variance = varianceOf(slopes) + unread;
    const byLeaks = variance > 0 ? (varianceOf(ofLeaks) + unread) / variance : 0;
    return { deviation: Math.hypot(Math.sqrt(variance), OF_MODEL * model.wander * gained), byLeaks };
  };

  function varianceOf(slopes: Float64Array): number {
    const answer = seen(judged.fit.narrowed, slopes);
    return Math.max(covariance(priors, answer, answer), 0);
  }

  /** How the hood's air changes with each unknown; and with leaks of gates in a state in which nobody read, of which no unknown tells. */
  function slopesOf(solved: Solved): { readonly known: Float64Array; readonly unread: ReadonlyMap<string, number> } {
    const by = airflowBy(solved, fan, place);
    const known = new Float64Array(model.unknowns.length);
    const there = inputsThere(model.unknowns, solved.network);
    for (const { place: unknown, input } of there) known[unknown]! += by(input);
    const told = new Set(there.flatMap(({ input: { kind, run } }) => (kind === "leak" ? [run] : [])));
    const unread = inputsOfSolved(solved).filter(({ kind, run }) => kind === "leak" && !told.has(run));
    return {
      known,
      unread: new Map(unread.map((input) => [`${input.run} ${solved.network.runs[input.run]!.gate}`, by(input)])),
    };
  }
}
