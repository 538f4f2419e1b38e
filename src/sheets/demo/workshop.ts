import type { UnitSystem } from "../../reference/quantities";
import type { ShownRunColumn } from "../../reference/runColumns";

/** An invented workshop: what fills the budget's sheets where somebody wants to see them filled. */
export interface Workshop {
  readonly units: UnitSystem; // in which its numbers stand
  readonly name: string;
  readonly invented: string; // one sentence that says so
  readonly temperature: number;
  readonly altitude: number;
  readonly dust: string;
  readonly runs: readonly WorkshopRun[];
  readonly curve: readonly (readonly [airflow: number, pressure: number])[];
  readonly scenarios: readonly Scenario[];
  readonly tries: { readonly runs: string; readonly flow: string }; // a first change that teaches something
}

/** One run: only the columns that are filled. */
export type WorkshopRun = Partial<Record<ShownRunColumn, string | number>>;

/** Which gates are open together, in the order of the runs that have one. */
export interface Scenario {
  readonly name: string;
  readonly gates: readonly ("open" | "shut")[];
}
