import { toMatrix } from "../../src/functions/cells";
import type { OpenGates } from "../../src/functions/runsTable/readRun";
import { readRuns, type RunsTable } from "../../src/functions/runsTable/readRuns";
import type { UnitSystem } from "../../src/reference/quantities";
import { type Row, table } from "./tables";

/** The runs that rows state, with their gates as they have them or as said. */
export const runsOf = (rows: readonly Row[], system: UnitSystem = "IP", open: OpenGates = null): RunsTable =>
  readRuns(toMatrix(table(rows)), system).runs(open);
