import type { UnitSystem } from "../../reference/quantities";
import { cellOf } from "../formula/ranges";
import { isOneCell } from "../../sheets/rectangle";
import type { Argument, CallContext, ShownValue } from "./translation";
import { itemAt } from "../../reference/itemAt";

/** One cell of an argument as a formula writes it. */
export interface Element {
  readonly text: string; // a cell, a name, a literal or an expression in brackets
  readonly literal?: string | number | boolean;
  readonly shown?: ShownValue; // what the cell shows now, where it is one
}

/** What an argument gives to a formula: its value, in SI where it has a unit, and what must hold for it. */
export interface Reading {
  readonly value: string;
  readonly checks: readonly string[];
}

/** How an argument is read, by the rule by which the cells read it; null where it is left out. */
export type Reader = (element: Element | null, system: UnitSystem, context: CallContext) => Reading;

/** An expression longer than this, wherever it is used more than once, gets a cell of the workings. */
export const LONG_ARGUMENT = 24;

/** An argument's cell at a place of the answer. A long expression gets a cell of the workings, since it is used more than once. */
export function elementOf(arg: Argument, row: number, column: number, context: CallContext): Element {
  if (arg.range !== undefined && !isOneCell(arg.range))
    return { text: cellOf(arg.range, row, column, context.sheet), shown: shownAt(arg, row, column) };
  const literal = arg.computed === true || arg.range !== undefined ? null : itemAt(itemAt(arg.value, 0), 0);
  if (typeof literal === "object" || literal === null) {
    if (arg.range !== undefined) return { text: arg.text, shown: shownAt(arg, 0, 0) };
    return { text: arg.text.length > LONG_ARGUMENT ? context.workings.cell(arg.text, context.sheet) : `(${arg.text})` };
  }
  return { text: typeof literal === "number" && literal < 0 ? `(${arg.text})` : arg.text, literal };
}

function shownAt({ value }: Argument, row: number, column: number): ShownValue {
  const line = itemAt(value, value.length === 1 ? 0 : row);
  return itemAt(line, line.length === 1 ? 0 : column);
}
