import type { Quantity } from "./quantities";
import { type RunColumn, type RunColumnRow, runColumns, type ShownRunColumn } from "./runColumns";

/** The list of columns as its readers ask it. */
type Row = RunColumnRow & { readonly name: RunColumn };
type ShownRow = Row & { readonly name: ShownRunColumn; readonly shown: NonNullable<Row["shown"]> };

const rows: readonly Row[] = runColumns;
const namesOf = (some: readonly Row[]): readonly RunColumn[] => some.map(({ name }) => name);

export const allColumns = namesOf(rows);
export const neededColumns = namesOf(rows.filter(({ needed }) => needed));
/** Those that make a row of the table one of its runs when they are filled: a row with none of them is passed over, as one of totals. */
export const columnsOfAnyRun = namesOf(rows.filter(({ needed, meansARun }) => needed ?? meansARun));
/** Of the needed ones, those whose header is the same in all units. */
export const neededNames = namesOf(rows.filter(({ needed, kind }) => needed && kind === "words"));
export const leakColumns = namesOf(rows.filter(({ leak }) => leak));
export const columnsForGainsAlone = namesOf(rows.filter(({ forGainsAlone }) => forGainsAlone));

/** Those of the sheet Runs, in its order. */
export const shownColumns = rows.filter((row): row is ShownRow => row.shown !== null);

/** In what the numbers of a column are; null where it holds words alone. */
export const quantityIn = (column: RunColumn): Quantity | null => rows.find(({ name }) => name === column)!.quantity;

/** The same of a column that holds numbers. */
export function quantityOfColumn(column: RunColumn): Quantity {
  const quantity = quantityIn(column);
  if (quantity === null) throw new Error(`no numbers stand in the column ${column}`);
  return quantity;
}

/**
 * The words by which a formula tells the headers of leaks from all others: those of their names that hold none of the
 * others. A test holds that no other header has them.
 */
export const leakWords: readonly string[] = leakColumns.filter(
  (name) => !leakColumns.some((other) => other !== name && name.includes(other)),
);
