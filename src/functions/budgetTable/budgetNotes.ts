import type { RunBudget } from "../../core/network/designPass";
import { RESIZE_RATIO } from "../../reference/noteLimits";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import type { TableRun } from "../runsTable/readRuns";
import { leakNotes, speedNotes } from "../runsTable/notes";

/** What an owner needs to know of a run, in a few words. */
export function budgetNotes(entry: TableRun, budget: RunBudget, metal: readonly string[], system: UnitSystem): string {
  const notes: string[] = [];
  if (entry.asksInVain) notes.push(sayNote("askedInVain"));
  if (budget.state === "shut") notes.push(sayNote("gateShut"));
  if (budget.state === "cut") notes.push(sayNote("cutOff"));
  if (budget.state === "idle") notes.push(idleNote(entry));
  if (budget.state === "discharge" && entry.run.leakArea > 0) notes.push(sayNote("blowsDustOut"));
  if (budget.state === "asked") notes.push(...speedNotes(entry.dust, budget.velocity, system), ...shareNotes(budget));
  return joinNotes([...notes, ...metal]);
}

const idleNote = (entry: TableRun): string =>
  entry.run.hood !== null || entry.run.gate === "open" ? sayNote("asksForNone") : sayNote("noneAsksThroughIt");

function shareNotes(budget: RunBudget): string[] {
  const notes: string[] = [];
  if (budget.junctionRatio !== null && budget.junctionRatio > RESIZE_RATIO) {
    const percent = Math.round((1 - 1 / budget.junctionRatio) * 100);
    notes.push(sayNote("resize", { percent }));
  }
  notes.push(...leakNotes(budget.leak, budget.airflow));
  return notes;
}
