import { type Judging, MET } from "./judging";
import type { FoundSizes } from "./localSearch";
import { type Domains, narrowDomains } from "./narrowDomains";
import { growsToFan, type SizeNeed } from "./sizeTask";

/** The cheapest choice that meets every need, as far as it was looked for. */
export interface BestSizes {
  readonly best: FoundSizes | null;
  readonly isProved: boolean; // that there is no better one, or none at all
  readonly atLeast: number; // no choice costs less
  readonly blocked: SizeNeed | null; // what no sizes at all can meet
}

/**
 * Looks through all choices of sizes, leaving out those that cannot be the answer: where a need is missed at its best, or
 * where even the cheapest sizes left cost more than what was found.
 *
 * @param judging solves choices of the task
 * @param known a choice that meets every need, if one is known
 * @param until [-] runs solved at which it stops
 * @returns the best, and whether that is proved
 * @source house
 */
export function* branchAndBound(judging: Judging, known: FoundSizes | null, until: number): Generator<void, BestSizes> {
  const { task } = judging;
  let best = known;
  let isProved = true;
  const costs = (run: number, places: readonly number[]): number[] =>
    places.map((place) => task.choices[run]![place]!.cost);
  const cheapest = (domains: Domains): number =>
    domains.reduce((sum, places, run) => sum + Math.min(...costs(run, places)), 0);
  const spread = (run: number, places: readonly number[]): number =>
    Math.max(...costs(run, places)) - Math.min(...costs(run, places));
  const isDearer = (domains: Domains): boolean => best !== null && cheapest(domains) >= best.judged.cost * (1 - 1e-12);

  const visit = function* (domains: Domains): Generator<void, void> {
    if (isDearer(domains)) return;
    if (judging.work() >= until) {
      isProved = false;
      return;
    }
    const taken = domains.map((places, run) =>
      places.reduce((a, b) => (task.choices[run]![b]!.cost < task.choices[run]![a]!.cost ? b : a)),
    );
    yield;
    if (growsToFan(task, taken)) {
      const judged = judging.judge(taken, MET);
      if (judged.share >= MET) {
        best = { taken, judged };
        return; // nothing in these domains is cheaper
      }
    }
    const open = domains.flatMap(({ length }, run) => (length > 1 ? [run] : []));
    if (open.length === 0) return;
    const run = open.reduce((a, b) => (spread(b, domains[b]!) > spread(a, domains[a]!) ? b : a));
    for (const place of domains[run]!) {
      const next = domains.map((places, other) => (other === run ? [place] : places));
      if (isDearer(next)) continue;
      const left = yield* narrowDomains(judging, next, until);
      if ("domains" in left) yield* visit(left.domains);
    }
  };

  const all = task.choices.map((ofRun) => [...ofRun.keys()]);
  const root = yield* narrowDomains(judging, all, until);
  if ("blocked" in root) return { best: null, isProved: true, atLeast: Infinity, blocked: root.blocked };
  yield* visit(root.domains);
  const found = best;
  return {
    best: found,
    isProved,
    atLeast: isProved ? (found?.judged.cost ?? Infinity) : cheapest(root.domains),
    blocked: null,
  };
}
