import type { UnitSystem } from "../../../reference/quantities";

/** What the tables depend on: the units of their figures, and the entries of fitting lists that the book has. */
export interface BlockNeeds {
  readonly units: UnitSystem;
  readonly used: readonly string[];
}

/** One table of the look-up sheet. */
export interface TableBlock {
  readonly title: string;
  readonly columns: readonly string[]; // headers, all different
  readonly rows: readonly (readonly BlockCell[])[];
  readonly inputs: boolean; // whether a reader may change its numbers
  readonly headRows?: number; // so many rows stand first that alone fill some of the columns
}

/** A value, a formula (without "=") once the table has its place, or null for no cell. */
export type BlockCell = string | number | null | ((place: TablePlace) => string);

/** Where a table stands, as formulas on any sheet write it. */
export interface TablePlace {
  /** A column without its header. */
  range(column: string): string;
  /** Of a column the rows that stand first, and those below them. */
  head(column: string): string;
  rest(from: string, to: string): string;
  /** One cell, rows from 0. */
  cell(column: string, row: number): string;
  readonly headers: string;
  readonly all: string;
  /** The row of a key in the first column; null where it is not listed. */
  rowOf(key: string): number | null;
}
