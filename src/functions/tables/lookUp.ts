import { DomainError } from "../../core/errors";
import { findNamed, plain, unknownName } from "../../core/naming/findNamed";
import { type ReferenceTable, referenceTables } from "../../reference";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";

type Value = string | number;

/** REFERENCE's answer: a table or a row under its headers, or a value beside its source. */
export function lookUp(table: unknown, key: unknown, column: unknown): Value[][] {
  const name = readName("table", table);
  if (name === null) return refuseCell("table", null, `a name: ${referenceTables.map((one) => one.name).join(", ")}`);
  const found = findNamed(named, name);
  if (found === undefined) throw unknownName("table", named, name, "the name of a table");
  const wanted = readName("key", key);
  const header = readName("column", column);
  if (wanted === null) {
    if (header !== null) throw new DomainError("key", null, "given beside a column");
    return [headers(found.table), ...found.table.rows.map((row) => row.map(shownValue))];
  }
  const row = rowOf(found.table, wanted);
  if (header === null) return [headers(found.table), row.map(shownValue)];
  const source = found.table.columns.findIndex((one) => one.name === "source");
  return [[shownValue(row[columnOf(found.table, header)]!), shownValue(row[source]!)]];
}

const named = referenceTables.map((table) => ({ key: table.name, table }));

const headerOf = ({ name, unit }: ReferenceTable["columns"][number]): string => (unit === "" ? name : `${name} (${unit})`);

const headers = (table: ReferenceTable): string[] => table.columns.map(headerOf);

const shownValue = (value: string | number | null): Value => value ?? "";

function readName(argument: string, given: unknown): string | null {
  const cell = singleCell(argument, given);
  if (cell === null || cell === 0) return null;
  return typeof cell === "string" || typeof cell === "number" ? String(cell) : refuseCell(argument, cell, "a name");
}

function rowOf(table: ReferenceTable, key: string): ReferenceTable["rows"][number] {
  const rows = table.rows.map((row) => ({ key: String(row[0]), row }));
  const found = findNamed(rows, key);
  if (found === undefined) throw unknownName("key", rows, key, `a key of the table "${table.name}"`);
  return found.row;
}

/** A column by its header, with or without the unit; without it the first of that name. */
function columnOf(table: ReferenceTable, header: string): number {
  const wanted = plain(header);
  const exact = table.columns.findIndex((column) => plain(headerOf(column)) === wanted);
  const place = exact >= 0 ? exact : table.columns.findIndex((column) => plain(column.name) === wanted);
  if (place < 0) throw unknownName("column", table.columns.map((column) => ({ key: headerOf(column) })), header, `a column of the table "${table.name}"`);
  return place;
}
