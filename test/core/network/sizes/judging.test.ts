import { judging, SLACK } from "../../../../src/core/network/sizes/judging";
import type { SizeTask } from "../../../../src/core/network/sizes/sizeTask";
import { drawing, drawnTask } from "./drawnTasks";

/** A drawn task in two sizes, whose gates leak by their width, as a gap around a slide does. */
function withGaps(seed: number): SizeTask {
  const task = drawnTask(seed, 2 + (seed % 9), [0.12, 0.12 * drawing(-seed)(1.02, 1.5)]);
  const scenarios = task.scenarios.map(({ network, runs }) => ({
    network,
    runs: runs.map((sizes) => sizes.map((run) => ({ ...run, leakArea: (run.leakArea * run.diameter) / 0.12 }))),
  }));
  return { ...task, scenarios };
}

// The law on which the search leaves sizes out. It is no theorem where leaks feel the velocity beside them, hence the slack.
test("a wider run on its way never takes air from a hood or a run, and one elsewhere never gives it any", () => {
  let pairs = 0;
  let worst = 0;
  for (let seed = 1; seed <= 400; seed++) {
    const task = withGaps(seed);
    const { flows } = judging(task);
    const { joins, joining } = task.scenarios[0]!.network;
    const way = (from: number): Set<number> => {
      const runs = new Set<number>();
      for (let index = from; index >= 0; index = joins[index]!) runs.add(index);
      return runs;
    };
    const wider = Math.floor(drawing(seed)(0, joins.length));
    for (const scenario of [0, 1]) {
      const before = flows(scenario, joins.map(() => 0)); // prettier-ignore
      const after = flows(scenario, joins.map((_, run) => (run === wider ? 1 : 0))); // prettier-ignore
      if (before === null || after === null) continue;
      pairs++;
      const { runs } = task.scenarios[scenario]!.network;
      joins.forEach((_, run) => {
        const helps = way(run).has(wider);
        const isHood = joining[run]!.length === 0;
        if (isHood && runs[run]!.gate === "open") {
          const atHood = (of: typeof after): number => of.airflow[run]! - of.leak[run]!;
          const more = (atHood(after) - atHood(before)) / before.fanAirflow;
          worst = Math.max(worst, helps ? -more : more);
        }
        const more = (after.airflow[run]! - before.airflow[run]!) / before.fanAirflow;
        worst = Math.max(worst, helps || way(wider).has(run) ? -more : more);
      });
    }
  }
  expect(pairs).toBeGreaterThan(500);
  expect(worst).toBeLessThan(SLACK);
});

test("most is no less than what any choice between the narrowest and the widest gives a need", () => {
  for (let seed = 1; seed <= 40; seed++) {
    const task = drawnTask(seed, 2 + (seed % 5), [0.1, 0.125, 0.16], 1, 18);
    const { flows, most } = judging(task);
    const between = drawing(seed + 500);
    const [low, high] = [0, 2].map((place) => task.choices.map(() => place));
    const taken = task.choices.map(() => Math.floor(between(0, 3)));
    for (const need of task.needs) {
      const found = flows(need.scenario, taken);
      if (found === null) continue;
      const { diameter } = task.choices[need.run]![taken[need.run]!]!;
      const airflow = found.airflow[need.run]!;
      const has = need.kind === "airflow" ? airflow - found.leak[need.run]! : airflow / ((Math.PI / 4) * diameter ** 2);
      const own = need.kind === "airflow" ? null : taken[need.run]!;
      const share = need.kind === "not faster" ? need.wanted / has : has / need.wanted;
      expect(most(need, low!, high!, own)).toBeGreaterThanOrEqual(share);
    }
  }
});
