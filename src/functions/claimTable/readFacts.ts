import { DomainError, shown } from "../../core/errors";
import { factName } from "../../core/naming/factName";
import { findNamed, requireNamed } from "../../core/naming/findNamed";
import {
  type Amount,
  type ClaimFact,
  type ClaimFactKey,
  claimFacts,
  ofAll,
  severalSpelt,
  severalWords,
  type Words,
} from "../../reference/claimFacts";
import type { UnitSystem } from "../../reference/quantities";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, type Matrix, toMatrix } from "../cells";
import type { Facts, Fault } from "./facts";
import { isNoRating, readAmount } from "./readAmount";
import { type Names, namesOf, namesOfPair } from "./unitInName";

type Known = ClaimFact & { readonly key: ClaimFactKey };

/**
 * Reads a vendor's facts from two columns, name and value. A heading row is allowed, text in brackets after a name is
 * ignored unless it is the value's unit, and a name without a value (or with 0: some hosts send blanks as 0) is a fact that is not given. A row that cannot be read is told,
 * and the others stand.
 *
 * @throws DomainError where nothing is given that could be read
 */
export function readFacts(given: unknown, system: UnitSystem): { facts: Facts; faults: readonly Fault[] } {
  const matrix = toMatrix(given);
  if (matrix[0]!.length !== 2)
    throw new DomainError("facts", `${matrix.length} by ${matrix[0]!.length} cells`, "two columns, name and value");
  const heading = headingOf(matrix);
  const facts: Partial<Record<keyof Facts, unknown>> = {};
  const faults: Fault[] = [];
  const twice = repeatedIn(matrix, heading);
  matrix.forEach(([name = null, value = null], row) => {
    if (row === heading || (isBlank(name) && isBlank(value))) return;
    let called = `row ${row + 1}`;
    try {
      const fact = factOf(name, row);
      called = `${fact.key}, ${called}`;
      const said = `${fact.key} in row ${row + 1} of the facts`;
      if (isBlank(value)) return;
      const rows = twice.get(fact.key) ?? [row + 1];
      if (rows.length > 1) throw new DomainError(said, value, `given once; it stands in rows ${rows.join(" and ")}`);
      const named = typeof name === "string" ? name : "";
      const found = read(said, value, fact, system, named);
      const isRated = fact.takes.kind !== "amount" || !isNoRating(value, named, fact.takes);
      facts[isRated ? fact.key : "unrated power"] = found;
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      faults.push({
        row: called,
        typed: value instanceof CellErrorValue ? value.inWords : asTyped(value),
        why: error.message,
      });
    }
  });
  if (faults.length === 0 && Object.keys(facts).length === 0)
    throw new DomainError(
      "facts",
      null,
      `at least one of ${claimFacts.map(({ key }) => key).join(", ")}, with its value`,
    );
  return { facts: facts as Facts, faults }; // each key was read by its own kind
}

const isBlank = (cell: Cell): boolean => cell === null || cell === 0;
const asTyped = (cell: Cell): string | number =>
  typeof cell === "number" || typeof cell === "string" ? cell : typeof cell === "boolean" ? shown(cell) : "";

/** The place of a first row of two known headings; anything else is read as a fact, so that a misspelt one is not lost. */
function headingOf(matrix: Matrix): number | null {
  const first = matrix.findIndex((line) => !line.every(isBlank));
  const [name, value] = (matrix[first] ?? []).map((cell) => (typeof cell === "string" ? factName(cell) : ""));
  return ["fact", "facts", "name", "what"].includes(name ?? "") && value !== "" ? first : null;
}

/** The rows in which each fact has a value, so that the order of two never decides which one counts. */
function repeatedIn(matrix: Matrix, heading: number | null): Map<ClaimFactKey, number[]> {
  const rows = new Map<ClaimFactKey, number[]>();
  matrix.forEach(([name = null, value = null], row) => {
    const fact =
      typeof name === "string" && row !== heading && !isBlank(value)
        ? findNamed<Known>(claimFacts, factName(name))
        : undefined;
    if (fact !== undefined) rows.set(fact.key, [...(rows.get(fact.key) ?? []), row + 1]);
  });
  return rows;
}

function factOf(name: Cell, row: number): Known {
  const said = `name in row ${row + 1} of the facts`;
  if (typeof name !== "string") return refuseCell(said, name, "the name of a fact");
  return requireNamed<Known>(said, claimFacts, factName(name), "the name of a fact");
}

function read(said: string, value: Cell, { takes }: Known, system: UnitSystem, name: string): unknown {
  switch (takes.kind) {
    case "amount":
      if (takes.several !== undefined && tellsOfSeveral(name)) return refuseCell(said, value, ofAll(takes.several));
      return readAmount(said, value, takes, system, namesOf(name));
    case "words":
      return readWord(said, value, takes);
    case "pair":
      return readPair(said, value, system, namesOfPair(name));
    case "text":
      return typeof value === "string" || typeof value === "number"
        ? value
        : refuseCell(said, value, "a number or a text");
  }
}

function tellsOfSeveral(name: string): boolean {
  const plain = severalSpelt.reduce((said, [as, plainly]) => said.replaceAll(as, plainly), name.toLowerCase());
  return severalWords.some((word) => plain.includes(word));
}

function readWord(said: string, value: Cell, { words }: Words): string {
  const found = typeof value === "string" || typeof value === "number" ? findNamed(words, String(value)) : undefined;
  return found?.key ?? refuseCell(said, value, `one of ${words.map(({ key }) => key).join(", ")}`);
}

const amountOf = (key: "airflow" | "pressure"): Amount => claimFacts.find((fact) => fact.key === key)!.takes as Amount;

/** "1000 cfm at 10 in.w.g." */
function readPair(said: string, value: Cell, system: UnitSystem, names: Names): Facts["rated point"] {
  const parts = typeof value === "string" ? value.split(/\s*@\s*|\s+at\s+/i) : [];
  if (parts.length !== 2) return refuseCell(said, value, `an airflow at a pressure in one cell, such as "1000 at 8"`);
  const [airflow, pressure] = parts as [string, string];
  return {
    airflow: readAmount(said, airflow, amountOf("airflow"), system, names),
    pressure: readAmount(said, pressure, amountOf("pressure"), system, names),
  };
}
