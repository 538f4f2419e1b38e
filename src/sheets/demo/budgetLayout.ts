import { cellAddress } from "../address";
import { runColumns, type RunColumn } from "./shed";

/** Where things stand on the budget sheet. Column A holds the checks, so that the tables beside it never meet them. */
export const HEADER = 10; // row of the runs table's header
export const FIRST = HEADER + 1;
export const LAST = FIRST + 11; // twelve rows: nine runs and three to spare
export const ANSWER = LAST + 4; // row of the first cell that BUDGET fills
export const ANSWER_END = ANSWER + (LAST - HEADER) + 1; // its last row when every row of the table is filled: the fan
export const TABLE_COLUMN = 2; // B

export const UNITS_CELL = "B5";
export const DENSITY_CELL = "B6";
export const DUST_LIMIT_CELL = "B7";

export const columnOf = (column: RunColumn): number => TABLE_COLUMN + runColumns.indexOf(column);

/** A column of the runs table without its header. */
export const inTable = (column: RunColumn): string =>
  `${cellAddress(columnOf(column), FIRST)}:${cellAddress(columnOf(column), LAST)}`;

const tableTo = (column: RunColumn): string =>
  `${cellAddress(TABLE_COLUMN, HEADER)}:${cellAddress(columnOf(column), LAST)}`;

export const wholeTable = tableTo("Leak shut");
export const tableWithoutLeaks = tableTo("Side");

/** A column of BUDGET's answer without its header. */
export const answerColumn = (letter: string): string => `$${letter}$${ANSWER + 1}:$${letter}$${ANSWER_END}`;

/** What BUDGET says of the fan, whose row comes after the last filled row of the table. */
export const atFan = (letter: string): string => `INDEX(${answerColumn(letter)},MATCH("Fan",${answerColumn("B")},0))`;
