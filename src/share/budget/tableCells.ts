import type { RunColumn } from "../../reference/runColumns";
import { digitsOf, plainDigitsOf } from "../translate/expressions/digits";
import { quotedText } from "../references";
import type { BlockColumn } from "./block";
import type { BudgetColumn, BudgetPlace, TableColumn } from "./blockNames";
import type { RunsTable } from "./runsTable";
import { noWildcards } from "./words";

/** Stands for an error in the table: a text that nobody types, which no reader takes, and which does not spread as the error would. */
export const ERROR_THERE = "!error";

/** Stands for what is no number: a text that no program computes with, so that the row is refused. */
const NO_NUMBER = '"?"';

const numbers: readonly RunColumn[] = [
  "Airflow",
  "Diameter",
  "Length",
  "K",
  "Device loss",
  "Device airflow",
  "Device exponent",
  "Port suction",
  "Port airflow",
];
const namesOrNumbers: readonly RunColumn[] = ["Material", "Hood", "Leak", "Leak open", "Leak shut"];

/** A cell of the table as the workings take it; some programs count TRUE among the numbers. */
function taken(column: RunColumn, cell: string): string {
  if (numbers.includes(column))
    return `IF(ISLOGICAL(${cell}),${NO_NUMBER},IF(ISNUMBER(${cell}),${cell},IF(TRIM(${cell})="","",${NO_NUMBER})))`;
  if (namesOrNumbers.includes(column))
    return `IF(ISLOGICAL(${cell}),${NO_NUMBER},IF(ISNUMBER(${cell}),${cell},${noWildcards(`${cell}&""`)}))`;
  if (column === "Fittings") return `IF(ISLOGICAL(${cell}),${NO_NUMBER},${asItStands(cell)})`;
  if (column === "Dust") return noWildcards(`${cell}&""`);
  return asItStands(cell);
}

const asItStands = (cell: string): string => `IF(${cell}="","",${cell})`;

/** A number, or a text of digits as its number. */
export function plainNumber(cell: string): string {
  const digits = plainDigitsOf(`TRIM(${cell})`, NO_NUMBER);
  return `IF(ISLOGICAL(${cell}),${NO_NUMBER},IF(ISNUMBER(${cell}),${cell},IF(TRIM(${cell})="","",${digits})))`;
}

/** The same of a cell that may also hold a name; as the K of a hood it may have a decimal comma. */
function nameOrNumber(column: RunColumn, cell: string): string {
  const name = noWildcards(`${cell}&""`);
  const other =
    column === "Hood" ? digitsOf(`SUBSTITUTE(TRIM(${cell}),",",".")`, name) : plainDigitsOf(`TRIM(${cell})`, name);
  return `IF(ISLOGICAL(${cell}),${NO_NUMBER},IF(ISNUMBER(${cell}),${cell},${other}))`;
}

/** In which column of the table an error stands, or an empty text. */
export function columnOfError(place: BudgetPlace, table: RunsTable, row: number): string {
  const typed = (column: RunColumn | undefined): string => place.cell(`typed ${column!}`, row);
  const there = `MATCH(${quotedText(ERROR_THERE)},${typed(table.columns[0])}:${typed(table.columns.at(-1))},0)`;
  return `IFERROR(CHOOSE(${there},${table.columns.map(quotedText).join(",")}),"")`;
}

/** Whether a text of digits is read as its number: where the table has one, and in a hood's K, which people type with a comma. */
const readsDigits = (column: RunColumn, table: RunsTable): boolean =>
  (numbers.includes(column) && table.hasTextOfDigits(column)) ||
  (namesOrNumbers.includes(column) && (column === "Hood" || table.hasTextOfDigits(column)));

/** The columns of the workings in which a table's columns stand: as they are typed, then those that need a step to be read. */
export const tableColumns = (table: RunsTable): TableColumn[] => [
  ...table.columns.map((column) => `typed ${column}` as const),
  ...table.columns.filter((column) => readsDigits(column, table)).map((column) => `read ${column}` as const),
];

/** The one that the workings read. */
export const columnRead = (column: RunColumn, table: RunsTable): TableColumn =>
  readsDigits(column, table) ? `read ${column}` : `typed ${column}`;

/**
 * Every cell of the table by its row within its column's range, never by its own address: so a row that is inserted belongs to
 * the table, one that is deleted or cut leaves no hole, and one that is pasted or sorted is read where it then stands.
 */
export function tableCells(place: BudgetPlace, table: RunsTable): BlockColumn<BudgetColumn>[] {
  const typed = table.columns.map((column): BlockColumn<BudgetColumn> => {
    const read = (cell: string): string => (readsDigits(column, table) ? asItStands(cell) : taken(column, cell));
    const at = place.scalar(`at ${column}`);
    const cell = (row: number): string => `INDEX(${table.column(column)},${row + 1})`;
    const told = `IF(ISERROR(${at}),"",${quotedText(ERROR_THERE)})`; // a column that somebody deleted is as blank as one that was never there
    return {
      name: `typed ${column}`,
      heading: `${column}, as typed`,
      formula: (row) => `IF(${row}>${place.scalar("tableRows")},"",IFERROR(${read(cell(row))},${told}))`,
    };
  });
  const read = table.columns.flatMap((column): BlockColumn<BudgetColumn>[] => {
    if (!readsDigits(column, table)) return [];
    const reading = (cell: string): string =>
      numbers.includes(column) ? plainNumber(cell) : nameOrNumber(column, cell);
    const formula = (row: number): string => reading(place.cell(`typed ${column}`, row));
    return [{ name: `read ${column}`, heading: `${column}, read`, formula }];
  });
  return [...typed, ...read];
}
