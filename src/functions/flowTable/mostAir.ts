import type { UnitSystem } from "../../reference/quantities";
import type { TableRun } from "../runsTable/readRun";
import { bestFirst } from "./bestFirst";
import { type Change, changesAlong, sealedLeak, shutGate } from "./changes";
import { atHood, type ChangeAt, type Gains, isOpenEnd, pathToFan, SMALLEST_GAIN, trying } from "./oneChange";
import type { Fan, SolvedTable } from "./solveRuns";

/** What gives a hood more air, most first. */
export function mostAir(now: SolvedTable, place: number, fan: Fan, system: UnitSystem): Gains {
  const before = atHood(now, place);
  const attempt = trying(now, place, fan, system);
  const gains = changesForAir(now, place, system).flatMap((one) => {
    const found = attempt(one);
    return found !== null && found.gain.gained > SMALLEST_GAIN * before ? [found.gain] : [];
  });
  return { gains: bestFirst(gains, before), nothing: "nothingGains" };
}

/** Changes along the hood's own path, every leak, and the gates of the other branches. */
export function changesForAir({ table, network }: SolvedTable, place: number, system: UnitSystem): ChangeAt[] {
  const path = pathToFan(network, place);
  const changesOf = (entry: TableRun, index: number): Change[] => {
    if (entry.run.side === "discharge") return changesAlong(entry, false, system);
    const own = path.has(index) ? changesAlong(entry, isOpenEnd(network, index), system) : shutGate(entry);
    return [...own, ...sealedLeak(entry)];
  };
  return table.runs.flatMap((entry, index) => changesOf(entry, index).map((change) => ({ index, change })));
}
