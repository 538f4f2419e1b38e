import { DomainError, shown } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import { type Cell, CellErrorValue, type Matrix } from "../cells";
import { refuseCell } from "../cellErrors";
import { DOUBTFUL_MARKS, NO_MARK } from "../../reference/zeroWords";
import { readOpen } from "./openRuns";
import { itemAt } from "../../reference/itemAt";

/** A set of open gates and what it is called. */
export interface Scenario {
  readonly name: string;
  readonly open: ReadonlySet<string>; // plain names
}

/**
 * Reads a table of scenarios, one row each, in one of two shapes: the open runs in one cell between ; or , (with a name in
 * the cell before it), or a heading row of run names with marks below. A blank row stays a blank row (null).
 *
 * @param names of the table's runs, by their plain spelling
 * @throws DomainError for a run that the table does not have
 */
export function readScenarios(sets: Matrix, names: ReadonlyMap<string, string>): (Scenario | null)[] {
  const first = itemAt(sets, 0);
  const marked = first.length > 1 && first.slice(1).some((cell) => typeof cell === "string" && names.has(plain(cell)));
  if (marked && !isListRow(first, names) && !hasListsBelow(sets, names))
    return sets.slice(1).map((line) => markedRow(first, line, names));
  if (first.length > 2) {
    throw new DomainError(
      "scenarios",
      `${sets.length} by ${first.length} cells`,
      "one or two columns with names of open runs, or a heading row of run names with marks below",
    );
  }
  return sets.slice(isHeading(first, names) ? 1 : 0).map((line) => listRow(line, names));
}

/** A row of two cells whose second is a list (or one name) and whose first is no run: a named scenario, not a heading. */
const isListRow = (line: readonly Cell[], names: ReadonlyMap<string, string>): boolean =>
  line.length === 2 && typeof line[0] === "string" && !names.has(plain(line[0])) && !isLabelHeading(line[0]);

/** Two columns whose second goes on with names of runs are names and lists, even where the first scenario is called like a run. */
const hasListsBelow = (sets: Matrix, names: ReadonlyMap<string, string>): boolean =>
  itemAt(sets, 0).length === 2 &&
  (sets.length === 1 || sets.slice(1).some(([, cell]) => typeof cell === "string" && isList(cell, names)));

const isList = (text: string, names: ReadonlyMap<string, string>): boolean =>
  text.split(/[;,\n]/).every((part) => names.has(plain(part)));

const isLabelHeading = (text: string): boolean => ["scenario", "scenarios", "name", "set"].includes(plain(text));

const isHeading = (line: readonly Cell[], names: ReadonlyMap<string, string>): boolean =>
  line.every((cell) => cell === null || (typeof cell === "string" && !names.has(plain(cell)))) &&
  line.some((cell) => typeof cell === "string" && (isLabelHeading(cell) || plain(cell).startsWith("open")));

function listRow(line: readonly Cell[], names: ReadonlyMap<string, string>): Scenario | null {
  const cell = line.at(-1) ?? null;
  const open = readOpen("scenarios", [[cell]], names);
  const label = line.length > 1 ? (line[0] ?? null) : null;
  if (open === null && label === null) return null;
  return { name: labelOf(label ?? cell), open: open ?? new Set() };
}

function markedRow(
  heading: readonly Cell[],
  line: readonly Cell[],
  names: ReadonlyMap<string, string>,
): Scenario | null {
  if (line.every((cell) => cell === null || cell === 0)) return null;
  const open = new Set<string>();
  let label: Cell = null;
  heading.forEach((head, column) => {
    const name = typeof head === "string" ? plain(head) : "";
    const cell = line[column] ?? null;
    const isMarked = names.has(name);
    const belowNone = column > 0 && head === null && isMark(cell);
    if (
      cell instanceof CellErrorValue
        ? isMarked
        : belowNone || ((isMarked || column > 0) && namesOther(cell, name, names))
    )
      // prettier-ignore
      return refuseCell("scenarios", cell, "marks below names of runs, or all names of a scenario in one cell");
    if (isMarked) {
      if (isMark(cell)) open.add(name);
    } else if (column === 0) label = cell;
    else if (head !== null)
      throw unknownName(
        "scenarios",
        [...names.values()].map((key) => ({ key })),
        typeof head === "string" ? head : shown(head),
        "headed by names of runs in the table",
      );
  });
  return { name: label === null ? [...open].join("; ") : labelOf(label), open };
}

/** The name of a run below another's, or below nothing, is no mark: a scenario with a name in each cell is another shape. Nor is a question or a cross. */
const namesOther = (cell: Cell, name: string, names: ReadonlyMap<string, string>): boolean =>
  typeof cell === "string" &&
  plain(cell) !== name &&
  (DOUBTFUL_MARKS.includes(cell.trim().replace("\ufe0f", "")) || names.has(plain(cell)));

/** Anything but a blank, a dash, a zero or a word for no is a mark. */
const isMark = (cell: Cell): boolean =>
  cell !== null && cell !== 0 && cell !== false && !(typeof cell === "string" && NO_MARK.includes(plain(cell).trim()));

const labelOf = (cell: Cell): string => (cell === null || cell instanceof CellErrorValue ? "" : String(cell));
