import { fromSI, type Quantity, unitOf } from "../quantities";
import { isWeak, type Provenance, type ReferenceRow } from "../schema";
import { sources } from "../sources";

/** A table as REFERENCE shows it: key first, label second, the last four columns say how far each row can be trusted. */
export interface ReferenceTable {
  readonly name: string; // what people type
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

interface Column {
  readonly name: string;
  readonly unit: string;
}

export type Cell = string | number | null; // null: the source gives nothing

/** One or two columns of a table, and what a row puts there. */
export interface Field<Row> {
  readonly columns: readonly Column[];
  readonly cells: (row: Row) => readonly Cell[];
}

/** Enough digits for any printed value, and no tail of binary rounding. */
const tidy = (value: number, digits = 6): number => Number(value.toPrecision(digits));

export const text = <Row>(name: string, of: (row: Row) => string | null): Field<Row> => ({
  columns: [{ name, unit: "" }],
  cells: (row) => [of(row)],
});

export const number = <Row>(
  name: string,
  unit: string,
  of: (row: Row) => number | null,
  digits?: number,
): Field<Row> => ({
  columns: [{ name, unit }],
  cells: (row) => {
    const value = of(row);
    return [value === null ? null : tidy(value, digits)];
  },
});

/** A quantity kept in SI, shown in both systems side by side. */
export const both = <Row>(name: string, quantity: Quantity, of: (row: Row) => number | null): Field<Row> => {
  const units = [unitOf(quantity, "SI"), unitOf(quantity, "IP")];
  return {
    columns: units.map(({ label }) => ({ name, unit: label })),
    cells: (row) => {
      const value = of(row);
      return units.map((unit) => (value === null ? null : tidy(fromSI(value, unit))));
    },
  };
};

export const aliases = text<{ readonly aliases: readonly string[] }>("also", (row) => row.aliases.join(", "));

const provenanceColumns: readonly Column[] = ["basis", "weak", "source", "where"].map((name) => ({ name, unit: "" }));

export const provenanceCells = (row: Provenance): readonly Cell[] => [
  row.basis,
  isWeak(row) ? "weak" : "",
  sources[row.source].title,
  row.locator,
];

/** Puts columns and rows together; `of` gives what stands before the last four columns. */
export function referenceTable<Row>(
  name: string,
  title: string,
  rows: readonly Row[],
  fields: readonly Field<Row>[],
  provenance: (row: Row) => readonly Cell[],
): ReferenceTable {
  return {
    name,
    title,
    columns: [...fields.flatMap((field) => field.columns), ...provenanceColumns],
    rows: rows.map((row) => [...fields.flatMap((field) => field.cells(row)), ...provenance(row)]),
  };
}

/** A table of keyed rows: key and label before its own columns, the note behind them. */
export const keyedTable = <Row extends ReferenceRow>(
  name: string,
  title: string,
  rows: readonly Row[],
  fields: readonly Field<Row>[],
): ReferenceTable =>
  referenceTable(
    name,
    title,
    rows,
    [
      text("key", (row) => row.key),
      text("label", (row) => row.label),
      ...fields,
      text("note", (row) => row.note ?? ""),
    ],
    provenanceCells,
  );
