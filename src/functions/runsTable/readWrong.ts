import { DomainError, shown } from "../../core/errors";
import { joiningBranch } from "../../core/fittings/joiningBranch";
import { plain } from "../../core/naming/findNamed";
import type { WrongRun } from "../../core/network/judged/judged";
import type { UnitSystem } from "../../reference/quantities";
import { readFittings } from "../arguments";
import { type Cell, CellErrorValue } from "../cells";
import { type CellReader, readGate, readSide } from "./readRun";

/** A row of a runs table that is refused. */
export interface WrongRow {
  readonly row: number; // place in the table below the header, from 0
  readonly wrong: WrongRun;
  readonly mayBranch: boolean; // it names a branch that costs by airflows, or nobody can tell
}

/** What a refused row says all the same: its name, where it goes, on which side it is, whether it is shut and joins by a branch. */
export function readWrong(
  row: number,
  cell: CellReader,
  isRun: (name: string) => boolean,
  wrong: DomainError,
  system: UnitSystem,
): WrongRow {
  const name = textIn(cell("Run"));
  const label = name === null ? `the run without a name (row ${row + 2})` : `run ${shown(name)} (row ${row + 2})`;
  const to = textIn(cell("To"));
  const side = unlessRefused(() => readSide("Side", cell("Side"), plain(to ?? ""), isRun));
  const gate = unlessRefused(() => readGate(label, name ?? "", cell, null));
  const fittings = cell("Fittings");
  const branch = unlessRefused(() => [
    fittings === null ? null : joiningBranch(readFittings("Fittings", fittings, "any", system)),
  ]);
  const mayBranch = branch === null || branch[0]?.plain === false;
  return { row, wrong: { label, name, to, side, gate, wrong }, mayBranch };
}

const textIn = (cell: Cell): string | null =>
  cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue ? null : String(cell).trim();

function unlessRefused<Value>(read: () => Value): Value | null {
  try {
    return read();
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}
