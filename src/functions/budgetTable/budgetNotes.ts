import { joiningBranch } from "../../core/fittings/joiningBranch";
import { plain } from "../../core/naming/findNamed";
import type { RunBudget } from "../../core/network/designPass";
import { RESIZE_RATIO } from "../../reference/noteLimits";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import type { TableRun } from "../runsTable/readRun";
import type { RunsTable } from "../runsTable/readRuns";
import { leakNotes, speedNotes } from "../runsTable/notes";

/**
 * What an owner needs to know of a run, in a few words.
 *
 * @param runsOn whether it goes straight on at a junction with a branch that costs by the airflows
 */
export function budgetNotes(entry: TableRun, budget: RunBudget, runsOn: boolean, system: UnitSystem): string[] {
  const notes: string[] = [];
  if (budget.state === "shut") notes.push(sayNote("gateShut"));
  if (budget.state === "cut") notes.push(sayNote("cutOff"));
  if (budget.state === "idle") notes.push(idleNote(entry));
  if (budget.state === "discharge" && entry.run.leakArea > 0) notes.push(sayNote("blowsDustOut"));
  if (budget.state === "asked") notes.push(...speedNotes(entry.dust, budget.velocity, system), ...shareNotes(budget));
  if (budget.state === "asked" && runsOn) notes.push(sayNote("straightOn"));
  if (budget.cost !== null && entry.run.hoseLength > 0 && entry.run.hoseTimes > 1)
    notes.push(sayNote("hoseLies", { times: Number(entry.run.hoseTimes.toPrecision(2)) }));
  if (budget.cost !== null && entry.run.branch === null && joiningBranch(entry.fittings)?.plain === false)
    notes.push(sayNote("branchAlone"));
  return notes;
}

/** An airflow typed where no hood is. */
export const askedInVain = ({ run }: TableRun, { joined }: Pick<RunsTable, "joined">): string[] =>
  run.wantedAirflow > 0 && joined.has(plain(run.name)) ? [sayNote("askedInVain")] : [];

/** An exit named where the air leaves: the fan's static pressure knows of it already. */
export const exitNotes = ({ run }: TableRun, leaves: boolean): string[] =>
  leaves && run.exitCoefficient > 0 ? [sayNote("exitNamed")] : [];

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
