import { type BookRun, type BookRuns, sameName } from "./runs";

/**
 * Whether a run has a device in it or gets all its air through one, as the core's `afterDevice` has it: that air is taken to be
 * clean, so TOGETHER and SIZES do not hold it to its dust's velocity, and neither does Check nor its drawing.
 */
export function isBehindDevice(runs: readonly BookRun[], run: BookRun, passed: readonly BookRun[] = []): boolean {
  if (run.device) return true;
  if (passed.includes(run)) return false; // a loop, which the functions refuse
  const before = runs.filter(({ to, discharge }) => !discharge && sameName(to, run.name));
  return before.length > 0 && before.every((one) => isBehindDevice(runs, one, [...passed, run]));
}

/** A run of a name that answers have, and its table. */
export interface Called {
  readonly table: BookRuns;
  readonly run: BookRun;
}

/** All of that name in a book: of several nobody knows whose an answer is. */
export const runsCalled = (tables: readonly BookRuns[], name: string): Called[] =>
  tables.flatMap((table) => table.runs.flatMap((run) => (sameName(run.name, name) ? [{ table, run }] : [])));

/** Whether their air is taken to be clean, whichever of them an answer is about. */
export const areClean = (called: readonly Called[]): boolean =>
  called.length > 0 && called.every(({ table, run }) => isBehindDevice(table.runs, run));
