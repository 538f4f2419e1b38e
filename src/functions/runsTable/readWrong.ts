import { DomainError, shown } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import type { WrongRun } from "../../core/network/judged/judged";
import { type Cell, CellErrorValue } from "../cells";
import { type CellReader, readGate, readSide } from "./readRun";

/** A row of a runs table that is refused. */
export interface WrongRow {
  readonly row: number; // place in the table below the header, from 0
  readonly wrong: WrongRun;
}

/** What a refused row says all the same: its name, where it goes, on which side it is and whether it is shut. */
export function readWrong(
  row: number,
  cell: CellReader,
  isRun: (name: string) => boolean,
  wrong: DomainError,
): WrongRow {
  const name = textIn(cell("Run"));
  const label = name === null ? `the run without a name (row ${row + 2})` : `run ${shown(name)} (row ${row + 2})`;
  const to = textIn(cell("To"));
  const side = unlessRefused(() => readSide("Side", cell("Side"), plain(to ?? ""), isRun));
  const gate = unlessRefused(() => readGate(label, name ?? "", cell, null));
  return { row, wrong: { label, name, to, side, gate, wrong } };
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
