import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import { itemAt } from "../../reference/itemAt";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import type { Scenario } from "./readScenarios";
import { setsOfGates } from "./setsOfGates";

const MOST_IN_PAIRS = 8; // gates: of more the pairs are more sets than anybody means

/** The gates of hoods: those of runs that nothing joins. */
export function gatesOf({ runs, joined }: RunsTable): string[] {
  const gates = runs.flatMap(({ run }) =>
    run.side === "suction" && run.gate !== "none" && !joined.has(plain(run.name)) ? [run.name] : [],
  );
  if (gates.length === 0) throw new DomainError("runs", null, "a table in which a hood's run has a gate");
  return gates;
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

/** What is usual where nobody says: each machine alone and any two, or each alone where there are many. */
export function usualScenarios(runs: TableReader): Scenario[] {
  const table = runs.runs(null);
  const gates = gatesOf(table);
  return setsOfGates(gates.length, gates.length > MOST_IN_PAIRS ? 1 : 2).map((set) => ({
    name: set.map((gate) => itemAt(gates, gate)).join("; "),
    open: new Set(opened(table, set, gates).map(plain)),
  }));
}
