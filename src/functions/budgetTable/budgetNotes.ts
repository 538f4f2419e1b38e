import type { RunBudget } from "../../core/network/designPass";
import { RESIZE_RATIO } from "../../reference/noteLimits";
import type { UnitSystem } from "../../reference/quantities";
import type { TableRun } from "../runsTable/readRuns";
import { leakNotes, speedNotes } from "../runsTable/notes";

/** What an owner needs to know of a run, in a few words. */
export function budgetNotes(entry: TableRun, budget: RunBudget, system: UnitSystem): string {
  const notes: string[] = [];
  if (entry.asksInVain) notes.push("the airflow typed here is not used: what joins it adds up");
  if (budget.state === "shut") notes.push("gate shut: only its leak flows");
  if (budget.state === "cut") notes.push("a shut gate cuts it off");
  if (budget.state === "idle") notes.push(idleNote(entry));
  if (budget.state === "discharge" && entry.run.leakArea > 0)
    notes.push("a leak on the discharge side blows dust out and is not counted");
  if (budget.state === "asked") notes.push(...speedNotes(entry.dust, budget.velocity, system), ...shareNotes(budget));
  return notes.join("; ");
}

const idleNote = (entry: TableRun): string =>
  entry.run.hood !== null || entry.run.gate === "open"
    ? "no airflow is asked for here"
    : "no open hood asks for air through it";

function shareNotes(budget: RunBudget): string[] {
  const notes: string[] = [];
  if (budget.junctionRatio !== null && budget.junctionRatio > RESIZE_RATIO) {
    const percent = Math.round((1 - 1 / budget.junctionRatio) * 100);
    notes.push(`resize: its path needs ${percent} % less suction than the junction has`);
  }
  notes.push(...leakNotes(budget.leak, budget.airflow));
  return notes;
}
