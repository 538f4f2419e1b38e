import { DomainError } from "../errors";
import { plain } from "../naming/findNamed";
import type { Network, Run } from "./network";
import { FAN, OPEN_AIR } from "./openAir";
import {
  blowsNowhere,
  bothAtFan,
  hasNameOf,
  isCalledFan,
  joinsAfterFan,
  joinsHood,
  leadsNowhere,
  noneAtFan,
  runsInCircle,
} from "./treeFaults";
import { itemAt } from "../../reference/itemAt";

/** More runs than this are a mistake, not a workshop. */
export const MOST_RUNS = 20_000;

/**
 * Joins runs into the tree that ends at the fan.
 *
 * @param runs at least one suction run; names are compared without regard to case
 * @returns the tree, with every run placed after all that join it
 * @throws DomainError, naming the row, for a name twice, an unknown To, no or several last runs, a loop, a hood with runs joining it
 * @source house definition of the runs table
 */
export function buildNetwork(runs: readonly Run[]): Network {
  if (runs.length > MOST_RUNS) throw new DomainError("runs", runs.length, `at most ${MOST_RUNS} rows`);
  const byName = indexByName(runs);
  const discharge: number[] = [];
  const joins = new Array<number>(runs.length);
  for (let index = 0; index < runs.length; index++) {
    const run = runs[index]!;
    if (run.side === "discharge") discharge.push(index);
    joins[index] = run.side === "suction" ? downstreamOf(run, runs, byName) : dischargeEnd(run, runs, byName);
  }
  const joining = joiningOf(joins);
  const last = onlyLastRun(runs, joins);
  for (let index = 0; index < runs.length; index++) {
    const first = joining[index]![0];
    if (first !== undefined && runs[index]!.hood !== null) throw joinsHood(runs[index]!, runs[first]!.name);
  }
  const order = fromEndsToFan(runs, joins, joining);
  return { runs, joins, joining, order, last, discharge, ...endsOfDischarge(runs, discharge) };
}

const NONE: readonly number[] = [];

/** The runs that join each; the many ends share an empty list. */
function joiningOf(joins: readonly number[]): (readonly number[])[] {
  const joining = new Array<number[] | typeof NONE>(joins.length).fill(NONE);
  for (let index = 0; index < joins.length; index++) {
    const to = joins[index]!;
    if (to < 0) continue;
    const before = joining[to]!;
    if (before === NONE) joining[to] = [index];
    else (before as number[]).push(index);
  }
  return joining;
}

/** Of the runs after the fan the one at its outlet (no other goes to it) and the one that ends in the open. */
function endsOfDischarge(runs: readonly Run[], discharge: readonly number[]): Pick<Network, "outlet" | "exit"> {
  const goneTo = new Set(discharge.map((index) => plain(itemAt(runs, index).to)));
  const outlet = discharge.find((index) => !goneTo.has(plain(itemAt(runs, index).name))) ?? discharge[0] ?? -1;
  const open = discharge.filter((index) => OPEN_AIR.includes(plain(itemAt(runs, index).to)));
  return { outlet, exit: open.at(-1) ?? discharge.at(-1) ?? -1 };
}

function indexByName(runs: readonly Run[]): ReadonlyMap<string, number> {
  const byName = new Map<string, number>();
  for (let index = 0; index < runs.length; index++) {
    const run = runs[index]!;
    const name = plain(run.name);
    if (name === FAN) throw isCalledFan(run.label, run.name);
    byName.set(name, index);
    if (byName.size === index + 1) continue;
    const before = runs.find((other) => plain(other.name) === name) ?? run;
    throw hasNameOf(run.label, run.name, before.label);
  }
  return byName;
}

function downstreamOf(run: Run, runs: readonly Run[], byName: ReadonlyMap<string, number>): number {
  const index = byName.get(run.to) ?? byName.get(plain(run.to)); // most stand as plainly as the names do
  if (index === undefined) {
    if (plain(run.to) === FAN) return -1;
    const others = runs.filter((other) => other.side === "suction" && other !== run);
    throw leadsNowhere(
      run,
      others.map(({ name }) => ({ key: name })),
    );
  }
  if (runs[index]!.side === "discharge") throw joinsAfterFan(run);
  return index;
}

/** A discharge run's losses add up at the fan's airflow wherever it stands in the row, so its To is only checked. */
function dischargeEnd(run: Run, runs: readonly Run[], byName: ReadonlyMap<string, number>): number {
  const to = plain(run.to);
  const index = byName.get(to);
  if (OPEN_AIR.includes(to) || (index !== undefined && itemAt(runs, index).side === "discharge")) return -1;
  throw blowsNowhere(run);
}

function onlyLastRun(runs: readonly Run[], joins: readonly number[]): number {
  let last = -1;
  for (let index = 0; index < runs.length; index++) {
    if (joins[index] !== -1 || runs[index]!.side !== "suction") continue;
    if (last >= 0) throw bothAtFan(runs[last]!.label, runs[index]!.label);
    last = index;
  }
  if (last < 0) throw noneAtFan();
  return last;
}

function fromEndsToFan(
  runs: readonly Run[],
  joins: readonly number[],
  joining: readonly (readonly number[])[],
): number[] {
  const waiting = new Array<number>(runs.length);
  const ready: number[] = [];
  let suction = 0;
  for (let index = runs.length - 1; index >= 0; index--) {
    waiting[index] = joining[index]!.length;
    if (runs[index]!.side === "discharge") continue;
    suction++;
    if (waiting[index] === 0) ready.push(index);
  }
  const order: number[] = [];
  // The last one made ready goes first, so that a branch is followed down before the next one is begun: neighbours in the
  // tree are then neighbours in memory.
  for (let index = ready.pop(); index !== undefined; index = ready.pop()) {
    order.push(index);
    const to = joins[index]!;
    if (to < 0) continue;
    waiting[to]! -= 1;
    if (waiting[to] === 0) ready.push(to);
  }
  if (order.length < suction)
    throw runsInCircle(
      itemAt(
        runs,
        waiting.findIndex((count) => count > 0),
      ),
    );
  return order;
}
