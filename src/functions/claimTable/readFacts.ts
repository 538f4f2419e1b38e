import { DomainError } from "../../core/errors";
import { requireNamed } from "../../core/naming/findNamed";
import { headerName } from "../../core/naming/headerName";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { readNumber } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, type Matrix, toMatrix } from "../cells";
import { inUnit } from "../runsTable/inUnit";
import { type FactKey, type FactName, factNames, type Facts, type NumberFact } from "./factNames";

/**
 * Reads a vendor's facts from two columns, name and value. A heading row is allowed, text in brackets after a name is
 * ignored, and a name without a value (or with 0: some hosts send blanks as 0) is a fact that is not given.
 *
 * @throws DomainError that names the row
 */
export function readFacts(given: unknown, system: UnitSystem): Facts {
  const matrix = toMatrix(given);
  if (matrix[0]!.length !== 2)
    throw new DomainError("facts", `${matrix.length} by ${matrix[0]!.length} cells`, "two columns, name and value");
  const heading = headingOf(matrix);
  const rowOf = new Map<FactKey, number>();
  const facts: Partial<Record<FactKey, string | number>> = {};
  matrix.forEach(([name = null, value = null], row) => {
    if (row === heading || (isBlank(name) && isBlank(value))) return;
    const fact = factOf(name, row);
    const said = `${fact.key} in row ${row + 1} of the facts`;
    const before = rowOf.get(fact.key);
    if (before !== undefined) throw new DomainError(said, value, `given once: row ${before + 1} has it too`);
    rowOf.set(fact.key, row);
    if (!isBlank(value))
      facts[fact.key] = fact.kind === null ? textOf(said, value) : within(said, value, fact.kind, system);
  });
  if (Object.keys(facts).length === 0)
    throw new DomainError(
      "facts",
      null,
      `at least one of ${factNames.map(({ key }) => key).join(", ")}, with its value`,
    );
  return facts as Facts; // each key was read by its own kind
}

const isBlank = (cell: Cell): boolean => cell === null || cell === 0;

/** The place of a first row of two known headings; anything else is read as a fact, so that a misspelt one is not lost. */
function headingOf(matrix: Matrix): number | null {
  const first = matrix.findIndex((line) => !line.every(isBlank));
  const [name, value] = (matrix[first] ?? []).map((cell) => (typeof cell === "string" ? headerName(cell) : ""));
  return ["fact", "facts", "name", "what"].includes(name ?? "") && value !== "" ? first : null;
}

function factOf(name: Cell, row: number): (typeof factNames)[number] & FactName {
  const said = `name in row ${row + 1} of the facts`;
  if (name === null || name instanceof CellErrorValue || typeof name !== "string")
    return refuseCell(said, name, "the name of a fact");
  return requireNamed(said, factNames, headerName(name), "the name of a fact");
}

function textOf(said: string, value: Cell): string | number {
  return typeof value === "string" || typeof value === "number" ? value : refuseCell(said, value, "a number or a text");
}

/** A number in the unit of the call; one that no such thing can have was probably typed in another unit. */
function within(said: string, cell: Cell, { quantity, low, high, unit }: NumberFact, system: UnitSystem): number {
  const label = unit ?? unitOf(quantity, system).label;
  const value = readNumber(said, cell, quantity, system);
  if (!(value >= low && value <= high)) {
    const [from, to] = [low, high].map((end) =>
      unit === undefined ? inUnit(end, quantity, system) : `${end} ${unit}`,
    );
    const hint = `from ${from} to ${to} (the facts are read in ${label})`;
    throw new DomainError(said, fromSI(value, unitOf(quantity, system)), hint);
  }
  return value;
}
