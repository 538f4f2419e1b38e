import { finished } from "./finished";
import { judging, MET } from "./judging";
import { better, type FoundSizes, localSearch } from "./localSearch";
import type { SizedScenario, SizeTask, Taken } from "./sizeTask";

/** A gate that is left open in a scenario though nothing is asked of its hood, so that the air in the ducts is faster. */
export interface LeftOpen {
  readonly scenario: number;
  readonly gate: number; // its run
}

/** What leaving gates open frees: sizes of their own, with which the worst need is met better. */
export interface Bleeds {
  readonly left: readonly LeftOpen[];
  readonly found: FoundSizes;
}

/**
 * Leaves one gate more open in scenarios whose air is too slow, and searches sizes for that. A local search, so nothing is proved.
 *
 * @param task what may be chosen and what it must do
 * @param taken the best sizes that were found without
 * @param gates runs of hoods that have one
 * @param withOpen a scenario with one gate more open
 * @param most [-] runs solved at which it stops
 * @returns the gates without which it would be worse, and the sizes; null where none helps
 * @source house
 */
export function bleeds(
  task: SizeTask,
  taken: Taken,
  gates: readonly number[],
  withOpen: (scenario: number, gate: number) => SizedScenario,
  most: number,
): Bleeds | null {
  let work = 0;
  const spent = <Found>(judge: ReturnType<typeof judging>, found: Found): Found => {
    work += judge.work();
    return found;
  };
  /** How one scenario does with some sizes, as it is or with a gate left open. */
  const alone = (place: number, sizes: Taken, scenario: SizedScenario): number => {
    const needs = task.needs.filter((need) => need.scenario === place);
    if (needs.length === 0) return Infinity;
    const judge = judging({
      ...task,
      scenarios: task.scenarios.map((one, other) => (other === place ? scenario : one)),
      needs,
    });
    return spent(judge, judge.judge(sizes)).share;
  };
  const first = judging(task);
  const before: FoundSizes = { taken, judged: spent(first, first.judge(taken)) };
  let now = before;
  let left: LeftOpen[] = [];
  const scenarios = [...task.scenarios];
  while (now.judged.share < MET && work < most) {
    const added: LeftOpen[] = [];
    for (const [place, scenario] of task.scenarios.entries()) {
      if (left.some((one) => one.scenario === place)) continue;
      const had = alone(place, now.taken, scenario);
      if (had >= MET) continue;
      let best = had;
      for (const gate of gates) {
        if (scenario.network.runs[gate]!.gate === "open") continue;
        const opened = withOpen(place, gate);
        const share = alone(place, now.taken, opened);
        if (share <= best) continue;
        best = share;
        scenarios[place] = opened;
        added.splice(added.findIndex((one) => one.scenario === place) >>> 0, 1, { scenario: place, gate });
      }
    }
    if (added.length === 0) break;
    const judge = judging({ ...task, scenarios });
    const found = spent(judge, finished(localSearch(judge, now.taken, most - work)));
    if (!better(found.judged, now.judged)) break;
    now = found;
    left = [...left, ...added];
  }
  // what would do as well with its gate shut is not asked for
  const needed = left.filter(({ scenario }) => alone(scenario, now.taken, task.scenarios[scenario]!) < Math.min(MET, now.judged.share)); // prettier-ignore
  return needed.length === 0 ? null : { left: needed, found: now };
}
