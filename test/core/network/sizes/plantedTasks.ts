import { fanCurve } from "../../../../src/core/fan/fanCurve";
import type { Run } from "../../../../src/core/network/network";
import { needsOf } from "../../../../src/core/network/sizes/needsOf";
import type { SizedScenario, SizeTask } from "../../../../src/core/network/sizes/sizeTask";
import { solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../../src/core/network/tree";
import { AIR, makeRun } from "../../../support/runs";
import { drawing } from "./drawnTasks";

const SIZES = [3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12].map((inches) => inches * 0.0254);
const WIDEST = 9; // place of 10 in
const SPARE = 0.9; // of what the planted sizes give is asked for

/** A fan whose pressure falls all the way. Invented. */
const FAN = fanCurve([
  { airflow: 0, pressure: 3500 },
  { airflow: 0.3, pressure: 3300 },
  { airflow: 0.8, pressure: 2200 },
  { airflow: 1.3, pressure: 0 },
]);

/**
 * A tree of runs and sets of one to three open gates, asked for nine tenths of what sizes known beforehand give: so it can be
 * met, at their cost or less.
 */
export function plantedTask(
  seed: number,
  count: number,
  sets: number,
): { readonly task: SizeTask; readonly cost: number } {
  const between = drawing(seed);
  const whole = (low: number, high: number): number => Math.floor(between(low, high));
  const joins = Array.from({ length: count }, (_, run) => (run === 0 ? -1 : whole(run / 4, run)));
  const isEnd = joins.map((_, run) => !joins.includes(run));
  const planted = joins.map(() => 0);
  for (let run = count - 1; run >= 0; run--) {
    if (isEnd[run]) planted[run] = whole(1, 4);
    const to = joins[run]!;
    if (to >= 0) planted[to] = Math.min(WIDEST, Math.max(planted[to]!, planted[run]! + (between(0, 1) < 0.35 ? 1 : 0)));
  }
  const drawn = joins.map((to, run) =>
    makeRun(`r${run}`, to < 0 ? "fan" : `r${to}`, {
      ...{ length: between(1, 4), hoseLength: isEnd[run] ? between(0, 1) : 0 },
      ...{ coefficient: between(0, 0.5), roughness: 1.5e-4, leakArea: between(0, 1) < 0.5 ? 0 : between(0, 1e-4) },
      hood: isEnd[run] ? between(0.2, 1) : null,
    }),
  );
  const ends = joins.flatMap((_, run) => (isEnd[run] ? [run] : []));
  const open = Array.from({ length: sets }, () => Array.from({ length: whole(1, 4) }, () => ends[whole(0, ends.length)]!)); // prettier-ignore
  const scenariosFor = (wanted: readonly number[]): SizedScenario[] =>
    open.map((gates) => {
      const runs = drawn.map((run, index): Run => ({
        ...run,
        wantedAirflow: wanted[index]!,
        gate: isEnd[index] ? (gates.includes(index) ? "open" : "shut") : "none",
      })); // prettier-ignore
      return { network: buildNetwork(runs), runs: runs.map((run) => SIZES.map((diameter) => ({ ...run, diameter }))) };
    });
  const [air, speed] = [joins.map(() => Infinity), joins.map(() => Infinity)];
  const trial = scenariosFor(joins.map((_, run) => (isEnd[run] ? 1 : 0)));
  trial.forEach(({ network, runs }, place) => {
    const now = runs.map((sizes, run) => sizes[planted[run]!]!);
    const { airflow, leak } = solveNetwork({ ...network, runs: now }, FAN, AIR);
    for (const { run, kind } of needsOf(
      network,
      place,
      joins.map(() => 1),
      1,
    )) {
      const [of, has] = kind === "airflow" ? [air, airflow[run]! - leak[run]!] : [speed, airflow[run]! / (Math.PI / 4) / now[run]!.diameter ** 2]; // prettier-ignore
      of[run] = Math.min(of[run]!, has);
    }
  });
  const asked = (least: readonly number[]): number[] => least.map((one) => (one === Infinity ? 0 : SPARE * one));
  const scenarios = scenariosFor(asked(air));
  const choices = drawn.map(({ length, hoseLength }) =>
    SIZES.map((diameter) => ({ diameter, cost: (length + hoseLength) * diameter })),
  );
  const task: SizeTask = {
    ...{ scenarios, curve: FAN, surroundings: AIR, choices },
    keeps: drawn.map(() => false),
    needs: scenarios.flatMap(({ network }, place) => needsOf(network, place, asked(speed), 1)),
  };
  return { task, cost: choices.reduce((sum, ofRun, run) => sum + ofRun[planted[run]!]!.cost, 0) };
}
