import type { UnitSystem } from "../../reference/quantities";
import { toMatrix } from "../cells";
import { remembering } from "../remember";
import { readRuns, type TableReader } from "./readRuns";

const remember = remembering<TableReader>();

/** The runs of a range, read once for all functions and calls that name it; it refuses what `readRuns` refuses. */
export function sharedRuns(given: unknown, system: UnitSystem): TableReader {
  const table = toMatrix(given);
  return remember([table, system], () => readRuns(table, system));
}
