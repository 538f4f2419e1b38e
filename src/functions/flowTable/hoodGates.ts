import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import type { Network } from "../../core/network/network";
import { itemAt } from "../../reference/itemAt";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import type { Scenario } from "./readScenarios";
import { setsOfGates } from "./setsOfGates";

const MOST_IN_PAIRS = 8; // gates: of more the pairs are more sets than anybody means

/** The runs with the gates of hoods: of each hood the first on the way of its air, in its own run or further down. */
export function firstGates({ runs, joins, joining }: Network): number[] {
  const gates = new Set<number>();
  runs.forEach(({ side }, end) => {
    if (side !== "suction" || itemAt(joining, end).length > 0) return;
    let at = end;
    while (at >= 0 && itemAt(runs, at).gate === "none") at = itemAt(joins, at);
    if (at >= 0) gates.add(at);
  });
  return [...gates];
}

/** Their names. */
export function gatesOf(table: RunsTable): string[] {
  const network = table.network();
  const gates = firstGates(network).map((run) => itemAt(network.runs, run).name);
  if (gates.length === 0) throw new DomainError("runs", null, "a table in which a run has a gate");
  return gates;
}

/** A set of gates of hoods. */
export interface OpenSet {
  readonly set: readonly number[]; // places among the gates
  readonly open: readonly string[]; // runs whose gates are open, as the table spells them
}

/** The sets of up to so many gates, and what each opens; of those that open the same, the first. */
export function openSets(table: RunsTable, gates: readonly string[], most: number): OpenSet[] {
  const found = new Map<string, OpenSet>();
  for (const set of setsOfGates(gates.length, most)) {
    const open = opened(table, set, gates);
    const key = open.join(";");
    if (!found.has(key)) found.set(key, { set, open });
  }
  return [...found.values()];
}

/** The gates that a set opens, in the table's order: its hoods' and those that stand on the way of their air. */
export function opened(table: RunsTable, set: readonly number[], gates: readonly string[]): string[] {
  const { runs, joins } = table.network();
  const open = new Set<number>();
  for (const gate of set) {
    const hood = runs.findIndex(({ name }) => name === gates[gate]);
    for (let index = hood; index >= 0; index = itemAt(joins, index)) open.add(index);
  }
  return runs.flatMap(({ name, gate }, index) => (gate !== "none" && open.has(index) ? [name] : []));
}

/** A gate as a sentence names it, with those on the way of its air that must be opened with it. */
export const gateWith = (gate: string, along: readonly string[]): string =>
  along.length === 0 ? gate : `${gate} (with ${along.join(", ")})`;

/** What is usual where nobody says: each machine alone and any two, or each alone where there are many. */
export function usualScenarios(runs: TableReader): Scenario[] {
  const table = runs.runs(null);
  const gates = gatesOf(table);
  return openSets(table, gates, gates.length > MOST_IN_PAIRS ? 1 : 2).map(({ set, open }) => ({
    name: set.map((gate) => itemAt(gates, gate)).join("; "),
    open: new Set(open.map(plain)),
  }));
}
