import { sectionArea } from "../../section/section";
import type { SizeTask, Taken } from "./sizeTask";

/**
 * Sizes by velocity alone: each run the widest in which the least air that any scenario asks of it still moves its dust.
 *
 * @param task what may be chosen
 * @param faster [-] how much faster than that the air should be
 * @returns a choice in which widths grow towards the fan
 * @source commonPractice
 */
export function firstGuess(task: SizeTask, faster: number): Taken {
  const { scenarios, choices, needs, keeps } = task;
  const { joins, order } = scenarios[0]!.network;
  const least = choices.map(() => Infinity);
  const velocity = choices.map(() => 0);
  for (const place of scenarios.keys()) {
    const airflow = choices.map(() => 0);
    for (const { scenario, run, kind, wanted } of needs) {
      if (scenario !== place) continue;
      if (kind === "velocity") velocity[run] = Math.max(velocity[run]!, wanted);
      else if (kind === "airflow") for (let index = run; index >= 0; index = joins[index]!) airflow[index]! += wanted;
    }
    airflow.forEach((sum, run) => {
      if (sum > 0) least[run] = Math.min(least[run]!, sum);
    });
  }
  const taken = choices.map((ofRun, run) =>
    Math.max(
      0,
      ofRun.filter(({ diameter }) => sectionArea(diameter, null) * velocity[run]! * faster <= least[run]!).length - 1,
    ),
  );
  for (const run of order) {
    const to = joins[run]!;
    if (to < 0 || keeps[run] || keeps[to]) continue;
    const wide = choices[run]![taken[run]!]!.diameter;
    const fits = choices[to]!.findIndex(({ diameter }) => diameter >= wide);
    taken[to] = Math.max(taken[to]!, fits < 0 ? choices[to]!.length - 1 : fits);
  }
  return taken;
}
