import fc from "fast-check";
import { fanCurve } from "../../../../src/core/fan/fanCurve";
import type { SizeTask } from "../../../../src/core/network/sizes/sizeTask";
import { drawnTask } from "./drawnTasks";
import { plantedTask } from "./plantedTasks";
import { byTryingAll, run, SIZES, small } from "./tryingAll";

test("with a greatest velocity, which makes some of them dearer and leaves none of others, it is the cheapest of all combinations", () => {
  const seen = { dearer: 0, impossible: 0, same: 0 };
  for (let seed = 1; seed <= 60; seed++) {
    const task = small(seed, 20 + 3 * (seed % 7));
    const { status, judged } = run(task);
    const cheapest = byTryingAll(task);
    expect([seed, status]).toEqual([seed, cheapest === Infinity ? "impossible" : "best"]);
    if (status === "best") expect(judged.cost).toBeCloseTo(cheapest, 9);
    const without = byTryingAll(small(seed));
    if (without === Infinity) continue;
    seen[status === "impossible" ? "impossible" : cheapest > without ? "dearer" : "same"]++;
  }
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(2); // or it was hardly asked for
});

test("a longer list of sizes never makes it dearer, and a weaker need never costs more", () => {
  const costOf = (task: SizeTask): number => {
    const { status, judged } = run(task);
    return status === "impossible" ? Infinity : judged.cost;
  };
  fc.assert(
    fc.property(fc.integer({ min: 1000, max: 9999 }), fc.integer({ min: 2, max: 4 }), (seed, count) => {
      const cost = costOf(drawnTask(seed, count, SIZES.slice(1, 4), 0.8));
      expect(costOf(drawnTask(seed, count, SIZES, 0.8))).toBeLessThanOrEqual(cost * (1 + 1e-9));
      expect(costOf(drawnTask(seed, count, SIZES.slice(1, 4), 0.7))).toBeLessThanOrEqual(cost * (1 + 1e-9));
      const [quiet, loud] = [18, 24].map((fastest) => costOf(drawnTask(seed, count, SIZES.slice(1, 4), 0.8, fastest)));
      expect(loud).toBeLessThanOrEqual(quiet! * (1 + 1e-9));
      expect(cost).toBeLessThanOrEqual(loud! * (1 + 1e-9));
    }),
    { numRuns: 40, seed: 7 },
  );
});

test("stopped early it promises nothing: what it has is not called best, and no answer costs less than it says", () => {
  for (const seed of [3, 7, 11, 15, 19, 23]) {
    const task = small(seed);
    const full = run(task);
    const early = run(task, 60);
    expect(["found", "missed", "impossible"]).toContain(early.status);
    if (full.status === "best") {
      expect(early.status).not.toBe("impossible");
      expect(early.atLeast).toBeLessThanOrEqual(full.judged.cost * (1 + 1e-9));
    }
  }
});

test("of fifteen runs that sizes known beforehand serve it calls none impossible, and its bound is no more than they cost", () => {
  for (const seed of [1, 2, 3]) {
    const { task, cost } = plantedTask(seed, 15, 8);
    const { status, atLeast, judged } = run(task, 30_000);
    expect(status).not.toBe("impossible");
    expect(atLeast).toBeGreaterThan(0);
    expect(atLeast).toBeLessThanOrEqual(cost * (1 + 1e-9));
    if (status === "found") expect(atLeast).toBeLessThanOrEqual(judged.cost);
    if (status === "best") expect(judged.cost).toBeLessThanOrEqual(cost * (1 + 1e-9));
  }
});

test("the same task has the same answer", () => {
  const [one, other] = [run(small(6)), run(small(6))];
  expect([one.taken, one.status, one.judging.work()]).toEqual([other.taken, other.status, other.judging.work()]);
});

test("on a curve that rises somewhere nothing is called proved, since the law of widths needs a falling one", () => {
  const humped = fanCurve([
    { airflow: 0, pressure: 2000 },
    { airflow: 0.2, pressure: 2200 },
    { airflow: 1.2, pressure: 0 },
  ]);
  for (const seed of [1, 2, 3, 4]) expect(["found", "missed"]).toContain(run({ ...small(seed), curve: humped }).status);
});
