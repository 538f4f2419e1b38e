import type { UnitSystem } from "../../reference/quantities";
import { readDensity } from "../arguments";
import type { Answered } from "../cellErrors";
import { toMatrix } from "../cells";
import { readCurve } from "../fanTable/readCurve";
import { inHost } from "../inHost";
import type { rememberingAnswers } from "../remember";
import type { OpenGates } from "../runsTable/readRun";
import type { TableReader } from "../runsTable/readRuns";
import { sharedRuns } from "../runsTable/sharedRuns";
import { openedBy } from "./openRuns";
import type { Fan } from "./solveRuns";

/** What a function that solves runs on a fan is asked with, as the host handed it over. */
interface Given {
  readonly runs: unknown;
  readonly curve: unknown;
  readonly open?: unknown;
  readonly asks?: unknown; // what else its answer depends on
  readonly density: unknown;
  readonly units: unknown;
}

/** The same, read. */
interface OnFan {
  readonly table: TableReader;
  readonly open: OpenGates;
  readonly fan: Fan;
  readonly system: UnitSystem;
}

/** Reads the runs, the open gates and the fan, and answers; what it was asked before is not worked out again. */
export function onFan(
  remember: ReturnType<typeof rememberingAnswers>,
  { runs, curve, open, asks, density, units }: Given,
  answer: (read: OnFan) => (string | number)[][],
): Answered[][] {
  return inHost(units, (system) => {
    const air = readDensity(density, system);
    const table = sharedRuns(runs, system);
    const opened = openedBy(open, table);
    return remember([toMatrix(runs), toMatrix(curve), opened && [...opened], toMatrix(asks), air, system], () =>
      answer({ table, open: opened, fan: { curve: readCurve(curve, system), density: air }, system }),
    );
  });
}
