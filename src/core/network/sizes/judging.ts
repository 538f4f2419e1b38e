import { OutsideCurveError } from "../../fan/fanCurve";
import { sectionArea } from "../../section/section";
import { solveNetwork } from "../solve/solveNetwork";
import { costOf, shareOf, type SizeNeed, type SizeTask, type Taken } from "./sizeTask";

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

/** What the needs of a scenario have, in their order. */
interface Has {
  readonly ofNeed: Float64Array; // [m3/s] or [m/s]
  readonly fanAirflow: number; // [m3/s]
}

/** Solves choices of sizes and counts what that takes. */
export interface Judging {
  readonly task: SizeTask;
  readonly judge: (taken: Taken, enough?: number) => Judged;
  readonly flows: (scenario: number, taken: Taken) => Flows | null;
  readonly most: (need: SizeNeed, low: Taken, high: Taken, own: number | null) => number;
  readonly helps: (need: SizeNeed, run: number) => boolean; // whether a wider run may meet the need better
  readonly work: () => number; // runs solved so far
  readonly leftCurve: () => boolean; // whether a choice that was judged has no answer, as where the fan's curve ends
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
 * narrowest elsewhere give the most that a need can get (`most`), whatever the sizes between; and the other way round the least
 * air of a run, which bounds how slow it can be in a size of its own. Its velocity is judged in that very size only: it goes by
 * no law with the run's own size.
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
  const placeOf = new Map(ofScenario.flatMap((list) => list.map((need, place) => [need, place] as const)));
  // the scenario that was met worst last comes first: a choice that is no better mostly shows it there
  const order = [...scenarios.keys()].filter((place) => ofScenario[place]!.length > 0);
  const last: (Flows | undefined)[] = scenarios.map(() => undefined);
  const known = new Map<string, Has | null>();
  let work = 0;
  let left = false;

  const flows = (scenario: number, taken: Taken): Flows | null => {
    const { network, runs } = scenarios[scenario]!;
    work += taken.length;
    try {
      const chosen = runs.map((ofRun, run) => ofRun[taken[run]!]!);
      const solution = solveNetwork({ ...network, runs: chosen }, task.curve, task.surroundings, last[scenario]);
      if (solution.status !== "converged") return null;
      return (last[scenario] = solution);
    } catch (error) {
      if (error instanceof OutsideCurveError) return null;
      throw error;
    }
  };
  const areaOf = (run: number, taken: Taken): number => sectionArea(choices[run]![taken[run]!]!.diameter, null);
  /** What the needs of a scenario have; what was solved before is not solved again. */
  const has = (scenario: number, taken: Taken): Has | null => {
    const key = String.fromCharCode(scenario, ...taken);
    const before = known.get(key);
    if (before !== undefined) {
      work++;
      return before;
    }
    const found = flows(scenario, taken);
    const values = found && {
      ofNeed: Float64Array.from(ofScenario[scenario]!, ({ kind, run }) =>
        kind === "airflow" ? found.airflow[run]! - found.leak[run]! : found.airflow[run]! / areaOf(run, taken),
      ),
      fanAirflow: found.fanAirflow,
    };
    known.set(key, values);
    return values;
  };

  const judge = (taken: Taken, enough = -Infinity): Judged => {
    let [share, need] = [Infinity, needs[0]!];
    for (const scenario of order) {
      const found = has(scenario, taken);
      left ||= found === null;
      ofScenario[scenario]!.forEach((one, place) => {
        const met = found === null ? 0 : shareOf(one, found.ofNeed[place]!);
        if (met < share) [share, need] = [met, one];
      });
      if (share < enough) break;
    }
    order.splice(order.indexOf(need.scenario), 1);
    order.unshift(need.scenario);
    return { share, need, cost: costOf(task, taken) };
  };

  /** Whether a wider run may give the need's run or hood more air. */
  const feeds = (need: SizeNeed, run: number): boolean =>
    wayOf[need.run]!.has(run) || (need.kind !== "airflow" && wayOf[run]!.has(need.run));
  const helps = (need: SizeNeed, run: number): boolean =>
    need.kind === "not faster" ? run === need.run || !feeds(need, run) : feeds(need, run);
  const most: Judging["most"] = (need, low, high, own) => {
    const isLeast = need.kind === "not faster";
    const taken = low.map((narrow, run) =>
      run === need.run && own !== null ? own : feeds(need, run) === isLeast ? narrow : high[run]!,
    );
    const found = has(need.scenario, taken);
    if (found === null) return Infinity; // nothing is known of it, so nothing is ruled out
    const slack = (SLACK * found.fanAirflow) / (need.kind === "airflow" ? 1 : areaOf(need.run, taken));
    return shareOf(need, found.ofNeed[placeOf.get(need)!]! + (isLeast ? -slack : slack));
  };

  return { task, judge, flows, most, helps, work: () => work, leftCurve: () => left };
}
