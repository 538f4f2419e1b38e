import { afterDevice } from "../../core/network/afterDevice";
import { itemAt } from "../../reference/itemAt";
import { ENOUGH_AIR } from "../../reference/noteLimits";
import { joinNotes, sayNote } from "../../reference/notes";
import { inWords } from "../../reference/inWords";
import type { UnitSystem } from "../../reference/quantities";
import type { TableRun } from "../runsTable/readRun";
import { bestFirst } from "./bestFirst";
import { narrowerSizes, openedGate } from "./changes";
import { type RunFlow, shareSaid } from "./flowNotes";
import { changesForAir } from "./mostAir";
import {
  atHood,
  type ChangeAt,
  type Gain,
  type Gains,
  pathToFan,
  SMALLEST_GAIN,
  type Tried,
  trying,
} from "./oneChange";
import { runFlows } from "./runFlows";
import type { Fan, Solved, SolvedTable } from "./solveRuns";

/** How a hood is served. */
interface Served {
  readonly share: number | null; // of the air that it wants; null where it wants none
  readonly slow: readonly number[]; // runs on its way to the fan in which dust settles
}

interface Judged {
  readonly gain: Gain;
  readonly becomes: Served;
  readonly elsewhere: readonly string[];
}

/**
 * What makes a hood work, as somebody who builds ducts goes about it. A hood that has its air gets no more: first comes what
 * carries its dust. One that is short of air gets more, first where no dust settles for it. A change that mends all
 * comes before any other.
 */
export function whatWorks(now: SolvedTable, place: number, fan: Fan, system: UnitSystem): Gains {
  const [before, flowsNow, { runs }] = [atHood(now, place), runFlows(now), now.table];
  const is = served(now, now, flowsNow, place);
  if (works(is)) return { gains: [], nothing: is.share === null ? "carriedNow" : "worksNow" };
  const outcome = trying(now, place, fan, system);
  const attempt = (one: ChangeAt): Judged[] => {
    const change = outcome(one);
    return change === null ? [] : [judged(now, place, change, system)];
  };
  const opened = runs.flatMap((_, index) =>
    openedGate(now.table, now.network, index).map((change) => ({ index, change })),
  );
  const narrower = is.slow.flatMap((index) => firstThatCarries(itemAt(runs, index), index, attempt, system));
  const isOwn = ({ gain: { name } }: Judged): boolean => name === itemAt(runs, place).run.name;
  // a main belongs to other hoods, too: another gate left open comes before a narrower pipe there
  const inTurn = [
    [...narrower.filter(isOwn), ...(is.slow.length === 0 ? [] : opened.flatMap(attempt))],
    narrower.filter((one) => !isOwn(one)).map(shared),
    changesForAir(now, place, system).flatMap(attempt),
  ];
  const helps = ({ becomes, gain }: Judged): boolean =>
    isEnough(is) ? becomes.slow.length < is.slow.length : gain.gained > SMALLEST_GAIN * before || works(becomes);
  const ranks = new Map<number, Gain[]>();
  inTurn.forEach((list, turn) => {
    for (const one of list.filter(helps)) {
      const rank = rankOf(is, one, turn);
      ranks.set(rank, [...(ranks.get(rank) ?? []), one.gain]);
    }
  });
  const gains = [...ranks].sort(([a], [b]) => a - b).flatMap(([, equals]) => bestFirst(equals, before));
  return { gains, nothing: "noneMends" };
}

/** Lowest first: what stands first in the list of reasons decides. */
function rankOf(is: Served, { becomes, elsewhere }: Judged, turn: number): number {
  const reasons = [
    works(becomes) && elsewhere.length === 0 ? 0 : 1,
    isEnough(is) && !isEnough(becomes) ? 1 : 0,
    elsewhere.length > 0 || becomes.slow.length > is.slow.length ? 1 : 0,
    isEnough(is) ? becomes.slow.length : 0,
    isEnough(is) ? turn : 0,
  ];
  return reasons.reduce((rank, reason) => rank * 1000 + reason, 0);
}

function served(
  { table }: SolvedTable,
  { network, solution }: Solved,
  flows: readonly RunFlow[],
  place: number,
): Served {
  const clean = afterDevice(network);
  const wanted = itemAt(network.runs, place).wantedAirflow;
  const slow = [...pathToFan(network, place)].filter((index) => {
    const { fed, beyondShut, velocity } = itemAt(flows, index);
    return !clean[index] && fed && !beyondShut && velocity < itemAt(table.runs, index).dust.low;
  });
  return { share: wanted > 0 ? atHood({ network, solution }, place) / wanted : null, slow };
}

const isEnough = ({ share }: Served): boolean => share === null || share >= ENOUGH_AIR;
const works = (one: Served): boolean => isEnough(one) && one.slow.length === 0;

/** The widest of the narrower sizes of a run in which its dust is carried. */
function firstThatCarries(
  entry: TableRun,
  index: number,
  attempt: (one: ChangeAt) => Judged[],
  system: UnitSystem,
): Judged[] {
  for (const change of narrowerSizes(entry, system)) {
    const [one] = attempt({ index, change });
    if (one !== undefined && !one.becomes.slow.includes(index)) return [one];
  }
  return [];
}

/** A change in a run that other hoods use. */
const shared = ({ gain, ...rest }: Judged): Judged => ({
  ...rest,
  gain: { ...gain, note: joinNotes([gain.note, sayNote("sharedRun")].filter((note) => note !== "")) },
});

/** A change with what it comes to at the hood. */
function judged(now: SolvedTable, place: number, { gain, elsewhere }: Tried, system: UnitSystem): Judged {
  const { after } = gain;
  const { runs } = after.network;
  const becomes = served(now, after, runFlows(after), place);
  const names = becomes.slow.map((index) => itemAt(runs, index).name);
  const still = names.filter((name) => name !== gain.name && !elsewhere.includes(name));
  const wanted = inWords(itemAt(runs, place).wantedAirflow, "airflow", system);
  const notes = [
    works(becomes) && elsewhere.length === 0 ? sayNote("worksThen") : "",
    gain.note,
    still.length === 0 ? "" : sayNote("stillSettles", { runs: still.join(", ") }),
    isEnough(becomes) ? "" : sayNote("short", { share: shareSaid(becomes.share!), airflow: wanted }),
  ];
  return { becomes, elsewhere, gain: { ...gain, note: joinNotes(notes.filter((note) => note !== "")) } };
}
