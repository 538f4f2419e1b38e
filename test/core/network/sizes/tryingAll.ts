/** The search for sizes run to its end, and beside it every combination solved one by one, of trees that are small enough. */
import { type ChosenSizes, chooseSizes } from "../../../../src/core/network/sizes/chooseSizes";
import type { SizeTask } from "../../../../src/core/network/sizes/sizeTask";
import { solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { drawnTask } from "./drawnTasks";

const MUCH = 1e7;

export function run(task: SizeTask, most = MUCH): ChosenSizes {
  const steps = chooseSizes(task, null, most);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Every combination of sizes, each solved and held against the needs one by one: its cost and the share of the need that is met worst. */
export function all(task: SizeTask): { readonly cost: number; readonly share: number }[] {
  const { scenarios, choices, needs, curve, surroundings } = task;
  const { joins } = scenarios[0]!.network;
  const count = choices.reduce((product, { length }) => product * length, 1);
  return Array.from({ length: count }).flatMap((_, code) => {
    let rest = code;
    const taken = choices.map(({ length }) => {
      const place = rest % length;
      rest = Math.floor(rest / length);
      return place;
    });
    const width = (index: number): number => choices[index]![taken[index]!]!.diameter;
    if (joins.some((to, index) => to >= 0 && width(index) > width(to))) return [];
    const cost = taken.reduce((sum, place, index) => sum + choices[index]![place]!.cost, 0);
    const shares = scenarios.flatMap(({ network, runs }, scenario) => {
      const now = runs.map((sizes, index) => sizes[taken[index]!]!);
      let solution;
      try {
        solution = solveNetwork({ ...network, runs: now }, curve, surroundings);
      } catch {
        return [0]; // past the curve: no answer, so no choice
      }
      return needs.flatMap((need) => {
        if (need.scenario !== scenario) return [];
        const airflow = solution.airflow[need.run]!;
        const has = need.kind === "airflow" ? airflow - solution.leak[need.run]! : airflow / (Math.PI / 4) / width(need.run) ** 2; // prettier-ignore
        return [need.kind === "not faster" ? need.wanted / has : has / need.wanted];
      });
    });
    return [{ cost, share: Math.min(...shares) }];
  });
}

/** The cheapest cost that meets all; infinite where none does. */
export const byTryingAll = (task: SizeTask): number =>
  Math.min(...all(task).flatMap(({ cost, share }) => (share >= 1 - 1e-9 ? [cost] : [])));

export const SIZES = [0.08, 0.1, 0.125, 0.16, 0.2];

/** Trees of two to five runs, with fewer sizes where there are more runs, so that all can be tried. */
export const small = (seed: number, fastest = Infinity): SizeTask =>
  drawnTask(seed, 2 + (seed % 4), SIZES.slice(0, Math.max(3, 5 - (seed % 4))), 0.8 + 0.3 * (seed % 5), fastest);
