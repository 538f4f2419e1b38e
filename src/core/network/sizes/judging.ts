import { OutsideCurveError } from "../../fan/fanCurve";
import { sectionArea } from "../../section/section";
import { solveNetwork } from "../solve/solveNetwork";
import { costOf, type SizeNeed, type SizeTask, type Taken } from "./sizeTask";

/** How well a choice of sizes does. */
export interface Judged {
  readonly share: number; // [-] of what is wanted, at the need that is met worst; 0 where it has no answer
  readonly need: SizeNeed; // that one
  readonly cost: number;
}

/** What flows in a scenario. */
interface Flows {
  readonly airflow: Float64Array; // [m3/s]
  readonly leak: Float64Array; // [m3/s]
  readonly fanAirflow: number; // [m3/s]
}

/** Solves choices of sizes and counts what that takes. */
export interface Judging {
  readonly task: SizeTask;
  readonly judge: (taken: Taken, enough?: number) => Judged;
  readonly flows: (scenario: number, taken: Taken) => Flows | null;
  readonly most: (need: SizeNeed, low: Taken, high: Taken, own: number | null) => number;
  readonly work: () => number; // runs solved so far
}

/** A need met to this share is met: a solver's last digits say nothing. */
export const MET = 1 - 1e-9;

/**
 * Share of the fan's air by which the law of widths may fail: a leak also feels the velocity beside it, which a wider duct
 * lowers. The largest breach in thousands of drawn trees is a seventh of it.
 */
export const SLACK = 1e-4;

/**
 * Judges choices of sizes by solving each scenario.
 *
 * A wider run on a hood's way to the fan never lowers that hood's air where the fan's curve falls, and a wider one elsewhere
 * never raises it; the air of a run likewise goes with the widths on its way and upstream of it. So the widest there and the
 * narrowest elsewhere give the most that a need can get (`most`), whatever the sizes between.
 *
 * @returns the judge of this task, which counts its solves
 * @source house law, held by tests on drawn trees
 */
export function judging(task: SizeTask): Judging {
  const { scenarios, needs, choices } = task;
  const { joins } = scenarios[0]!.network;
  const wayOf = joins.map((_, run) => {
    const way = new Set<number>();
    for (let index = run; index >= 0; index = joins[index]!) way.add(index);
    return way;
  });
  const ofScenario = scenarios.map((_, place) => needs.filter(({ scenario }) => scenario === place));
  // the scenario that was met worst last comes first: a choice that is no better mostly shows it there
  const order = [...scenarios.keys()].filter((place) => ofScenario[place]!.length > 0);
  let work = 0;

  const flows = (scenario: number, taken: Taken): Flows | null => {
    const { network, runs } = scenarios[scenario]!;
    work += taken.length;
    try {
      const chosen = runs.map((ofRun, run) => ofRun[taken[run]!]!);
      const solution = solveNetwork({ ...network, runs: chosen }, task.curve, task.surroundings);
      return solution.status === "converged" ? solution : null;
    } catch (error) {
      if (error instanceof OutsideCurveError) return null;
      throw error;
    }
  };
  const areaOf = (run: number, taken: Taken): number => sectionArea(choices[run]![taken[run]!]!.diameter, null);
  const value = ({ kind, run }: SizeNeed, { airflow, leak }: Flows, taken: Taken): number =>
    kind === "airflow" ? airflow[run]! - leak[run]! : airflow[run]! / areaOf(run, taken);

  const judge = (taken: Taken, enough = -Infinity): Judged => {
    let [share, need] = [Infinity, needs[0]!];
    for (const scenario of order) {
      const found = flows(scenario, taken);
      for (const one of ofScenario[scenario]!) {
        const met = found === null ? 0 : value(one, found, taken) / one.wanted;
        if (met < share) [share, need] = [met, one];
      }
      if (share < enough) break;
    }
    order.splice(order.indexOf(need.scenario), 1);
    order.unshift(need.scenario);
    return { share, need, cost: costOf(task, taken) };
  };

  const most: Judging["most"] = (need, low, high, own) => {
    const helps = (run: number): boolean =>
      wayOf[need.run]!.has(run) || (need.kind === "velocity" && wayOf[run]!.has(need.run));
    const taken = low.map((narrow, run) => (run === need.run && own !== null ? own : helps(run) ? high[run]! : narrow));
    const found = flows(need.scenario, taken);
    if (found === null) return Infinity; // nothing is known of it, so nothing is ruled out
    const slack = (SLACK * found.fanAirflow) / (need.kind === "airflow" ? 1 : areaOf(need.run, taken));
    return (value(need, found, taken) + slack) / need.wanted;
  };

  return { task, judge, flows, most, work: () => work };
}
