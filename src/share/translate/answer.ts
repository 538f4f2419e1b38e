import type { Quantity, UnitSystem } from "../../reference/quantities";
import { cellOf } from "../formula/ranges";
import { both, fromSIText, isBlankOrZero, NO_ANSWER } from "./expressions/text";
import {
  type Argument,
  type CallContext,
  fixed,
  type ShownValue,
  type Translation,
  type Translator,
} from "./translation";
import { unitsOf } from "./unitsOf";
import { columnsOf, isOneCell, rowsOf } from "../../sheets/rectangle";

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

type Reader = (element: Element | null, system: UnitSystem, context: CallContext) => Reading;

export interface Parameter {
  readonly needed: boolean;
  readonly read: Reader;
}

interface Built {
  readonly value: string; // in SI, or already in the user's unit where `result` is a ratio
  readonly checks?: readonly string[]; // on several arguments together
}

export interface ScalarFunction {
  readonly parameters: readonly Parameter[];
  readonly result: Quantity;
  readonly units: boolean; // whether the argument after the parameters is the unit system
  readonly build: (values: readonly string[], call: BuildCall) => Built;
}

export interface BuildCall {
  readonly elements: readonly (Element | null)[];
  readonly system: UnitSystem;
  readonly context: CallContext;
}

/** A formula longer than this is hard to read: its arguments get cells of the workings. A cell takes 8,192 characters. */
const LONG = 3000;
const LONG_ARGUMENT = 24;

/**
 * A function of single values over cells and ranges, by the array rule of the functions. A wrong cell gives #N/A; in a range
 * of several cells an item whose needed cells are blank gives an empty text.
 */
export const scalar =
  (definition: ScalarFunction): Translator =>
  (args, context) => {
    const { parameters } = definition;
    const units = definition.units ? unitsOf(args[parameters.length] ?? null) : "IP";
    if (units === null) return fixed("its units are worked out by a formula or are none");
    const given = parameters.map((_, index) => args[index] ?? null);
    const rows = Math.max(...given.map((arg) => (arg?.range === undefined ? 1 : rowsOf(arg.range))));
    const columns = Math.max(...given.map((arg) => (arg?.range === undefined ? 1 : columnsOf(arg.range))));
    if (!given.every((arg) => fits(arg, rows, columns))) return fixed("its ranges are of different sizes");
    const one = (row: number, column: number): string => {
      const elements = given.map((arg) => (arg === null ? null : elementOf(arg, row, column, context)));
      const formula = itemFormula(definition, { elements, system: units, context });
      if (rows === 1 && columns === 1) return formula;
      const blank = blankItem(parameters, given, elements);
      return blank === null ? formula : `IF(${blank},"",${formula})`;
    };
    const formulas = Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => one(row, column)),
    );
    return { kind: "cells", formulas } satisfies Translation;
  };

function fits(arg: Argument | null, rows: number, columns: number): boolean {
  if (arg?.range === undefined) return true;
  const [high, wide] = [rowsOf(arg.range), columnsOf(arg.range)];
  return (high === 1 || high === rows) && (wide === 1 || wide === columns);
}

/** An argument's cell at a place of the answer. A long expression gets a cell of the workings, since it is used more than once. */
export function elementOf(arg: Argument, row: number, column: number, context: CallContext): Element {
  if (arg.range !== undefined && !isOneCell(arg.range))
    return { text: cellOf(arg.range, row, column, context.sheet), shown: shownAt(arg, row, column) };
  const literal = arg.computed === true || arg.range !== undefined ? null : arg.value[0]![0]!;
  if (typeof literal === "object" || literal === null) {
    if (arg.range !== undefined) return { text: arg.text, shown: shownAt(arg, 0, 0) };
    return { text: arg.text.length > LONG_ARGUMENT ? context.workings.cell(arg.text, context.sheet) : `(${arg.text})` };
  }
  return { text: typeof literal === "number" && literal < 0 ? `(${arg.text})` : arg.text, literal };
}

function shownAt({ value }: Argument, row: number, column: number): ShownValue {
  const line = value[value.length === 1 ? 0 : row]!;
  return line[line.length === 1 ? 0 : column]!;
}

function itemFormula(definition: ScalarFunction, call: BuildCall): string {
  const { parameters, result, build } = definition;
  const { elements, system, context } = call;
  const readings = parameters.map(({ read }, index) => read(elements[index] ?? null, system, context));
  const whole = (values: readonly string[]): string => {
    const { value, checks = [] } = build(values, call);
    const all = [...new Set([...readings.flatMap((reading) => reading.checks), ...checks])];
    const answer = fromSIText(value, result, system);
    return all.length === 0 ? answer : `IF(${both(all)},${answer},${NO_ANSWER})`;
  };
  const values = readings.map(({ value }) => value);
  const formula = whole(values);
  if (formula.length <= LONG) return formula;
  return whole(values.map((value) => (isShort(value) ? value : context.workings.cell(value, context.sheet))));
}

const isShort = (value: string): boolean => value.length <= LONG_ARGUMENT && !value.includes("(");

/**
 * When an item is blank: among the ranges that run the same way all needed cells are blank or 0. Null where no needed argument
 * is a range.
 */
function blankItem(
  parameters: readonly Parameter[],
  given: readonly (Argument | null)[],
  elements: readonly (Element | null)[],
): string | null {
  const groups = new Map<string, string[]>();
  parameters.forEach(({ needed }, index) => {
    const range = given[index]?.range;
    if (!needed || range === undefined || isOneCell(range)) return;
    const direction = `${rowsOf(range) > 1} ${columnsOf(range) > 1}`;
    groups.set(direction, [...(groups.get(direction) ?? []), isBlankOrZero(elements[index]!.text)]);
  });
  const blanks = [...groups.values()].map(both);
  if (blanks.length === 0) return null;
  return blanks.length === 1 ? blanks[0]! : `OR(${blanks.join(",")})`;
}
