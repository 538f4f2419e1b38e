import { hasRisingPart } from "../../fan/fanCurve";
import { branchAndBound } from "./branchAndBound";
import { firstGuess } from "./firstGuess";
import { type Judging, judging, MET } from "./judging";
import { better, type FoundSizes, localSearch } from "./localSearch";
import { meetingsOf } from "../junction/meeting";
import type { SizeNeed, SizeTask, Taken } from "./sizeTask";

/** The sizes that were chosen, and how sure it is that no others are better. */
export interface ChosenSizes extends FoundSizes {
  /** best: proved the cheapest that meets every need; found: meets them, not proved; impossible: proved that none does;
   * missed: none was found that does, not proved */
  readonly status: "best" | "found" | "impossible" | "missed";
  readonly atLeast: number; // no choice that meets every need costs less; infinite where there is none
  readonly blocked: SizeNeed | null; // a need that no sizes can meet, where it is known
  readonly judging: Judging;
}

/** How much faster than its dust needs the air is in the first guesses. */
const STARTS = [1, 1.2, 1.5];

/**
 * Chooses a diameter for every run, so that in each scenario each hood gets its air and no dust settles, at the least cost;
 * where none meets all that, so that the need that is met worst is met as well as was found.
 *
 * First a local search from sizes by velocity and from the present ones, then branch and bound. The proof rests on a law
 * of falling curves (see `judging`), so on a curve that rises somewhere nothing is proved; nor where a branch costs by the
 * airflows, since air that is faster in one duct may then draw more through another.
 *
 * @param task what may be chosen and what it must do
 * @param present the choice as it is, if it is one
 * @param most [-] runs solved at which it stops: a third of them for the local search
 * @returns the choice; the same for the same task. It yields between solves, so that a caller may stop or draw
 * @source house
 */
export function* chooseSizes(task: SizeTask, present: Taken | null, most: number): Generator<void, ChosenSizes> {
  const judge = judging(task);
  const starts = [...(present === null ? [] : [present]), ...STARTS.map((faster) => firstGuess(task, faster))];
  let found: FoundSizes | null = null;
  for (const [place, start] of starts.entries()) {
    const here: FoundSizes = yield* localSearch(judge, start, (most / 3) * ((place + 1) / starts.length));
    if (found === null || better(here.judged, found.judged)) found = here;
  }
  const best = found!;
  const meets = best.judged.share >= MET;
  const sure = { judging: judge, atLeast: 0, blocked: null };
  if (hasRisingPart(task.curve) || hasMeetings(task)) return { ...best, ...sure, status: meets ? "found" : "missed" };
  const proof = yield* branchAndBound(judge, meets ? best : null, most);
  const status = proof.best !== null ? (proof.isProved ? "best" : "found") : proof.isProved ? "impossible" : "missed";
  return { ...(proof.best ?? best), ...sure, status, atLeast: proof.atLeast, blocked: proof.blocked };
}

const hasMeetings = ({ scenarios }: SizeTask): boolean =>
  meetingsOf(scenarios[0]!.network, 1).some((one) => one !== null);
