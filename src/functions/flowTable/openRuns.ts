import { DomainError } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, toMatrix } from "../cells";
import type { OpenGates } from "../runsTable/readRun";
import type { TableReader } from "../runsTable/readRuns";

/**
 * The runs whose gates a call opens, all others being shut.
 *
 * @throws DomainError for a run that the table does not have, and for a table without gates
 */
export function openedBy(given: unknown, table: TableReader): OpenGates {
  const open = readOpen("open", given, table.names);
  if (open !== null) requireGates(table);
  return open;
}

/** Gates can only be set in a table that has a column for them. */
export function requireGates({ hasGates }: TableReader): void {
  if (!hasGates) throw new DomainError("runs", null, `a table with a column "Gate": there is no gate to open or shut`);
}

/**
 * Names of open runs as people write them: one cell with names between ; or , or one name per cell. "all" and "none" are
 * understood where no run is called so.
 *
 * @returns the plain names; null where nothing is written
 * @throws DomainError for a run that the table does not have, with the nearest names
 */
export function readOpen(
  argument: string,
  given: unknown,
  names: ReadonlyMap<string, string>,
): ReadonlySet<string> | null {
  const cells = toMatrix(given)
    .flat()
    .filter((cell) => cell !== null && cell !== 0);
  if (cells.length === 0) return null;
  const written = cells.flatMap((cell) => splitNames(argument, cell, names));
  const open = new Set<string>();
  for (const name of written) {
    const wanted = plain(name);
    if (names.has(wanted)) open.add(wanted);
    else if (wanted === "all") for (const every of names.keys()) open.add(every);
    else if (wanted !== "none")
      throw unknownName(
        argument,
        [...names.values()].map((key) => ({ key })),
        name,
        "names of runs in the table",
      );
  }
  return open;
}

function splitNames(argument: string, cell: Cell, names: ReadonlyMap<string, string>): string[] {
  if (cell === null || cell instanceof CellErrorValue || typeof cell === "boolean")
    return refuseCell(argument, cell, "names of runs");
  const text = String(cell);
  if (names.has(plain(text))) return [text];
  return text.split(/[;,\n]/).filter((part) => part.trim() !== "");
}
