import { DomainError, NoAnswerError } from "../../core/errors";
import type { Network } from "../../core/network/network";
import { sectionArea } from "../../core/section/section";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { speedNotes } from "../runsTable/notes";
import type { TableRun } from "../runsTable/readRun";
import type { Change } from "./changes";
import type { RunFlow } from "./flowNotes";
import { flowOf, passingOf } from "./runFlows";
import { type Fan, type Solved, solved, type SolvedTable, solvedWith } from "./solveRuns";

/** A gain smaller than this share of the hood's airflow is none. */
export const SMALLEST_GAIN = 1e-6;

/** A change to the run of this place in the network. */
export interface ChangeAt {
  readonly index: number;
  readonly change: Change;
}

/** What one change does to a hood, as the answer tells it. */
export interface Gain {
  readonly name: string; // of the changed run
  readonly words: string;
  readonly gained: number; // [m3/s]
  readonly velocity: number | null; // [m/s] in the changed run; null where only its leak flows
  readonly note: string;
  readonly after: Solved; // with the change made
}

/** The changes in their order, and what is said where there is none. */
export interface Gains {
  readonly gains: readonly Gain[];
  readonly nothing: "nothingGains" | "worksNow" | "carriedNow" | "noneMends";
}

/** A hood's network with one change made. */
export interface Tried {
  readonly gain: Gain;
  readonly elsewhere: readonly string[]; // other runs in which dust settles then and did not before
}

/** What each change gives at a hood; null where the system then has no answer, or the change no value. */
export function trying(now: SolvedTable, place: number, fan: Fan, system: UnitSystem): (one: ChangeAt) => Tried | null {
  const passingNow = passingOf(now.network);
  const { runs } = now.table;
  const settled = runs.map((entry, index) => settles(entry, flowOf(now, passingNow, index)));
  // [m3/s] by run: with more air no dust settles there; by a little more than that, for the last digits
  const carrying = runs.map(({ run, dust }) => dust.low * sectionArea(run.diameter, null) * (1 + 1e-9));
  const alone = solvedWith(now.network, fan, now.solution);
  const solve = (index: number, { run, along = [] }: Change): Solved => {
    if (along.length === 0) return alone(index, run());
    const changing = [...now.network.runs];
    for (const one of [...along, { index, run: run() }]) changing[one.index] = one.run;
    return solved({ ...now.network, runs: changing }, fan);
  };
  return ({ index, change }) => {
    const after = changed(() => solve(index, change));
    if (after === null) return null;
    const { network, solution } = after;
    const [run, entry] = [itemAt(network.runs, index), itemAt(runs, index)];
    const passing = run.gate === entry.run.gate ? passingNow : passingOf(network);
    const elsewhere: string[] = [];
    for (let other = 0; other < runs.length; other++) {
      const one = itemAt(runs, other);
      const airflow = one.run.side === "discharge" ? solution.fanAirflow : itemAt(solution.airflow, other);
      if (other === index || settled[other] || airflow > carrying[other]!) continue;
      if (settles(one, flowOf(after, passing, other))) elsewhere.push(one.run.name);
    }
    const flow = flowOf(after, passing, index);
    const opensInVain = entry.run.gate === "shut" && run.gate === "open" && !flow.fed;
    const here = settles(entry, flow) ? speedNotes(entry.dust, flow.velocity, system) : [];
    const note = joinNotes([
      ...(opensInVain ? [sayNote("stillShut")] : []),
      ...here,
      ...(elsewhere.length === 0 ? [] : [sayNote("settlesElsewhere", { runs: elsewhere.join(", ") })]),
      ...(entry.isPort && run.diameter !== entry.run.diameter ? [sayNote("portStays", { runs: run.name })] : []),
    ]);
    const velocity = flow.fed || run.side === "discharge" ? flow.velocity : null;
    const gained = atHood(after, place) - atHood(now, place);
    return { gain: { name: run.name, words: change.words, gained, velocity, note, after }, elsewhere };
  };
}

const settles = ({ dust }: TableRun, flow: RunFlow): boolean =>
  flow.fed && !flow.beyondShut && flow.velocity < dust.low;

/** Air that enters at the hood itself, the run's own leak not counted. [m3/s] */
export const atHood = ({ solution, network }: Solved, place: number): number =>
  itemAt(network.runs, place).gate === "shut" ? 0 : itemAt(solution.airflow, place) - itemAt(solution.leak, place);

export const isOpenEnd = ({ joining }: Network, index: number): boolean => itemAt(joining, index).length === 0;

/** The hood's run, and those that its air passes. */
export function pathToFan(network: Network, place: number): ReadonlySet<number> {
  const path = new Set<number>();
  for (let index = place; index >= 0; index = itemAt(network.joins, index)) path.add(index);
  return path;
}

/** What flows with one run changed; null where it then has no answer, or the change no value. */
function changed(solve: () => Solved): Solved | null {
  try {
    return solve();
  } catch (error) {
    // A fitting that has no value at the larger size, or a curve that ends: this change cannot be judged.
    if (error instanceof DomainError || error instanceof NoAnswerError) return null;
    throw error;
  }
}
