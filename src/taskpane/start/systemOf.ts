import { cellNames } from "../../sheets/book/frame";
import { byReason } from "../check/byReason";
import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findingsIn";
import { type Ducts, ductsOf } from "../check/picture/pictureOf";
import { ourFormulasOn } from "../check/ourFormulas";
import { ANOTHER_VERSION } from "../check/rules/earlierVersion";
import { refusal } from "../check/rules/refusal";
import { whichRuns } from "../check/runs";
import type { Seen } from "../check/seenIn";
import type { Calculate } from "../functions/askWorker";
import { goesByReadings } from "./goesByReadings";
import { eachAlone, type MachineAlone } from "./eachAlone";
import { runTogether } from "./runTogether";

/** What an owner asks first: how is my system, machine by machine, and what do I do next. */
export interface SystemSeen {
  readonly which: string; // of several tables of runs; "" where there is one
  readonly ducts: Ducts | string; // a sentence where there is nothing to draw
  readonly alone: readonly MachineAlone[] | string;
  readonly together: string; // which machines can run at once; "" where nothing is to be said
  readonly next: readonly NextStep[];
  readonly asTyped: boolean; // whether the sheets go by calibrated ducts, and this does not
}

/** The gravest of a kind of findings. */
export interface NextStep {
  readonly finding: Finding;
  readonly more: number; // of the same kind
}

const STEPS = 3;
const settings = new Set<string>(cellNames); // the sheet of their air and dust

/** Computed with the cell functions from what stands in the book; null where it has no ducts at all, and none that a function refuses. */
export async function systemOf(seen: Seen, calculate: Calculate): Promise<SystemSeen | null> {
  if (seen.runs.length === 0) return unreadIn(seen);
  const [ducts, alone] = [await ductsOf(seen, calculate), await eachAlone(seen, calculate)];
  const together = typeof alone === "string" ? "" : await runTogether(seen, calculate);
  return { which: whichRuns(seen.runs), ducts, alone, together, next: nextSteps(seen), asTyped: goesByReadings(seen) };
}

const TAKE_RUNS: readonly string[] = ["BUDGET", "SOLVE"];

/** What the functions say of a table of runs that nobody can read; null where they were asked of none. */
function unreadIn(seen: Seen): SystemSeen | null {
  const asking = new Set(
    seen.book.workbook.sheets.flatMap((sheet) =>
      ourFormulasOn(sheet)
        .filter(({ calls }) => calls.some(({ name }) => TAKE_RUNS.includes(name)))
        .map(({ at }) => `${sheet.name}!${at}`),
    ),
  );
  const refused = refusal({ ...seen, failed: seen.failed.filter(({ sheet, of }) => asking.has(`${sheet}!${of}`)) });
  if (refused.length === 0) return null;
  const next = stepsOf(refused);
  return { which: "", ducts: "No table of runs can be read in this book.", alone: "", together: "", next, asTyped: false }; // prettier-ignore
}

/**
 * One step for each kind of findings, of what stands on the sheets of the ducts and their settings: a call tried out elsewhere is no part of the
 * system. What another version computed is told of the whole book: what is shown here comes from this one, and the cells go on showing the other.
 */
function nextSteps(seen: Seen): NextStep[] {
  const ofSystem = new Set([...seen.runs, ...seen.answers].map(({ sheet }) => sheet));
  for (const { table } of seen.curves) ofSystem.add(table.sheet);
  for (const { name, sheet } of seen.book.workbook.names) if (settings.has(name.toLowerCase())) ofSystem.add(sheet);
  return stepsOf(findingsIn(seen).filter(({ sheet, rule }) => ofSystem.has(sheet) || rule === ANOTHER_VERSION));
}

const stepsOf = (findings: readonly Finding[]): NextStep[] =>
  byReason(findings)
    .slice(0, STEPS)
    .map(({ findings: [first, ...others] }) => ({ finding: first!, more: others.length }));
