import { DomainError } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, type Matrix, toMatrix } from "../cells";
import { cellOf, findColumns } from "../runsTable/columns";
import { type Edit, edited } from "../runsTable/editTable";

/** The names of a table's runs, by their plain spelling. */
export function runNames(table: Matrix): ReadonlyMap<string, string> {
  const places = findColumns(table[0]!);
  const body = table.slice(1);
  const names = body.flatMap((_, row) => {
    const cell = cellOf(body, row, places, "Run");
    return cell === null || cell instanceof CellErrorValue ? [] : [String(cell)];
  });
  return new Map(names.map((name) => [plain(name), name]));
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

/** The table with the gates of these runs open and every other gate shut; a run without a gate stays as it is. */
export function withOpenGates(table: Matrix, open: ReadonlySet<string> | null): Matrix {
  if (open === null) return table;
  const places = findColumns(table[0]!);
  if (places.Gate === undefined)
    throw new DomainError("runs", null, `a table with a column "Gate": there is no gate to open or shut`);
  const body = table.slice(1);
  const edits = body.flatMap((_, row): Edit[] => {
    if (cellOf(body, row, places, "Gate") === null) return [];
    const name = cellOf(body, row, places, "Run");
    const isOpen = name !== null && !(name instanceof CellErrorValue) && open.has(plain(String(name)));
    return [{ row, column: "Gate", cell: isOpen ? "open" : "shut" }];
  });
  return edited(table, edits);
}
