import { plain } from "../../core/naming/findNamed";
import type { TableRun } from "../runsTable/readRun";
import type { WrongRow } from "../runsTable/readWrong";

const costsByAirflows = (row: TableRun | WrongRow): boolean => "run" in row && row.run.branch?.plain === false;
const toOf = (row: TableRun | WrongRow): string => plain(("run" in row ? row.run.to : row.wrong.to) ?? "");

/** Whether a run goes straight on at a junction where a branch is known that costs by the airflows. */
export const runsOn = (rows: readonly (TableRun | WrongRow)[], { run }: TableRun): boolean =>
  run.side === "suction" &&
  run.branch === null &&
  rows.some((row) => costsByAirflows(row) && toOf(row) === plain(run.to));

/**
 * Whether what a run costs at its junction hangs on who else comes there: it names a branch, one beside it does, or a wrong row
 * beside it may, in a table that names such branches.
 */
export function mayMeet(rows: readonly (TableRun | WrongRow)[], entry: TableRun): boolean {
  const { run } = entry;
  if (run.branch !== null) return !run.branch.plain;
  const beside = rows.filter((row) => toOf(row) === plain(run.to));
  return runsOn(rows, entry) || (rows.some(costsByAirflows) && beside.some((row) => "wrong" in row));
}
