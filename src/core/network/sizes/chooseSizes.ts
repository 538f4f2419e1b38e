import { hasRisingPart } from "../../fan/fanCurve";
import { branchAndBound } from "./branchAndBound";
import { everyChoice } from "./everyChoice";
import { firstGuess } from "./firstGuess";
import { type Judged, type Judging, judging, MET } from "./judging";
import { better, type FoundSizes, localSearch } from "./localSearch";
import { narrowing } from "./narrowDomains";
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

/** How far a search is. */
export interface SearchedSoFar {
  readonly work: number; // runs solved
  readonly best: Judged | null; // of the choices that a finished part of the search has found
}

/** What a search is allowed, and who hears how far it is. */
export interface Patience {
  readonly most: number; // runs solved at which it stops
  readonly hear: (far: SearchedSoFar) => void;
}

/** How much faster than its dust needs the air is in the first guesses. */
const STARTS = [1, 1.2, 1.5];

/**
 * Chooses a diameter for every run, so that in each scenario each hood gets its air and no dust settles, at the least cost;
 * where none meets all that, so that the need that is met worst is met as well as was found.
 *
 * First a local search from sizes by velocity and from the present ones, and from the widest where those miss a need, then every choice where they are few; then branch and bound. The proof rests on a law
 * of falling curves (see `judging`), so on a curve that rises somewhere nothing is proved; nor where a branch costs by the
 * airflows, since air that is faster in one duct may then draw more through another.
 *
 * @param task what may be chosen and what it must do
 * @param present the choice as it is, if it is one
 * @param most [-] runs solved at which it stops: a third of them for the local search
 * @returns the choice; the same for the same task. It yields between solves, so that a caller may stop or draw
 * @source house
 */
export function* chooseSizes(
  task: SizeTask,
  present: Taken | null,
  most: number,
): Generator<SearchedSoFar, ChosenSizes> {
  const judge = judging(task);
  let found: FoundSizes | null = null;
  const far = (): SearchedSoFar => ({ work: judge.work(), best: found?.judged ?? null });
  const canProve = !hasRisingPart(task.curve) && !hasMeetings(task);
  const all = task.choices.map((ofRun) => [...ofRun.keys()]);
  const root = canProve ? yield* telling(narrowing(judge)(all, most), far) : { domains: all };
  const widest = task.choices.map(({ length }) => length - 1); // from where the way to slower air is open
  const starts = [...(present === null ? [] : [present]), ...STARTS.map((faster) => firstGuess(task, faster)), widest];
  const from = judge.work();
  for (const [place, start] of starts.entries()) {
    if (start === widest && found!.judged.share >= MET) break;
    const until = from + ((most - from) / 3) * ((place + 1) / starts.length);
    const here: FoundSizes = yield* telling(localSearch(judge, start, until), far);
    if (found === null || better(here.judged, found.judged)) found = here;
  }
  if (found!.judged.share < MET) found = yield* telling(everyChoice(judge, found!, from + (most - from) / 2), far);
  const best = found!;
  const meets = best.judged.share >= MET;
  const sure = { judging: judge, atLeast: 0, blocked: null };
  if ("blocked" in root) return { ...best, ...sure, status: "impossible", atLeast: Infinity, blocked: root.blocked };
  if (!canProve) return { ...best, ...sure, status: meets ? "found" : "missed" };
  const proof = yield* telling(branchAndBound(judge, root.domains, meets ? best : null, most), far);
  const status = proof.best !== null ? (proof.isProved ? "best" : "found") : proof.isProved ? "impossible" : "missed";
  return { ...(proof.best ?? best), ...sure, status, atLeast: proof.atLeast };
}

const hasMeetings = ({ scenarios }: SizeTask): boolean =>
  meetingsOf(scenarios[0]!.network, 1).some((one) => one !== null);

/** The same steps, each telling how far the search is. */
function* telling<Found>(steps: Generator<void, Found>, far: () => SearchedSoFar): Generator<SearchedSoFar, Found> {
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield far();
  return step.value;
}
