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

/** The one run of that name in a book; null where there is none, or two, of which nobody knows whose an answer is. */
export function runCalled(tables: readonly BookRuns[], name: string): { table: BookRuns; run: BookRun } | null {
  const called = tables.flatMap((table) =>
    table.runs.flatMap((run) => (sameName(run.name, name) ? [{ table, run }] : [])),
  );
  return called.length === 1 ? called[0]! : null;
}
