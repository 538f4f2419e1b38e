import { nearestNames } from "../../naming/findNamed";
import type { Run } from "../network";
import { itemAt } from "../../../reference/itemAt";
import { type Destinations, destinationsOf, factsOf, TO_FAN, UNKNOWN } from "./destinations";
import type { Cause, Entry, Judged, JudgedTree } from "./judged";

const MOST_HINTS = 50; // names that no row has are compared with every name

/**
 * Judges each row of a table of runs by itself. A wrong row leaves what does not hang on it standing: all that lies on other
 * ways, and of the runs that join it their own air and loss. A row of which nobody can tell where it goes may join any run
 * that is no open end.
 *
 * @param entries at least one row, each with its run or with what is wrong with it
 * @returns for each row whether it is wrong, waits for another, or is sound, and then what of it waits; and what waits at the fan
 * @source house definition of the runs table
 */
export function judgeTree(entries: readonly Entry[]): JudgedTree {
  const there = destinationsOf(entries);
  const { into, wrong } = there;
  const openEnds = openEndsOf(entries, into);
  const lost = into.flatMap((to, index) => (to === UNKNOWN ? [index] : []));
  const waitsFor = causesOf(there, openEnds, lost);
  const causeOf = (index: number): Cause => ({ label: factsOf(itemAt(entries, index)).label });
  const missing = missingRuns(entries, openEnds);
  const rows = entries.map((): Judged => ({ waits: { end: "fan" } }));
  const cut = entries.map(() => false);
  for (const index of [...there.order].reverse()) {
    const entry = itemAt(entries, index);
    const [fault, cause, to] = [itemAt(wrong, index), itemAt(waitsFor, index), itemAt(into, index)];
    if (to >= 0) cut[index] = itemAt(cut, to) || factsOf(itemAt(entries, to)).gate === "shut";
    if (fault !== null) rows[index] = { wrong: fault };
    else if ("wrong" in entry) rows[index] = { wrong: entry.wrong };
    else if (cause >= 0) rows[index] = { waits: causeOf(cause) };
    else if (to < 0) {
      const gone = to === UNKNOWN ? missing(entry.run) : null;
      rows[index] = { run: entry.run, junction: gone, path: gone, isCut: false };
    } else {
      const next = itemAt(rows, to);
      const leads = "run" in next && itemAt(into, to) !== UNKNOWN; // where it does not, that run is to be mended
      const onward = leads ? next.path : causeOf("run" in next ? to : itemAt(waitsFor, to));
      const junction = "run" in next ? null : onward;
      rows[index] = { run: entry.run, junction, path: onward, isCut: itemAt(cut, index) };
    }
  }
  const fan = causeAtFan(entries, there, waitsFor, lost);
  const blown = wrong.findIndex(
    (fault, index) => fault !== null && factsOf(itemAt(entries, index)).side === "discharge",
  );
  return { rows, fan, discharge: fan ?? (blown < 0 ? null : causeOf(blown)), into, last: into.indexOf(TO_FAN) };
}

/** Runs that nothing joins and nothing will: they have a hood or an airflow of their own. */
function openEndsOf(entries: readonly Entry[], into: readonly number[]): boolean[] {
  const joined = new Set(into);
  return entries.map(
    (entry, index) => "run" in entry && !joined.has(index) && (entry.run.hood !== null || entry.run.wantedAirflow > 0),
  );
}

/** For each row the first row that it waits for: itself where it is wrong, -1 where it waits for none. */
function causesOf(there: Destinations, openEnds: readonly boolean[], lost: readonly number[]): number[] {
  const { into, wrong, namesake, order } = there;
  const ends = endsOfWays(there);
  const causes = into.map(() => Infinity);
  for (const index of order) {
    if (wrong[index] !== null) causes[index] = index;
    else if (!openEnds[index]) {
      const mayJoin = lost.find((row) => row !== ends[index]) ?? Infinity; // a way that ends in it never comes back
      causes[index] = Math.min(itemAt(causes, index), mayJoin, namesake.get(index) ?? Infinity);
    }
    const to = itemAt(into, index);
    if (to >= 0) causes[to] = Math.min(itemAt(causes, to), itemAt(causes, index));
  }
  return causes.map((cause) => (cause === Infinity ? -1 : cause));
}

/** The row at which each row's way ends. */
function endsOfWays({ into, order }: Destinations): number[] {
  const ends = into.map((_, index) => index);
  for (const index of [...order].reverse()) {
    const to = itemAt(into, index);
    if (to >= 0) ends[index] = itemAt(ends, to);
  }
  return ends;
}

function missingRuns(entries: readonly Entry[], openEnds: readonly boolean[]): (run: Run) => Cause {
  const names = entries.flatMap((entry, index) => {
    const { name, side } = factsOf(entry);
    return name === null || side === "discharge" || openEnds[index] === true ? [] : [{ key: name, entry }];
  });
  let hints = 0;
  return (run) => {
    const others = names.filter(({ entry }) => !("run" in entry) || entry.run !== run);
    return { missing: run.to, nearest: ++hints > MOST_HINTS ? [] : nearestNames(others, run.to).slice(0, 1) };
  };
}

function causeAtFan(
  entries: readonly Entry[],
  { into, wrong }: Destinations,
  waitsFor: readonly number[],
  lost: readonly number[],
): Cause | null {
  const last = into.indexOf(TO_FAN);
  const first = wrong.findIndex(
    (fault, index) => fault !== null && factsOf(itemAt(entries, index)).side !== "discharge",
  );
  if (first < 0 && last < 0) return { end: "fan" };
  const cause = first >= 0 ? first : itemAt(waitsFor, last) >= 0 ? itemAt(waitsFor, last) : (lost[0] ?? -1);
  return cause < 0 ? null : { label: factsOf(itemAt(entries, cause)).label };
}
