import { finished } from "./finished";
import { firstGuess } from "./firstGuess";
import { judging, MET } from "./judging";
import { better, type FoundSizes, localSearch } from "./localSearch";
import type { SizeTask, Taken } from "./sizeTask";

/** Scenarios, one or two, for which no sizes were found that meet their needs. */
export interface Clash {
  readonly scenarios: readonly number[];
  readonly share: number; // [-] of what is wanted, at the need that is met worst, as well as was found
}

/** Those that were found, the worst first, and whether all were tried. */
export interface Clashes {
  readonly clashes: readonly Clash[];
  readonly isWhole: boolean;
}

/** Sizes by velocity from which each is searched. */
const STARTS = [1, 1.2, 1.5];

/**
 * Which scenarios no sizes were found to serve: each alone, then two of those that can be had alone. A local search, so nothing
 * is proved.
 *
 * @param task what may be chosen and what it must do
 * @param starts choices to begin with
 * @param most [-] runs solved at which it stops: what was not tried by then is not among them
 * @returns them
 * @source house
 */
export function clashes(task: SizeTask, starts: readonly Taken[], most: number): Clashes {
  const pool = [...starts, ...STARTS.map((faster) => firstGuess(task, faster))];
  const places = [...task.scenarios.keys()].filter((place) => task.needs.some(({ scenario }) => scenario === place));
  let work = 0;
  // none where they were met, or not searched for to the end
  const missed = (...scenarios: readonly number[]): Clash[] => {
    if (work >= most) return [];
    const judge = judging({ ...task, needs: task.needs.filter(({ scenario }) => scenarios.includes(scenario)) });
    let best: FoundSizes | null = null;
    for (const taken of pool) {
      const judged = judge.judge(taken);
      if (best === null || better(judged, best.judged)) best = { taken, judged };
      if (judged.share >= MET) break;
    }
    for (const start of best!.judged.share >= MET ? [] : [best!.taken, ...pool.slice(-STARTS.length)]) {
      const found = finished(localSearch(judge, start, most - work, true));
      if (better(found.judged, best!.judged)) best = found;
      if (best!.judged.share >= MET) break;
    }
    work += judge.work();
    if (best!.judged.share >= MET) pool.unshift(best!.taken);
    return best!.judged.share >= MET || work >= most ? [] : [{ scenarios, share: best!.judged.share }];
  };
  const alone = places.flatMap((place) => missed(place));
  const can = places.filter((place) => !alone.some(({ scenarios }) => scenarios[0] === place));
  const pairs = can.flatMap((one, index) => can.slice(index + 1).flatMap((other) => missed(one, other)));
  return { clashes: [...alone.sort(worseFirst), ...pairs.sort(worseFirst)], isWhole: work < most };
}

const worseFirst = (a: Clash, b: Clash): number => a.share - b.share;
