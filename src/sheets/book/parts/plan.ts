import { freeNames } from "../../freeName";
import { type CellNameKey, cellNames } from "../frame";
import { type SheetKey, sheetKeys, usualNames } from "../../sheetKeys";
import type { Taken } from "./taken";
import { valueAt } from "../../../reference/itemAt";

export interface Plan {
  readonly added: readonly SheetKey[]; // in the usual order
  readonly sheets: Readonly<Partial<Record<SheetKey, string>>>; // names of the sheets that are added or used
  readonly names: Readonly<Record<CellNameKey, string>>; // of the cells of a Start that is added
}

/** The sheets whose cells each sheet reads. The checks of Runs stand on Budget, and the point of Fan on Flow. */
const reads: Readonly<Record<SheetKey, readonly SheetKey[]>> = {
  start: [],
  runs: ["start", "budget"],
  fan: ["start", "budget", "flow"],
  budget: ["start", "runs"],
  flow: ["start", "runs", "fan"],
  sizes: ["start", "runs", "fan", "flow"],
  leaks: ["start", "runs", "fan", "flow"],
  readings: ["start"],
  measured: ["start", "runs", "fan", "flow"],
  claims: ["start"],
  summary: ["start", "runs", "fan", "budget", "flow"],
  tables: [],
  cautions: [],
  about: [],
};

/** Which sheets to add for those that were ordered, and what they are called. */
export function plan(ordered: readonly SheetKey[], taken: Taken): Plan {
  const ours = taken.ours ?? {};
  const added = withWhatTheyRead(ordered, ours);
  const keys = sheetKeys.filter((key) => added.has(key));
  const free = freeNames(
    keys.map((key) => usualNames[key]),
    taken.sheets,
  );
  const sheets = { ...ours, ...Object.fromEntries(keys.map((key) => [key, valueAt(free, usualNames[key])])) };
  const names = Object.fromEntries(freeNames(cellNames, taken.names, "_")) as Plan["names"];
  return { added: keys, sheets, names };
}

/**
 * The ordered sheets and those that they read. A sheet that is there already is used, unless it reads one of a kind that
 * is added now: it would answer for the old one.
 */
function withWhatTheyRead(ordered: readonly SheetKey[], ours: Partial<Record<SheetKey, string>>): Set<SheetKey> {
  const added = new Set(ordered);
  const readsAdded = (key: SheetKey): boolean => [...readsInAll(key)].some((other) => added.has(other));
  for (let before = -1; before < added.size;) {
    before = added.size;
    for (const key of [...added])
      for (const read of reads[key]) if (ours[read] === undefined || readsAdded(read)) added.add(read);
  }
  return added;
}

function readsInAll(key: SheetKey): Set<SheetKey> {
  const all = new Set(reads[key]);
  for (const other of all) reads[other].forEach((further) => all.add(further));
  return all;
}
