import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { buildNetwork } from "../../../../src/core/network/tree";
import { needsOf } from "../../../../src/core/network/sizes/needsOf";
import type { SizeTask } from "../../../../src/core/network/sizes/sizeTask";
import { lots } from "../../../support/lots";
import { AIR, makeRun } from "../../../support/runs";

/** A fan whose pressure falls all the way. Invented. */
export const FALLING = fanCurve([
  { airflow: 0, pressure: 2500 },
  { airflow: 0.2, pressure: 2400 },
  { airflow: 0.5, pressure: 1700 },
  { airflow: 1.2, pressure: 0 },
]);

/** Draws a number between two, by a seed. */
export const drawing = (seed: number): ((low: number, high: number) => number) => {
  const draw = lots(seed);
  return (low, high) => low + (high - low) * draw();
};

/** A tree of a few runs with gates at its hoods, invented sizes and two sets of open gates; in all runs the air may be so fast [m/s] at most. */
export function drawnTask(
  seed: number,
  count: number,
  sizes: readonly number[],
  ease = 1,
  fastest = Infinity,
): SizeTask {
  const between = drawing(seed);
  const joins = Array.from({ length: count }, (_, run) => (run === 0 ? -1 : Math.floor(between(0, run))));
  const isEnd = joins.map((_, run) => !joins.includes(run));
  const drawn = joins.map((to, run) =>
    makeRun(`r${run}`, to < 0 ? "fan" : `r${to}`, {
      length: between(1, 10),
      hoseLength: isEnd[run] ? between(0, 2) : 0,
      coefficient: between(0, 1.5),
      roughness: 1.5e-4,
      leakArea: between(0, 1) < 0.5 ? 0 : between(0, 3e-4),
      hood: isEnd[run] ? between(0.2, 1.2) : null,
      wantedAirflow: isEnd[run] ? between(0.04, 0.16) : 0,
    }),
  );
  const ends = isEnd.flatMap((end, run) => (end ? [run] : []));
  const open = [new Set(ends), new Set(ends.filter((_, place) => place !== 0 || ends.length === 1))];
  const slowest = joins.map(() => between(6, 14));
  const scenarios = open.map((gates) => {
    const runs = drawn.map((run, index) => ({
      ...run,
      gate: isEnd[index] ? (gates.has(index) ? "open" : "shut") : "none",
    } as const)); // prettier-ignore
    const network = buildNetwork(runs);
    return { network, runs: runs.map((run) => sizes.map((diameter) => ({ ...run, diameter }))) };
  });
  return {
    ...{ scenarios, curve: FALLING, surroundings: AIR },
    choices: drawn.map(({ length, hoseLength }) =>
      sizes.map((diameter) => ({ diameter, cost: (length + hoseLength) * diameter })),
    ),
    keeps: drawn.map(() => false),
    needs: scenarios.flatMap(({ network }, place) =>
      needsOf(
        network,
        place,
        slowest,
        ease,
        drawn.map(() => fastest * ease),
      ),
    ),
  };
}
