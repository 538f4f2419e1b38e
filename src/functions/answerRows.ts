import type { AnswerColumn } from "../reference/answerColumns";
import { headerIn } from "../reference/columnsOfAnswers";
import { fromSI, type UnitSystem, unitOf } from "../reference/quantities";

/** A cell of an answer. */
export type Value = string | number;

/** The header row of an answer. */
export const headerRow = (columns: readonly Omit<AnswerColumn, "key">[], system: UnitSystem): string[] =>
  columns.map((column) => headerIn(column, system));

/**
 * A row of an answer, each value in its column's unit.
 *
 * @param of what stands in each column: SI, text, or null for a cell that stays empty
 */
export function answerRow<Key extends string>(
  columns: readonly (AnswerColumn & { readonly key: Key })[],
  of: Readonly<Partial<Record<Key, Value | null>>>,
  system: UnitSystem,
): Value[] {
  return columns.map(({ key, quantity }) => inUnitOf(quantity, of[key] ?? "", system));
}

export const blankRow = (columns: readonly unknown[]): Value[] => new Array<Value>(columns.length).fill("");

/** A value as its column has it: a number of a quantity in the unit of the answer. */
export const inUnitOf = (quantity: AnswerColumn["quantity"], value: Value, system: UnitSystem): Value =>
  quantity === null || typeof value === "string" ? value : fromSI(value, unitOf(quantity, system));
