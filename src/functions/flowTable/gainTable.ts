import { DomainError, NoAnswerError } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import type { Network } from "../../core/network/network";
import { gainColumns, type GainKey } from "../../reference/answerColumns";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue } from "../cells";
import { speedNotes } from "../runsTable/notes";
import type { TableRun } from "../runsTable/readRun";
import type { RunsTable } from "../runsTable/readRuns";
import { bestFirst } from "./bestFirst";
import { type Change, changesAlong, sealedLeak, shutGate } from "./changes";
import type { RunFlow } from "./flowNotes";
import { runFlows } from "./runFlows";
import { type Fan, type Solved, solved, type SolvedTable, solveRuns } from "./solveRuns";

/** A gain smaller than this share of the hood's airflow is none. */
const SMALLEST_GAIN = 1e-6;

/** The answer of GAINS: each single change solved as its own network, best first. */
export function gainTable(runs: RunsTable, fan: Fan, hood: unknown, system: UnitSystem): Value[][] {
  const now = solveRuns(runs, fan);
  const place = findHood(now, singleCell("hood", hood));
  const before = atHood(now, place);
  if (!(before > 0))
    throw new DomainError("hood", itemAt(now.network.runs, place).name, "an open hood: no air reaches this one");
  const flowsNow = runFlows(now);
  const gains = changesFor(now, place, system).flatMap(({ index, change }) => {
    const after = changed(now, index, change, fan);
    const gained = after === null ? 0 : atHood(after, place) - before;
    if (after === null || !(gained > SMALLEST_GAIN * before)) return [];
    const flows = runFlows(after);
    const { fed, velocity } = itemAt(flows, index);
    const note = settlingNote(index, runs.runs, flows, flowsNow, system);
    const { name, side } = itemAt(after.network.runs, index);
    return [{ name, words: change.words, gained, velocity: fed || side === "discharge" ? velocity : null, note }];
  });
  const row = (of: Parameters<typeof answerRow<GainKey>>[1]): Value[] => answerRow(gainColumns, of, system);
  const rows = bestFirst(gains, before).map(({ name, words, gained, velocity, note }) =>
    row({ run: name, change: words, gained, newVelocity: velocity, note }),
  );
  const nothing = row({ change: sayNote("nothingGains") });
  return [headerRow(gainColumns, system), ...(rows.length > 0 ? rows : [nothing])];
}

function findHood({ network }: SolvedTable, cell: Cell): number {
  if (cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue)
    return refuseCell("hood", cell, "the name of a hood's run");
  const ends = network.runs.filter((run, index) => run.side === "suction" && isOpenEnd(network, index));
  const found = ends.find((run) => plain(run.name) === plain(String(cell)));
  if (found === undefined) {
    throw unknownName(
      "hood",
      ends.map((run) => ({ key: run.name })),
      String(cell),
      "the name of a hood's run",
    );
  }
  return network.runs.indexOf(found);
}

const isOpenEnd = ({ joining }: Network, index: number): boolean => itemAt(joining, index).length === 0;

/** Air that enters at the hood itself, the run's own leak not counted. [m3/s] */
const atHood = ({ solution, network }: Solved, place: number): number =>
  itemAt(network.runs, place).gate === "shut" ? 0 : itemAt(solution.airflow, place) - itemAt(solution.leak, place);

/** Changes along the hood's own path, every leak, and the gates of the other branches; each with its run's place. */
function changesFor(
  { table, network }: SolvedTable,
  place: number,
  system: UnitSystem,
): { index: number; change: Change }[] {
  const path = pathToFan(network, place);
  const changesOf = (entry: TableRun, index: number): Change[] => {
    if (entry.run.side === "discharge") return changesAlong(entry, false, system);
    const own = path.has(index) ? changesAlong(entry, isOpenEnd(network, index), system) : shutGate(entry);
    return [...own, ...sealedLeak(entry)];
  };
  return table.runs.flatMap((entry, index) => changesOf(entry, index).map((change) => ({ index, change })));
}

function pathToFan(network: Network, place: number): ReadonlySet<number> {
  const path = new Set<number>();
  for (let index = place; index >= 0; index = itemAt(network.joins, index)) path.add(index);
  return path;
}

/** What flows with one run changed; null where it then has no answer, or the change no value. */
function changed({ network, solution }: Solved, index: number, change: Change, fan: Fan): Solved | null {
  try {
    const runs = [...network.runs];
    runs[index] = change.run();
    return solved({ ...network, runs }, fan, solution);
  } catch (error) {
    // A fitting that has no value at the larger size, or a curve that ends: this change cannot be judged.
    if (error instanceof DomainError || error instanceof NoAnswerError) return null;
    throw error;
  }
}

/** Dust that settles in the changed run, and the other runs in which it settles now and did not before. */
function settlingNote(
  own: number,
  runs: readonly TableRun[],
  after: readonly RunFlow[],
  before: readonly RunFlow[],
  system: UnitSystem,
): string {
  const settles = ({ dust }: TableRun, flow: RunFlow): boolean =>
    flow.fed && !flow.beyondShut && flow.velocity < dust.low;
  const [run, flow] = [itemAt(runs, own), itemAt(after, own)];
  const here = settles(run, flow) ? speedNotes(run.dust, flow.velocity, system) : [];
  const elsewhere = runs.filter(
    (entry, index) => index !== own && settles(entry, itemAt(after, index)) && !settles(entry, itemAt(before, index)),
  );
  const names = elsewhere.map(({ run }) => run.name).join(", ");
  return joinNotes([...here, ...(names === "" ? [] : [sayNote("settlesElsewhere", { runs: names })])]);
}
