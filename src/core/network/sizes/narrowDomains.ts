import { type Judging, MET } from "./judging";
import type { SizeNeed } from "./sizeTask";

/** Which choices each run may still take, by their places, the narrowest first. */
export type Domains = readonly (readonly number[])[];

/** What stays of the domains, or the need that nothing in them can meet. */
type Narrowed = { readonly domains: Domains } | { readonly blocked: SizeNeed | null };

/**
 * Takes out of the domains what cannot be part of an answer: sizes with which some need is missed whatever the others do,
 * and those narrower than a run that joins there. The need that blocked last is asked first, since mostly it blocks again.
 *
 * @param judging solves choices of the task
 * @returns what narrows domains, stopping with what it has after so many runs solved: the domains, none of them empty; or what
 *   stands against an answer, null where it is the rule of widths
 * @source house
 */
export function narrowing(judging: Judging): (given: Domains, until: number) => Generator<void, Narrowed> {
  const { task, most } = judging;
  const asked = [...task.needs];
  return function* (given, until) {
    const domains = given.map((places) => [...places]);
    const low = domains.map((places) => places[0]!);
    const high = domains.map((places) => places.at(-1)!);
    const keep = (run: number, kept: number[]): boolean => {
      if (kept.length === domains[run]!.length) return false;
      domains[run] = kept;
      if (kept.length > 0) [low[run], high[run]] = [kept[0]!, kept.at(-1)!];
      return true;
    };
    const blockedBy = (need: SizeNeed): Narrowed => {
      asked.splice(asked.indexOf(need), 1);
      asked.unshift(need);
      return { blocked: need };
    };
    for (let changed = true; changed;) {
      changed = grow(judging, domains, keep);
      if (domains.some((places) => places.length === 0)) return { blocked: null };
      for (const need of asked) {
        if (judging.work() >= until) return { domains };
        yield;
        if (need.kind === "airflow") {
          if (most(need, low, high, null) < MET) return blockedBy(need);
          continue;
        }
        const kept = domains[need.run]!.filter((own) => most(need, low, high, own) >= MET);
        if (kept.length === 0) return blockedBy(need);
        changed = keep(need.run, kept) || changed;
      }
      if (changed) continue;
      for (const need of asked) {
        if (need.kind !== "airflow") continue;
        for (const run of wayOf(judging, need.run)) {
          if (judging.work() >= until) return { domains };
          yield;
          changed = keep(run, wideEnough(judging, need, run, domains, low, high)) || changed;
        }
      }
    }
    return { domains };
  };
}

/** From the narrow end: what is too narrow on a hood's way for its air, all else at its best. */
function wideEnough(
  { most }: Judging,
  need: SizeNeed,
  run: number,
  domains: Domains,
  low: readonly number[],
  high: readonly number[],
): number[] {
  const places = domains[run]!;
  let first = 0;
  while (first < places.length - 1) {
    const at = high.map((widest, other) => (other === run ? places[first]! : widest));
    if (most(need, low, at, null) >= MET) break;
    first++;
  }
  return places.slice(first);
}

function wayOf({ task }: Judging, run: number): number[] {
  const { joins } = task.scenarios[0]!.network;
  const way: number[] = [];
  for (let index = run; index >= 0; index = joins[index]!) way.push(index);
  return way;
}

/** No run narrower than one that joins it: what breaks that with every size of the other goes. */
function grow({ task }: Judging, domains: Domains, keep: (run: number, kept: number[]) => boolean): boolean {
  const { joins, order } = task.scenarios[0]!.network;
  const width = (run: number, place: number): number => task.choices[run]![place]!.diameter;
  let changed = false;
  for (const run of order) {
    const to = joins[run]!;
    if (to < 0 || task.keeps[run] || task.keeps[to]) continue;
    if (domains[run]!.length === 0 || domains[to]!.length === 0) return changed;
    const [least, greatest] = [width(run, domains[run]![0]!), width(to, domains[to]!.at(-1)!)];
    changed = keep(to, domains[to]!.filter((place) => width(to, place) >= least)) || changed; // prettier-ignore
    changed = keep(run, domains[run]!.filter((place) => width(run, place) <= greatest)) || changed; // prettier-ignore
  }
  return changed;
}
