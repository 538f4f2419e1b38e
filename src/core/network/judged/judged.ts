import type { Run } from "../network";

/** A row of a table of runs that cannot be read, and what is known of it all the same. */
export interface WrongRun {
  readonly label: string; // how a sentence names it: `run "saw" (row 5)`
  readonly name: string | null; // null where it has none
  readonly to: string | null; // null where nobody can tell
  readonly side: Run["side"] | null; // null where nobody can tell
  readonly gate: Run["gate"] | null; // null where nobody can tell
  readonly wrong: Error;
}

/** A row of a table of runs: its run, or why it is none. */
export type Entry = { readonly run: Run } | WrongRun;

/** What has to be there first: a run that is wrong, one that no row has, or any at the fan. */
export type Cause =
  | { readonly label: string }
  | { readonly missing: string; readonly nearest: readonly string[] }
  | { readonly end: "fan" };

/**
 * What can be said of a row. Of a sound run everything up to its own end is known; what waits is what its way to the fan
 * decides: `junction` what it meets at its end, `path` the whole of it.
 */
export type Judged =
  | { readonly wrong: Error }
  | { readonly waits: Cause }
  | { readonly run: Run; readonly junction: Cause | null; readonly path: Cause | null; readonly isCut: boolean };

/** A table of runs, row by row, and what waits at the fan. */
export interface JudgedTree {
  readonly rows: readonly Judged[];
  readonly fan: Cause | null; // its airflow and the suction at its inlet
  readonly discharge: Cause | null; // what comes after it
  readonly into: readonly number[]; // index of the row that each row joins; negative where it joins none
  readonly last: number; // index of the row that ends at the fan; -1 where there is none
}
