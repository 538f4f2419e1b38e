import type { ReferenceTable } from "../../reference";
import { brief } from "./values";
import { finder, fold, numbersMeant, wordsOf } from "./words";

export type Row = ReferenceTable["rows"][number];

/** A row as it is looked through: where it stands, and its texts and numbers ready for comparing. */
export interface Entry {
  readonly id: string;
  readonly table: ReferenceTable;
  readonly row: Row;
  readonly name: string; // key and label, folded
  readonly text: string; // every text of the row, with the names of its table and columns, folded
  readonly numbers: ReadonlySet<number>;
}

const PROVENANCE = 4; // the last columns: basis, weak, source, where

/** Every row of every table, ready for searching. */
export function entriesOf(tables: readonly ReferenceTable[]): Entry[] {
  return tables.flatMap((table) => {
    const columns = table.columns.slice(0, -PROVENANCE).map(({ name }) => name);
    const about = [table.name, table.title, ...columns].join("\n");
    return table.rows.map((row, i) => {
      const texts = row.filter((cell) => typeof cell === "string");
      const numbers = row.filter((cell) => typeof cell === "number");
      return {
        id: `${table.name} ${i}`,
        table,
        row,
        name: fold(row.slice(0, 2).join("\n")),
        text: fold([...texts, about].join("\n")),
        numbers: new Set(numbers.flatMap((number) => [number, brief(number)])),
      };
    });
  });
}

/** The rows that have every word of the search, in words or as a number; where only a note has it, they come last. */
export function find(entries: readonly Entry[], search: string): Entry[] {
  const words = wordsOf(search).map((word) => ({ isIn: finder(word), meant: numbersMeant(word) }));
  const hasAll = (text: string, { numbers }: Entry): boolean =>
    words.every(({ isIn, meant }) => isIn(text) || meant.some((number) => numbers.has(number)));
  const found = entries.filter((entry) => hasAll(entry.text, entry));
  const byName = found.filter((entry) => hasAll(entry.name, entry));
  return [...new Set([...byName, ...found])];
}
