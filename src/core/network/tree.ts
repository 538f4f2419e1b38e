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
  const joins = runs.map((run) =>
    run.side === "suction" ? downstreamOf(run, runs, byName) : dischargeEnd(run, runs, byName),
  );
  const joining: number[][] = runs.map(() => []);
  joins.forEach((to, index) => {
    if (to >= 0) itemAt(joining, to).push(index);
  });
  const last = onlyLastRun(runs, joins);
  runs.forEach((run, index) => {
    const first = itemAt(joining, index)[0];
    if (run.hood !== null && first !== undefined) throw joinsHood(run, itemAt(runs, first).name);
  });
  const order = fromEndsToFan(runs, joins, joining);
  const discharge = runs.flatMap((run, index) => (run.side === "discharge" ? [index] : []));
  return { runs, joins, joining, order, last, discharge, ...endsOfDischarge(runs, discharge) };
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
  runs.forEach((run, index) => {
    const name = plain(run.name);
    const before = byName.get(name);
    if (name === FAN) throw isCalledFan(run.label, run.name);
    if (before !== undefined) throw hasNameOf(run.label, run.name, itemAt(runs, before).label);
    byName.set(name, index);
  });
  return byName;
}

function downstreamOf(run: Run, runs: readonly Run[], byName: ReadonlyMap<string, number>): number {
  if (plain(run.to) === FAN) return -1;
  const index = byName.get(plain(run.to));
  if (index === undefined) {
    const others = runs.filter((other) => other.side === "suction" && other !== run);
    throw leadsNowhere(
      run,
      others.map(({ name }) => ({ key: name })),
    );
  }
  if (itemAt(runs, index).side === "discharge") throw joinsAfterFan(run);
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
  const last = runs.flatMap((run, index) => (run.side === "suction" && joins[index] === -1 ? [index] : []));
  const [first, second] = last;
  if (first === undefined) throw noneAtFan();
  if (second !== undefined) throw bothAtFan(itemAt(runs, first).label, itemAt(runs, second).label);
  return first;
}

function fromEndsToFan(
  runs: readonly Run[],
  joins: readonly number[],
  joining: readonly (readonly number[])[],
): number[] {
  const waiting = joining.map((list) => list.length);
  const ready = runs.flatMap((run, index) => (run.side === "suction" && waiting[index] === 0 ? [index] : [])).reverse();
  const order: number[] = [];
  // The last one made ready goes first, so that a branch is followed down before the next one is begun: neighbours in the
  // tree are then neighbours in memory.
  for (let index = ready.pop(); index !== undefined; index = ready.pop()) {
    order.push(index);
    const to = itemAt(joins, index);
    if (to < 0) continue;
    waiting[to]! -= 1;
    if (waiting[to] === 0) ready.push(to);
  }
  const looped = waiting.findIndex((count) => count > 0);
  if (looped >= 0) throw runsInCircle(itemAt(runs, looped));
  return order;
}
