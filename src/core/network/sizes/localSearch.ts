import { type Judged, type Judging, MET } from "./judging";
import { costOf, growsToFan, type SizeChoice, type Taken } from "./sizeTask";

/** A choice of sizes and how it does. */
export interface FoundSizes {
  readonly taken: Taken;
  readonly judged: Judged;
}

/**
 * Whether the first is better: more of the worst need, up to all of it; then less cost.
 *
 * @returns true where it is
 * @source house
 */
export function better(one: Judged, other: Judged): boolean {
  const [a, b] = [Math.min(MET, one.share), Math.min(MET, other.share)];
  return a > b + 1e-9 || (Math.abs(a - b) <= 1e-9 && one.cost < other.cost * (1 - 1e-12));
}

/**
 * Goes from a choice to the best of its neighbours until none is better: one run by one or two sizes, with the others that the
 * rule of widths takes along; whole ways to the fan; then two runs by one size each.
 *
 * @param judging solves choices of the task
 * @param start where it begins
 * @param until [-] runs solved at which it stops
 * @param untilMet whether it stops as soon as every need is met, whatever that costs
 * @returns the last choice; the same for the same start
 * @source house
 */
export function* localSearch(
  judging: Judging,
  start: Taken,
  until: number,
  untilMet = false,
): Generator<void, FoundSizes> {
  let now: FoundSizes = { taken: start, judged: judging.judge(start) };
  for (;;) {
    let best: FoundSizes = now;
    for (const moves of neighbourhoods(judging, now.taken)) {
      for (const taken of moves) {
        const { share, cost } = best.judged;
        if (judging.work() >= until || (untilMet && share >= MET)) return best;
        if (share >= MET && costOf(judging.task, taken) >= cost) continue;
        const judged = judging.judge(taken, Math.min(MET, share) - 1e-9);
        if (better(judged, best.judged)) best = { taken, judged };
        yield;
        if (best !== now && share < MET) break;
      }
      if (best !== now) break;
    }
    if (best === now) return now;
    now = best;
  }
}

type Step = readonly [run: number, by: number];

/** The choices next to one, in the order in which they are tried. */
function neighbourhoods({ task }: Judging, taken: Taken): Iterable<Taken>[] {
  const { joins, order } = task.scenarios[0]!.network;
  const width = (run: number, at: Taken): number => task.choices[run]![at[run]!]!.diameter;
  const free = task.choices.flatMap(({ length }, run) => (length > 1 ? [run] : []));
  const moved = (steps: readonly Step[]): Taken[] => {
    const next = [...taken];
    for (const [run, by] of steps) {
      next[run] = next[run]! + by;
      if (task.choices[run]![next[run]] === undefined) return [];
    }
    return growsToFan(task, next) ? [next] : [];
  };
  /** One run in another size, and the others as the rule of widths then asks: wider to the fan of it, or narrower behind it. */
  const pushed = (run: number, by: number): Taken[] => {
    const next = [...taken];
    next[run] = next[run]! + by;
    if (task.choices[run]![next[run]] === undefined) return [];
    for (const one of by > 0 ? order : [...order].reverse()) {
      const to = joins[one]!;
      if (to < 0 || task.keeps[one] || task.keeps[to] || width(one, next) <= width(to, next)) continue;
      const [moves, limit] = by > 0 ? [to, width(one, next)] : [one, width(to, next)];
      const fits = ({ diameter }: SizeChoice): boolean => (by > 0 ? diameter >= limit : diameter <= limit);
      next[moves] = by > 0 ? task.choices[moves]!.findIndex(fits) : task.choices[moves]!.filter(fits).length - 1;
      if (next[moves] < 0) return [];
    }
    return [next];
  };
  const wayOf = (run: number): number[] => {
    const way: number[] = [];
    for (let index = run; index >= 0; index = joins[index]!) if (free.includes(index)) way.push(index);
    return way;
  };
  const single = function* (): Generator<Taken> {
    for (const run of free) for (const by of [-1, 1, -2, 2]) yield* pushed(run, by);
    for (const run of free) for (const by of [-1, 1]) yield* moved(wayOf(run).map((index): Step => [index, by]));
  };
  const pairs = function* (): Generator<Taken> {
    for (const one of free)
      for (const other of free)
        if (one < other)
          for (const [a, b] of [[-1, 1], [1, -1], [-1, -1], [1, 1]] as const) // prettier-ignore
            yield* moved([[one, a], [other, b]]); // prettier-ignore
  };
  return [single(), pairs()];
}
