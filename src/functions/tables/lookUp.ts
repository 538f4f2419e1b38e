import { DomainError } from "../../core/errors";
import { findNamed, plain, unknownName } from "../../core/naming/findNamed";
import { type ReferenceTable, referenceTables } from "../../reference";
import { titleWithBasis } from "../../reference/citation";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";
import { itemAt } from "../../reference/itemAt";

type Value = string | number;

/** REFERENCE's answer: a table or the rows of a key under its headers, or values each beside its source and basis. */
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
  const rows = rowsOf(found.table, wanted);
  if (header === null) return [headers(found.table), ...rows.map((row) => row.map(shownValue))];
  const [source, basis] = ["source", "basis"].map((name) => found.table.columns.findIndex((one) => one.name === name));
  const place = columnOf(found.table, header);
  return rows.map((row) => [shownValue(itemAt(row, place)), titleWithBasis(String(row[source!]), String(row[basis!]))]);
}

const named = referenceTables.map((table) => ({ key: table.name, table }));

const headerOf = ({ name, unit }: ReferenceTable["columns"][number]): string =>
  unit === "" ? name : `${name} (${unit})`;

const headers = (table: ReferenceTable): string[] => table.columns.map(headerOf);

const shownValue = (value: string | number | null): Value => value ?? "";

function readName(argument: string, given: unknown): string | null {
  const cell = singleCell(argument, given);
  if (cell === null || cell === 0) return null;
  return typeof cell === "string" || typeof cell === "number" ? String(cell) : refuseCell(argument, cell, "a name");
}

/** The row of that key; else all rows of that family, by its name or another spelling ("elbow smooth", "pvc"). */
function rowsOf(table: ReferenceTable, key: string): ReferenceTable["rows"] {
  const wanted = plain(key);
  const also = table.columns.findIndex((column) => column.name === "also");
  const keyOf = (row: Row): string => plain(String(row[0]));
  const spellings = (row: Row): string[] =>
    also < 0
      ? []
      : String(row[also] ?? "")
          .split(", ")
          .map(plain);
  const ways: ((row: Row) => boolean)[] = [
    (row) => keyOf(row) === wanted,
    (row) => spellings(row).includes(wanted),
    (row) => /^ \d/.test(afterName(keyOf(row), wanted)),
  ];
  for (const way of ways) {
    const rows = table.rows.filter(way);
    if (rows.length > 0) return rows;
  }
  throw unknownName(
    "key",
    table.rows.map((row) => ({ key: String(row[0]) })),
    key,
    `a key of the table "${table.name}"`,
  );
}

type Row = ReferenceTable["rows"][number];

/** What follows a family's name in the key of one of its rows: " 1.5" of "elbow smooth 1.5". */
const afterName = (key: string, name: string): string => (key.startsWith(name) ? key.slice(name.length) : "");

/** A column by its header, with or without the unit; without it the first of that name. */
function columnOf(table: ReferenceTable, header: string): number {
  const wanted = plain(header);
  const exact = table.columns.findIndex((column) => plain(headerOf(column)) === wanted);
  const place = exact >= 0 ? exact : table.columns.findIndex((column) => plain(column.name) === wanted);
  if (place < 0)
    throw unknownName(
      "column",
      table.columns.map((column) => ({ key: headerOf(column) })),
      header,
      `a column of the table "${table.name}"`,
    );
  return place;
}
