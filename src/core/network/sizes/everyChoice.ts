import { type Judging, MET } from "./judging";
import { better, type FoundSizes } from "./localSearch";
import { growsToFan } from "./sizeTask";

/** More choices than this are not all looked at. */
const MOST_CHOICES = 3000;

/**
 * Looks at every choice of sizes where they are few: a search from neighbour to neighbour may stop short where the sizes that
 * one can buy lie far apart.
 *
 * @param judging solves choices of the task
 * @param found the best so far
 * @param until [-] runs solved at which it stops
 * @returns the best of all; the one so far where there are too many
 * @source house
 */
export function* everyChoice(judging: Judging, found: FoundSizes, until: number): Generator<void, FoundSizes> {
  const { task } = judging;
  const count = task.choices.reduce((product, { length }) => product * length, 1);
  if (count > MOST_CHOICES) return found;
  let best = found;
  for (let number = 0; number < count && judging.work() < until; number++) {
    let rest = number;
    const taken = task.choices.map(({ length }) => {
      const place = rest % length;
      rest = (rest - place) / length;
      return place;
    });
    if (!growsToFan(task, taken)) continue;
    const judged = judging.judge(taken, Math.min(MET, best.judged.share) - 1e-9);
    if (better(judged, best.judged)) best = { taken, judged };
    yield;
  }
  return best;
}
