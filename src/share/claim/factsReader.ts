import type { UnitSystem } from "../../reference/quantities";
import type { FactColumn, FactPlace, RowPlace } from "./claimNames";
import type { ClaimTables } from "./claimTables";

/** A fact in each of these columns; what is left out stands empty. */
export type FactCells = Readonly<Partial<Record<FactColumn, string>>>;

export interface FactsReader {
  readonly facts: FactPlace;
  readonly rows: RowPlace;
  readonly tables: ClaimTables;
  readonly system: UnitSystem;
}
