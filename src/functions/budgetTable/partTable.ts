import { velocityPressure } from "../../core/air/velocityPressure";
import { plain } from "../../core/naming/findNamed";
import { stillRun } from "../../core/network/designPass";
import type { Cause, JudgedTree } from "../../core/network/judged/judged";
import { type PartBudget, partPass } from "../../core/network/judged/partPass";
import { meanVelocity, sectionArea } from "../../core/section/section";
import { type BudgetKey, budgetColumns } from "../../reference/answerColumns";
import { itemAt, lastOf } from "../../reference/itemAt";
import { joinNotes } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import { type Answered, asError, failureOf } from "../cellErrors";
import type { TableRun } from "../runsTable/readRun";
import type { WrongRow } from "../runsTable/readWrong";
import { surroundings } from "../runsTable/surroundings";
import { askedInVain, budgetNotes } from "./budgetNotes";
import { branchesOf } from "./meetsOthers";
import { metalNotes } from "./metalNotes";
import { runRow } from "./runRow";
import { sayWaits } from "./sayWaits";

/** The columns that an error fills in the place of numbers that are not known. */
const AIR: readonly BudgetKey[] = ["airflow", "velocity", "velocityPressure"];
const LOSSES: readonly BudgetKey[] = ["friction", "fittings", "device", "runLoss"];
const AT_JUNCTION: readonly BudgetKey[] = ["governs", "balancedAirflow"];
/** What counts in what a run's junction costs it. */
const THROUGH_JUNCTION: readonly BudgetKey[] = ["fittings", "runLoss", "suctionAtEnd", "pathLoss"];
const AFTER_FAN = [...AIR, ...LOSSES];
const ALL: readonly BudgetKey[] = [...AFTER_FAN, "suctionAtEnd", "pathLoss", ...AT_JUNCTION];

/**
 * The answer of BUDGET for a table in which rows are wrong. A wrong row has its sentence in its note and as an error in the
 * place of each number; what depends on it is an error that says what it waits for, and everything else is what it would be.
 */
export function partTable(
  rows: readonly (TableRun | WrongRow)[],
  tree: JudgedTree,
  density: number,
  system: UnitSystem,
): Answered[][] {
  const pass = partPass(tree, surroundings(density));
  const joined = new Set(rows.map((row) => plain(("wrong" in row ? row.wrong.to : row.run.to) ?? "")));
  const metal = metalOf(rows, tree);
  const { runsOn, mayMeet } = branchesOf(rows);
  const answer = Array.from({ length: lastOf(rows).row + 1 }, (): Answered[] => blankRow(budgetColumns));
  rows.forEach((entry, index) => {
    const judged = itemAt(tree.rows, index);
    const part = itemAt(pass, index);
    const name = "wrong" in entry ? (entry.wrong.name ?? "") : entry.run.name;
    if ("wrong" in judged) {
      const failure = failureOf(judged.wrong, system, () => undefined);
      const row = answerRow(budgetColumns, { run: name, note: failure.sentence }, system);
      answer[entry.row] = withErrors(row, ALL, asError(failure));
    } else if ("wrong" in entry) throw new Error(`row ${entry.row} was refused, and judged sound`);
    else if (entry.run.side === "discharge") answer[entry.row] = dischargeRow(entry, tree, pass, density, system);
    else if (part !== null && "run" in judged) {
      const notes = [
        ...askedInVain(entry, { joined }),
        ...budgetNotes(entry, part.budget, runsOn(entry), system),
        ...(metal.get(index) ?? []),
      ];
      if (judged.path !== null) notes.push(sayWaits(judged.path));
      const row = partRow(runRow(entry, part.budget, joinNotes(notes), system), part, judged);
      const unmet = part.budget.state === "asked" && mayMeet(entry) ? judged.junction : null;
      answer[entry.row] = unmet === null ? row : withErrors(row, THROUGH_JUNCTION, waiting(unmet));
    } else if ("waits" in judged) {
      const row = answerRow(budgetColumns, { run: name, note: sayWaits(judged.waits) }, system);
      answer[entry.row] = withErrors(row, ALL, waiting(judged.waits));
    }
  });
  return [headerRow(budgetColumns, system), ...answer, fanRow(tree, pass, system)];
}

/** A row of numbers in which those that wait are errors; a cell that stays empty for such a run stays so. */
function partRow(
  row: readonly Value[],
  { budget, air, suction }: PartBudget,
  { junction, path }: { readonly junction: Cause | null; readonly path: Cause | null },
): Answered[] {
  const isAsked = budget.state === "asked";
  let answer: Answered[] = [...row];
  const waits = (keys: readonly BudgetKey[], cause: Cause | null): void => {
    if (cause !== null) answer = withErrors(answer, keys, waiting(cause));
  };
  waits(AIR, air);
  waits(["suctionAtEnd"], suction);
  if (isAsked) waits(["pathLoss"], path);
  if (isAsked) waits(AT_JUNCTION, junction);
  return answer;
}

/** After the fan each run carries the fan's air; what it costs hangs on which of them is at the outlet, and which is the last. */
function dischargeRow(
  entry: TableRun,
  tree: JudgedTree,
  pass: readonly (PartBudget | null)[],
  density: number,
  system: UnitSystem,
): Answered[] {
  const cause = tree.discharge!;
  const { run } = entry;
  const notes = joinNotes([...budgetNotes(entry, stillRun("discharge"), false, system), sayWaits(cause)]);
  const fan = atFan(tree, pass);
  if (fan === null)
    return withErrors(answerRow(budgetColumns, { run: run.name, note: notes }, system), AFTER_FAN, waiting(cause));
  const { airflow } = fan;
  const velocity = meanVelocity(airflow, sectionArea(run.diameter, null));
  const air = { airflow, velocity, velocityPressure: velocityPressure(velocity, density) };
  const row = answerRow(budgetColumns, { run: run.name, ...air, note: notes }, system);
  return withErrors(row, LOSSES, waiting(cause));
}

/** What the fan is asked for is never said without what is missing. */
function fanRow(tree: JudgedTree, pass: readonly (PartBudget | null)[], system: UnitSystem): Answered[] {
  const cause = tree.discharge!;
  const fan = atFan(tree, pass);
  const known = fan === null ? {} : { airflow: fan.airflow, suctionAtEnd: fan.suctionAtEnd };
  const row = answerRow(budgetColumns, { run: "Fan", ...known, note: sayWaits(cause) }, system);
  const unknown: BudgetKey[] = ["runLoss", "pathLoss", ...(fan === null ? (["airflow", "suctionAtEnd"] as const) : [])];
  return withErrors(row, unknown, waiting(cause));
}

/** The run at the fan, where all before it is known. */
const atFan = ({ fan, last }: JudgedTree, pass: readonly (PartBudget | null)[]): PartBudget["budget"] | null =>
  fan === null ? itemAt(pass, last)!.budget : null;

const waiting = (cause: Cause): CustomFunctions.Error => asError({ kind: "notAvailable", sentence: sayWaits(cause) });

const withErrors = (row: readonly Answered[], keys: readonly BudgetKey[], error: CustomFunctions.Error): Answered[] =>
  row.map((value, place) => (keys.includes(itemAt(budgetColumns, place).key) ? error : value));

/** The notes of sparks by the rows that have one; all that joins a sound run is sound. */
function metalOf(rows: readonly (TableRun | WrongRow)[], tree: JudgedTree): Map<number, string[]> {
  const sound = rows.flatMap((row, index) => ("run" in row && "run" in itemAt(tree.rows, index) ? [index] : []));
  const place = new Map(sound.map((index, at) => [index, at]));
  const joins = sound.map((index) => place.get(itemAt(tree.into, index)) ?? -1);
  const joining = sound.map((): number[] => []);
  joins.forEach((to, at) => {
    if (to >= 0) joining[to]!.push(at);
  });
  const runs = sound.map((index) => rows[index] as TableRun);
  const notes = metalNotes(runs, { joins, joining });
  return new Map(sound.map((index, at) => [index, itemAt(notes, at)]));
}
