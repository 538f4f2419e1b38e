import { type Judged, type Judging, MET } from "./judging";
import type { FoundSizes } from "./localSearch";
import { type Domains, narrowing } from "./narrowDomains";
import { growsToFan, type Taken } from "./sizeTask";

/** The cheapest choice that meets every need, as far as it was looked for. */
export interface BestSizes {
  readonly best: FoundSizes | null;
  readonly isProved: boolean; // that there is no better one, or none at all
  readonly atLeast: number; // no choice costs less
}

/** Choices that are still to be looked through. */
interface Part {
  readonly domains: Domains;
  readonly cost: number; // of the cheapest of them
}

/**
 * Looks through all choices of sizes, the cheapest first, leaving out those that cannot be the answer: where a need is missed
 * at its best, or where even the cheapest sizes left cost more than what was found. What is left is parted at a run that may
 * help the need that the cheapest choice misses.
 *
 * @param judging solves choices of the task
 * @param root the domains, narrowed
 * @param known a choice that meets every need, if one is known
 * @param until [-] runs solved at which it stops
 * @returns the best, and whether that is proved
 * @source house
 */
export function* branchAndBound(
  judging: Judging,
  root: Domains,
  known: FoundSizes | null,
  until: number,
): Generator<void, BestSizes> {
  const { task } = judging;
  const narrow = narrowing(judging);
  const costAt = (run: number, place: number): number => task.choices[run]![place]!.cost;
  const cheapestOf = (run: number, places: readonly number[]): number =>
    places.reduce((a, b) => (costAt(run, b) < costAt(run, a) ? b : a));
  const partOf = (domains: Domains): Part => ({
    domains,
    cost: domains.reduce((sum, places, run) => sum + costAt(run, cheapestOf(run, places)), 0),
  });
  const waiting: Part[] = []; // the cheapest last
  const wait = (part: Part): void => {
    let [from, to] = [0, waiting.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if (waiting[middle]!.cost > part.cost) from = middle + 1;
      else to = middle;
    }
    waiting.splice(from, 0, part);
  };
  let best = known;
  const isDearer = ({ cost }: Part): boolean => best !== null && cost >= best.judged.cost * (1 - 1e-12);

  wait(partOf(root));
  for (let part = waiting.pop(); part !== undefined && !isDearer(part); part = waiting.pop()) {
    if (judging.work() >= until) return { best, isProved: false, atLeast: part.cost };
    const left = yield* narrow(part.domains, until);
    if ("blocked" in left) continue;
    const narrowed = partOf(left.domains);
    if (narrowed.cost > part.cost * (1 + 1e-12)) {
      wait(narrowed);
      continue;
    }
    yield;
    const { domains } = narrowed;
    const taken = domains.map((places, run) => cheapestOf(run, places));
    const judged = growsToFan(task, taken) ? judging.judge(taken, MET) : null;
    if (judged !== null && judged.share >= MET) {
      best = { taken, judged };
      continue; // nothing in these domains is cheaper
    }
    const run = runToPart(judging, domains, taken, judged);
    if (run === undefined) continue;
    const places = domains[run]!;
    const middle = Math.min(places.indexOf(taken[run]!), places.length - 2);
    for (const half of [places.slice(0, middle + 1), places.slice(middle + 1)])
      wait(partOf(domains.map((all, other) => (other === run ? half : all))));
  }
  return { best, isProved: true, atLeast: best?.judged.cost ?? Infinity };
}

/** Of the runs that may help the need which the cheapest choice misses, the one that gives it most for its price. */
function runToPart(judging: Judging, domains: Domains, taken: Taken, judged: Judged | null): number | undefined {
  const { task, helps, most } = judging;
  const open = domains.flatMap(({ length }, run) => (length > 1 ? [run] : []));
  if (judged === null) return open[0]; // it breaks the rule of widths
  const costAt = (run: number, place: number): number => task.choices[run]![place]!.cost;
  const worth = (run: number): number => {
    const wider = domains[run]!.find((place) => place > taken[run]!);
    if (wider === undefined || !helps(judged.need, run)) return 0;
    const next = taken.map((place, other) => (other === run ? wider : place));
    const gain = most(judged.need, next, next, null) - judged.share;
    return gain / Math.max(Number.EPSILON, costAt(run, wider) - costAt(run, taken[run]!));
  };
  const worths = open.map((run) => [worth(run), run] as const);
  return worths.reduce<(typeof worths)[number] | undefined>((a, b) => (a === undefined || b[0] > a[0] ? b : a), undefined)?.[1]; // prettier-ignore
}
