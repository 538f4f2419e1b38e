import type { UnitSystem } from "../../reference/quantities";
import type { SheetKey } from "../sheetKeys";

/** What a user asks for: which sheets, in which units, empty or filled with the invented example. */
export interface SheetOrder {
  readonly units: UnitSystem;
  readonly sheets: readonly SheetKey[]; // those that these lean on are added where they are missing
  readonly contents: "empty" | "example";
}
