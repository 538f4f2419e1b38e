import { DomainError, NoAnswerError } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import type { Network } from "../../core/network/network";
import { gainColumns, type GainKey } from "../../reference/answerColumns";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, type Matrix } from "../cells";
import { edited } from "../runsTable/editTable";
import { speedNotes } from "../runsTable/notes";
import { type Change, changesAlong, sealedLeak, shutGate } from "./changes";
import type { TableRun } from "../runsTable/readRuns";
import type { RunFlow } from "./flowNotes";
import { runFlows } from "./runFlows";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";

/** A gain smaller than this share of the hood's airflow is none. */
const SMALLEST_GAIN = 1e-6;

/** The answer of GAINS: each single change solved as its own network, best first. */
export function gainTable(runs: Matrix, fan: Fan, hood: unknown, system: UnitSystem): Value[][] {
  const now = solveRuns(runs, fan, system);
  const place = findHood(now, singleCell("hood", hood));
  const before = atHood(now, place);
  if (!(before > 0))
    throw new DomainError("hood", now.network.runs[place]!.name, "an open hood: no air reaches this one");
  const gains = changesFor(runs, now, place, system).flatMap((change) => {
    const gain = gainOf(change, runs, fan, now, place, before, system);
    return gain === null ? [] : [gain];
  });
  gains.sort((a, b) => b.gained - a.gained);
  const row = (of: Parameters<typeof answerRow<GainKey>>[1]): Value[] => answerRow(gainColumns, of, system);
  const rows = gains.map(({ change, gained, velocity, note }) =>
    row({ run: change.entry.run.name, change: change.words, gained, newVelocity: velocity, note }),
  );
  const nothing = row({ change: sayNote("nothingGains") });
  return [headerRow(gainColumns, system), ...(rows.length > 0 ? rows : [nothing])];
}

function findHood({ network }: SolvedTable, cell: Cell): number {
  if (cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue)
    return refuseCell("hood", cell, "the name of a hood's run");
  const ends = network.runs.filter((run, index) => run.side === "suction" && network.joining[index]!.length === 0);
  const found = network.runs.findIndex((run) => plain(run.name) === plain(String(cell)));
  if (!ends.includes(network.runs[found]!)) {
    throw unknownName(
      "hood",
      ends.map((run) => ({ key: run.name })),
      String(cell),
      "the name of a hood's run",
    );
  }
  return found;
}

/** Air that enters at the hood itself, the run's own leak not counted. [m3/s] */
const atHood = ({ solution, network }: SolvedTable, place: number): number =>
  network.runs[place]!.gate === "shut" ? 0 : solution.airflow[place]! - solution.leak[place]!;

/** Changes along the hood's own path, every leak, and the gates of the other branches. */
function changesFor(runs: Matrix, { table, network }: SolvedTable, place: number, system: UnitSystem): Change[] {
  const path = pathToFan(network, place);
  return table.runs.flatMap((entry, index) => {
    if (entry.run.side === "discharge") return changesAlong(runs, entry, system);
    const own = path.has(index) ? changesAlong(runs, entry, system) : shutGate(entry);
    return [...own, ...sealedLeak(runs, entry)];
  });
}

function pathToFan(network: Network, place: number): ReadonlySet<number> {
  const path = new Set<number>();
  for (let index = place; index >= 0; index = network.joins[index]!) path.add(index);
  return path;
}

interface Gain {
  readonly change: Change;
  readonly gained: number; // [m3/s]
  readonly velocity: number | null; // [m/s] in the changed run
  readonly note: string;
}

/** What a change gains at the hood; null where it gains nothing or the network then has no answer. */
function gainOf(
  change: Change,
  runs: Matrix,
  fan: Fan,
  now: SolvedTable,
  place: number,
  before: number,
  system: UnitSystem,
): Gain | null {
  let after: SolvedTable;
  try {
    after = solveRuns(edited(runs, change.edits), fan, system);
  } catch (error) {
    // A fitting that has no value at the larger size, or a curve that ends: this change cannot be judged.
    if (error instanceof DomainError || error instanceof NoAnswerError) return null;
    throw error;
  }
  const gained = atHood(after, place) - before;
  if (!(gained > SMALLEST_GAIN * before)) return null;
  const flows = runFlows(after);
  const at = after.table.runs.findIndex(({ row }) => row === change.entry.row);
  const flow = flows[at]!;
  const discharge = after.network.runs[at]!.side === "discharge";
  const note = settlingNote(change, after.table.runs, flows, runFlows(now), system);
  return { change, gained, velocity: flow.fed || discharge ? flow.velocity : null, note };
}

/** Dust that settles in the changed run, and the other runs in which it settles now and did not before. */
function settlingNote(
  change: Change,
  runs: readonly TableRun[],
  after: readonly RunFlow[],
  before: readonly RunFlow[],
  system: UnitSystem,
): string {
  const settles = ({ dust }: TableRun, flow: RunFlow): boolean =>
    flow.fed && !flow.beyondShut && flow.velocity < dust.low;
  const own = runs.findIndex(({ row }) => row === change.entry.row);
  const here = settles(runs[own]!, after[own]!) ? speedNotes(runs[own]!.dust, after[own]!.velocity, system) : [];
  const elsewhere = runs.filter(
    (entry, index) => index !== own && settles(entry, after[index]!) && !settles(entry, before[index]!),
  );
  const names = elsewhere.map(({ run }) => run.name).join(", ");
  return joinNotes([...here, ...(names === "" ? [] : [sayNote("settlesElsewhere", { runs: names })])]);
}
