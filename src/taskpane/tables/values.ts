import type { ReferenceTable } from "../../reference";

type Cell = ReferenceTable["rows"][number][number];

/** What a row says under one name; the same quantity in two units is one value with two parts. */
export interface Value {
  readonly name: string;
  readonly parts: readonly { readonly cell: Cell; readonly unit: string }[];
}

/** A cell as text, with every digit that the table has. */
export const display = (cell: Cell): string => (cell === null ? "" : String(cell));

/** A number rounded for reading: four digits, whole numbers whole. */
export const brief = (number: number): number => (Number.isInteger(number) ? number : Number(number.toPrecision(4)));

/** The filled cells of a row but its label and its provenance (the last four), neighbours of one name joined. */
export function valuesOf(table: ReferenceTable, row: readonly Cell[]): Value[] {
  const values: Value[] = [];
  table.columns.slice(0, -4).forEach(({ name, unit }, i) => {
    const cell = row[i] ?? null;
    if (i === 1 || display(cell) === "") return;
    const last = values.at(-1);
    if (last?.name === name) values[values.length - 1] = { name, parts: [...last.parts, { cell, unit }] };
    else values.push({ name, parts: [{ cell, unit }] });
  });
  return values;
}

const ONLY_IN_DETAILS = ["key", "also", "note"];

const inShort = ({ parts }: Value): string =>
  parts.map(({ cell, unit }) => `${typeof cell === "number" ? brief(cell) : display(cell)} ${unit}`.trim()).join(" = ");

/** A row at a glance: its values rounded; the ends of a range are left out where both are the value itself. */
export function glance(table: ReferenceTable, row: readonly Cell[]): { name: string; text: string }[] {
  const lines = valuesOf(table, row)
    .filter(({ name }) => !ONLY_IN_DETAILS.includes(name))
    .map((value) => ({ name: value.name, text: inShort(value) }));
  const [first, ...others] = lines;
  if (first === undefined) return [];
  const isEnd = ({ name }: { name: string }): boolean => name === "low" || name === "high";
  const noRange = others.filter(isEnd).every(({ text }) => text === first.text);
  return [first, ...(noRange ? others.filter((line) => !isEnd(line)) : others)];
}
