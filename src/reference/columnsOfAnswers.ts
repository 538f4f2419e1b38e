import type { AnswerColumn } from "./answerColumn";
import { type UnitSystem, unitOf } from "./quantities";
import { itemAt } from "./itemAt";

/** The lists of the answers' columns as their writers and readers ask them. */

/** What stands above a column: "Airflow (cfm)". */
export const headerIn = ({ header, quantity }: Omit<AnswerColumn, "key">, system: UnitSystem): string =>
  quantity === null ? header : `${header} (${unitOf(quantity, system).label})`;

/** How many columns stand before one. */
export const placeOfColumn = <Key extends string>(columns: readonly { readonly key: Key }[], key: Key): number =>
  columns.findIndex((column) => column.key === key);

/** The header of a column without its unit. */
export const headerOfColumn = <Column extends AnswerColumn>(columns: readonly Column[], key: Column["key"]): string =>
  itemAt(columns, placeOfColumn(columns, key)).header;
