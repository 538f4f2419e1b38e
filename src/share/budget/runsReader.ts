import { quantityOfColumn } from "../../reference/columnsOfRuns";
import type { UnitSystem } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import { inSI } from "../translate/expressions/text";
import type { BudgetPlace } from "./blockNames";
import type { BudgetLookups } from "./lookups";
import type { RunsTable } from "./runsTable";
import { columnOfError, columnRead } from "./tableCells";
import { isBlank } from "./words";

/** The runs table as the workings hold it. */
export interface RunsSource {
  readonly has: (column: RunColumn) => boolean;
  readonly cell: (column: RunColumn, row: number) => string; // rows from 1; the column must be there
  readonly all: (column: RunColumn) => string;
}

/** What the formulas of a row read: the runs table, the tables that the copy carries, and the workings themselves. */
export interface RunsReader {
  /** In which column of the table an error stands, or an empty text. */
  readonly errorIn: (row: number) => string;
  /** How wide a run is, as its cell has it, for a formula on any sheet. */
  readonly typedDiameter: (row: number) => string;
  readonly place: BudgetPlace;
  readonly source: RunsSource;
  readonly lookups: BudgetLookups;
  /** A number of a column's unit in SI. */
  readonly inSI: (number: string, column: RunColumn) => string;
  /** A number of a column's unit in SI; what a name stands for otherwise. */
  readonly unlessNumber: (cell: string, column: RunColumn, named: string) => string;
  /** A formula where the row is used. */
  readonly used: (row: number, formula: string, unused?: string) => string;
  /** A cell's text for a formula with what stands for a blank in front of it; a column that is not there is that too. */
  readonly optional: (row: number, column: RunColumn, blank: string, read: (cell: string) => string) => string;
  /** A column of numbers in SI. */
  readonly numbers: (column: RunColumn, blank?: string) => (row: number) => string;
}

export function runsReader(
  place: BudgetPlace,
  table: RunsTable,
  lookups: BudgetLookups,
  system: UnitSystem,
): RunsReader {
  const source: RunsSource = {
    has: (column) => table.columns.includes(column),
    cell: (column, row) => place.cell(columnRead(column, table), row),
    all: (column) => place.all(columnRead(column, table)),
  };
  // Added to 0, a text is an error. By itself it would pass for more than any number.
  const toSI: RunsReader["inSI"] = (number, column) => inSI(`(0+${number})`, quantityOfColumn(column), system);
  const unlessNumber: RunsReader["unlessNumber"] = (cell, column, named) =>
    `IF(ISNUMBER(${cell}),${toSI(cell, column)},${named})`;
  const used: RunsReader["used"] = (row, formula, unused = "0") =>
    `IF(${place.cell("used", row)}>0,${formula},${unused})`;
  const optional: RunsReader["optional"] = (row, column, blank, read) => {
    if (!source.has(column)) return blank;
    const cell = source.cell(column, row);
    return `IF(${isBlank(cell)},${blank},${read(cell)})`;
  };
  const numbers: RunsReader["numbers"] =
    (column, blank = "0") =>
    (row) =>
      used(
        row,
        optional(row, column, blank, (cell) => toSI(cell, column)),
      );
  const typedDiameter: RunsReader["typedDiameter"] = (row) =>
    place.onOtherSheets.cell(columnRead("Diameter", table), row);
  const errorIn: RunsReader["errorIn"] = (row) => columnOfError(place, table, row);
  return { errorIn, typedDiameter, place, source, lookups, inSI: toSI, unlessNumber, used, optional, numbers };
}
