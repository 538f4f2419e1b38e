import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import { type Network, runWith } from "../../core/network/network";
import { buildNetwork, MOST_RUNS } from "../../core/network/tree";
import { columnsOfAnyRun } from "../../reference/columnsOfRuns";
import { itemAt } from "../../reference/itemAt";
import type { UnitSystem } from "../../reference/quantities";
import { MOST_WRONG } from "../answer";
import { type Cell, CellErrorValue, type Matrix } from "../cells";
import { cellOf, findColumns } from "./columns";
import { type CellReader, type OpenGates, readGate, readRun, type TableRun } from "./readRun";
import { readWrong, type WrongRow } from "./readWrong";

/** The runs of a table with its gates in one state. */
export interface RunsTable {
  readonly runs: readonly TableRun[];
  readonly rows: number; // rows below the header up to the last one filled
  readonly joined: ReadonlySet<string>; // plain names of the runs that another joins
  readonly network: () => Network; // refuses runs that make no tree
}

/** A table of runs, each row of which is read once, however often its gates are set otherwise. */
export interface TableReader {
  readonly names: ReadonlyMap<string, string>; // of its runs, by their plain spelling; also of rows that are refused
  readonly hasGates: boolean; // it has a column for them
  readonly runs: (open: OpenGates) => RunsTable;
  readonly rows: () => readonly (TableRun | WrongRow)[]; // each read by itself, its gate as the table has it
}

/**
 * Finds the columns of a runs table; the rows are read when they are asked for.
 *
 * @param table the range, its headers first
 * @param system the units the table is in
 * @throws DomainError that names the column, and when the runs are asked for the row
 */
export function readRuns(table: Matrix, system: UnitSystem): TableReader {
  const places = findColumns(table, system);
  const body = table.slice(1);
  const blanksAreTold = body.some((line) => line.includes(null));
  const readers = body.map(
    (_, row): CellReader =>
      (column) =>
        cellOf(body, row, places, column, blanksAreTold),
  );
  const filled = [...readers.entries()].filter(([, cell]) => columnsOfAnyRun.some((column) => cell(column) !== null));
  const names = new Map(readers.flatMap((cell) => nameIn(cell("Run"))).map((name) => [plain(name), name]));
  const isRun = (name: string): boolean => names.has(name);
  const known = new Map<number, TableRun>();
  const runOf = (row: number, cell: CellReader, open: OpenGates): TableRun => {
    const before = known.get(row);
    if (before !== undefined) return withGate(before, readGate(before.run.label, before.run.name, cell, open));
    const read = readRun(row, cell, open, isRun, system);
    known.set(row, read);
    return read;
  };
  let tree: Network | null = null; // the same whatever the gates do
  return {
    names,
    hasGates: places.Gate !== undefined,
    runs: (open) => {
      requireFew(filled.length);
      const runs = filled.map(([row, cell]) => runOf(row, cell, open));
      const last = runs.at(-1);
      if (last === undefined) throw noRun();
      const network = (): Network => {
        const now = runs.map(({ run }) => run);
        tree ??= buildNetwork(now);
        return { ...tree, runs: now };
      };
      return { runs, rows: last.row + 1, joined: new Set(runs.map(({ run }) => plain(run.to))), network };
    },
    rows: () => {
      if (filled.length === 0) throw noRun();
      requireFew(filled.length);
      const wrong: DomainError[] = [];
      return filled.map(([row, cell]) => {
        try {
          return runOf(row, cell, null);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          if (wrong.push(error) > MOST_WRONG) throw itemAt(wrong, 0); // it is the range that is wrong
          return readWrong(row, cell, isRun, error, system);
        }
      });
    },
  };
}

/** Before the rows are read, which takes seconds where somebody pointed at a whole log. */
function requireFew(rows: number): void {
  if (rows > MOST_RUNS) throw new DomainError("runs", rows, `at most ${MOST_RUNS} rows`);
}

const noRun = (): DomainError => new DomainError("runs", null, "a table with at least one run below its headers");

const nameIn = (cell: Cell): string[] => (cell === null || cell instanceof CellErrorValue ? [] : [String(cell)]);

/** A run with its gate in another state, which leaks otherwise; the last one made of each is kept, since many sets of gates ask for it. */
export function withGate(entry: TableRun, gate: TableRun["run"]["gate"]): TableRun {
  const { run } = entry;
  if (gate === run.gate) return entry;
  const known = turned.get(entry);
  if (known?.run.gate === gate) return known;
  const other = { ...entry, run: runWith(run, { gate, leakArea: entry.leakOf(gate, run.diameter) }) };
  turned.set(entry, other);
  return other;
}

const turned = new WeakMap<TableRun, TableRun>();
