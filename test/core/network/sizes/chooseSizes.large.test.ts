/** The search for sizes against all combinations, on many drawn trees: some seconds of solving one by one. */
import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { drawnTask } from "./drawnTasks";
import { all, byTryingAll, run, small } from "./tryingAll";

test("on 200 drawn trees of up to five runs it is the cheapest of all combinations, or there is none", () => {
  const seen = { best: 0, impossible: 0 };
  for (let seed = 1; seed <= 200; seed++) {
    const task = small(seed);
    const { status, judged } = run(task);
    const cheapest = byTryingAll(task);
    expect([seed, status]).toEqual([seed, cheapest === Infinity ? "impossible" : "best"]);
    if (status === "best") expect(judged.cost).toBeCloseTo(cheapest, 9);
    seen[status as "best" | "impossible"]++;
  }
  expect(Math.min(seen.best, seen.impossible)).toBeGreaterThan(20); // or only one of the two was tried
});

test("where no combination meets every need, it leads with the one that meets the worst of them best, also where the fan's curve ends early", () => {
  const points = [[0, 2500], [0.2, 2400], [0.3, 2230]].map(([airflow, pressure]) => ({ airflow: airflow!, pressure: pressure! })); // prettier-ignore
  let missed = 0;
  for (let seed = 1; seed <= 200; seed++) {
    const drawn = drawnTask(seed, 3 + (seed % 2), [0.075, 0.115, 0.15, 0.2], 1 + 0.3 * (seed % 5));
    const needs = drawn.needs.filter(({ scenario }) => scenario === 0); // all gates open
    const task = { ...drawn, scenarios: drawn.scenarios.slice(0, 1), needs, curve: fanCurve(points) };
    const most = Math.max(...all(task).map(({ share }) => share));
    if (most >= 1 - 1e-9) continue;
    expect([seed, run(task).judged.share]).toEqual([seed, expect.closeTo(most, 6)]);
    missed++;
  }
  expect(missed).toBeGreaterThan(20);
});
