import { plain } from "../../naming/findNamed";
import { FAN, OPEN_AIR } from "../openAir";
import {
  blowsNowhere,
  bothAtFan,
  hasNameOf,
  isCalledFan,
  joinsAfterFan,
  joinsHood,
  leadsNowhere,
  runsInCircle,
} from "../treeFaults";
import { itemAt } from "../../../reference/itemAt";
import type { Entry } from "./judged";

/** Where a row goes that goes to no other row; after the fan nobody needs to know. */
export const TO_FAN = -1;
export const UNKNOWN = -2;
const AFTER_FAN = -3;

/** Where each row of a table goes, whatever is wrong with it or with others. */
export interface Destinations {
  readonly into: readonly number[]; // index of a row, or one of the above
  readonly wrong: readonly (Error | null)[];
  readonly namesake: ReadonlyMap<number, number>; // of the first row of a name the next one that has it too
  readonly order: readonly number[]; // every row after all that go to it
}

/**
 * What is known of a row, be it right or wrong.
 *
 * @returns its name, side, gate, where it goes and how a sentence names it
 * @source house
 */
export const factsOf = (
  entry: Entry,
): Pick<Exclude<Entry, { readonly run: unknown }>, "label" | "name" | "to" | "side" | "gate"> =>
  "run" in entry ? entry.run : entry;

/**
 * Looks for the destination of each row; what refuses a whole tree is here the fault of single rows.
 *
 * @returns the row that each goes to, what is wrong with it, and the rows in the order of the flow
 * @source house
 */
export function destinationsOf(entries: readonly Entry[]): Destinations {
  const wrong = entries.map((entry) => ("wrong" in entry ? entry.wrong : null));
  const { byName, namesake } = namesOf(entries, wrong);
  const into = entries.map((entry, index) => {
    const found = destinationOf(entry, entries, byName);
    if (typeof found === "number") return found;
    wrong[index] ??= found.wrong;
    return found.into;
  });
  onlyOneAtFan(entries, into, wrong);
  into.forEach((to, index) => {
    const joined = to < 0 ? undefined : itemAt(entries, to);
    if (joined === undefined || !("run" in joined) || joined.run.hood === null) return;
    wrong[to] ??= joinsHood(joined.run, factsOf(itemAt(entries, index)).name ?? factsOf(itemAt(entries, index)).label);
  });
  return { into, wrong, namesake, order: inFlowOrder(entries, into, wrong) };
}

function namesOf(
  entries: readonly Entry[],
  wrong: (Error | null)[],
): { byName: Map<string, number>; namesake: Map<number, number> } {
  const byName = new Map<string, number>();
  const namesake = new Map<number, number>();
  entries.forEach((entry, index) => {
    const { name, label } = factsOf(entry);
    if (name === null) return;
    const before = byName.get(plain(name));
    if (plain(name) === FAN) wrong[index] ??= isCalledFan(label, name);
    else if (before === undefined) byName.set(plain(name), index);
    else {
      wrong[index] ??= hasNameOf(label, name, factsOf(itemAt(entries, before)).label);
      if (!namesake.has(before)) namesake.set(before, index);
    }
  });
  return { byName, namesake };
}

function destinationOf(
  entry: Entry,
  entries: readonly Entry[],
  byName: ReadonlyMap<string, number>,
): number | { readonly into: number; readonly wrong: Error | null } {
  const { to, side } = factsOf(entry);
  const there = to === null ? undefined : byName.get(plain(to));
  const sideThere = there === undefined ? undefined : factsOf(itemAt(entries, there)).side;
  if (side === "discharge") {
    const isWayOut =
      to === null || OPEN_AIR.includes(plain(to)) || (sideThere !== undefined && sideThere !== "suction");
    return { into: AFTER_FAN, wrong: isWayOut || !("run" in entry) ? null : blowsNowhere(entry.run) };
  }
  if (to === null) return UNKNOWN;
  if (plain(to) === FAN) return TO_FAN;
  if (there === undefined) return { into: UNKNOWN, wrong: plain(to) === "" ? goesNowhere(entry, entries) : null };
  if (sideThere !== "discharge") return there;
  return { into: UNKNOWN, wrong: "run" in entry ? joinsAfterFan(entry.run) : null };
}

function goesNowhere(entry: Entry, entries: readonly Entry[]): Error | null {
  if (!("run" in entry)) return null;
  const others = entries.filter((other) => other !== entry && factsOf(other).side !== "discharge");
  return leadsNowhere(
    entry.run,
    others.flatMap((other) => {
      const { name } = factsOf(other);
      return name === null ? [] : [{ key: name }];
    }),
  );
}

function onlyOneAtFan(entries: readonly Entry[], into: number[], wrong: (Error | null)[]): void {
  const first = into.indexOf(TO_FAN);
  into.forEach((to, index) => {
    if (to !== TO_FAN || index === first) return;
    into[index] = UNKNOWN;
    wrong[index] ??= bothAtFan(factsOf(itemAt(entries, first)).label, factsOf(itemAt(entries, index)).label);
  });
}

/** Rows in a loop come last: nobody knows where they go. */
function inFlowOrder(entries: readonly Entry[], into: number[], wrong: (Error | null)[]): number[] {
  const waiting = into.map(() => 0);
  for (const to of into) if (to >= 0) waiting[to]! += 1;
  const order = into.flatMap((_, index) => (waiting[index] === 0 ? [index] : []));
  for (let next = 0; next < order.length; next++) {
    const to = itemAt(into, itemAt(order, next));
    if (to < 0) continue;
    waiting[to]! -= 1;
    if (waiting[to] === 0) order.push(to);
  }
  waiting.forEach((count, index) => {
    if (count === 0) return;
    const entry = itemAt(entries, index);
    if ("run" in entry) wrong[index] ??= runsInCircle(entry.run);
    into[index] = UNKNOWN;
    order.push(index);
  });
  return order;
}
