import type { ReferenceTable } from "../../reference";

export type Row = ReferenceTable["rows"][number];
export type Cell = ReferenceTable["rows"][number][number];

/** What a row says under one name; the same quantity in two units is one value with two parts. */
export interface Value {
  readonly name: string;
  readonly parts: readonly Part[];
}

interface Part {
  readonly cell: Cell;
  readonly unit: string;
  readonly header: string; // of its column, as REFERENCE takes it
}

/** A cell as text, with every digit that the table has. */
export const display = (cell: Cell): string => (cell === null ? "" : String(cell));

/** A number rounded for reading: four digits, whole numbers whole. */
export const brief = (number: number): number => (Number.isInteger(number) ? number : Number(number.toPrecision(4)));

const PROVENANCE = 4; // the last columns: basis, weak, source, where

/** The filled cells of a row but its label and its provenance, neighbours of one name joined. */
export function valuesOf(table: ReferenceTable, row: readonly Cell[]): Value[] {
  const values: Value[] = [];
  table.columns.slice(0, -PROVENANCE).forEach(({ name, unit }, i) => {
    const cell = row[i] ?? null;
    if (i === 1 || display(cell) === "") return;
    const part = { cell, unit, header: unit === "" ? name : `${name} (${unit})` };
    const last = values.at(-1);
    if (last?.name === name) values[values.length - 1] = { name, parts: [...last.parts, part] };
    else values.push({ name, parts: [part] });
  });
  return values;
}
