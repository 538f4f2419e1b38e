import { plain } from "../../core/naming/findNamed";
import { FAN } from "../../core/network/openAir";
import type { TableRun } from "../runsTable/readRun";
import type { WrongRow } from "../runsTable/readWrong";

/** Where branches that cost by the airflows come, or may come, in a table in which rows may be wrong. */
export interface Branches {
  /** Whether a run goes straight on at a junction where such a branch is known. */
  readonly runsOn: (entry: TableRun) => boolean;
  /**
   * Whether what a run costs at its junction hangs on who else comes there: it names a branch, or another row names one, or may,
   * that goes where it goes or nobody knows where.
   */
  readonly mayMeet: (entry: TableRun) => boolean;
}

/** Looks once at who joins whom by a branch. */
export function branchesOf(rows: readonly (TableRun | WrongRow)[]): Branches {
  const known = new Set<string>();
  const possible = new Set<string>();
  const names = new Set<string>();
  for (const row of rows) {
    const { name, to } = "run" in row ? row.run : row.wrong;
    if (name !== null) names.add(plain(name));
    const isKnown = "run" in row && row.run.branch?.plain === false;
    if (isKnown) known.add(plain(to ?? ""));
    if (isKnown || ("wrong" in row && row.mayBranch)) possible.add(plain(to ?? ""));
  }
  const isAnywhere = [...possible].some((to) => to !== FAN && !names.has(to));
  return {
    runsOn: ({ run }) => run.side === "suction" && run.branch === null && known.has(plain(run.to)),
    mayMeet: ({ run }) => (run.branch === null ? isAnywhere || possible.has(plain(run.to)) : !run.branch.plain),
  };
}
