import type { Signature, Takes } from "../../functions/signature";
import type { UnitSystem } from "../../reference/quantities";
import { columnsOf, isOneCell, rowsOf } from "../../sheets/rectangle";
import { type Element, elementOf, LONG_ARGUMENT, type Reader, type Reading } from "./element";
import { both, fromSIText, isBlankOrZero, NO_ANSWER } from "./expressions/text";
import { readerOf } from "./readerOf";
import { type Argument, type CallContext, fixed, type Translation, type Translator } from "./translation";
import { unitsOf } from "./unitsOf";
import { itemAt } from "../../reference/itemAt";

type ByName<T extends Takes, Value> = Readonly<Record<keyof T, Value>>;

/** A value in SI; with what must hold for several arguments together, and whether it is in the user's unit already. */
type Built = string | { readonly value: string; readonly checks?: readonly string[]; readonly isInUsersUnit?: true };

type Build<T extends Takes> = (values: ByName<T, string>, call: BuildCall<T>) => Built;

export interface BuildCall<T extends Takes = Takes> {
  readonly elements: ByName<T, Element | null>;
  readonly system: UnitSystem;
  readonly context: CallContext;
}

/** A formula longer than this is hard to read: its arguments get cells of the workings. A cell takes 8,192 characters. */
const LONG = 3000;

/**
 * A function of single values over cells and ranges, by the array rule of the functions and their own signature. A wrong cell
 * gives #N/A; in a range of several cells an item whose needed cells are blank gives an empty text.
 *
 * @param own readers of arguments that the formula takes in its own way
 */
export const scalar =
  <const T extends Takes>(signature: Signature<T>, build: Build<T>, own: Partial<ByName<T, Reader>> = {}): Translator =>
  (args, context) => {
    const names: readonly (keyof T)[] = Object.keys(signature.takes);
    const system = signature.units ? unitsOf(args[names.length] ?? null, context) : "IP";
    if (system === null) return fixed("its units are worked out by a formula or are none");
    const given = names.map((_, index) => args[index] ?? null);
    const rows = Math.max(...given.map((arg) => (arg?.range === undefined ? 1 : rowsOf(arg.range))));
    const columns = Math.max(...given.map((arg) => (arg?.range === undefined ? 1 : columnsOf(arg.range))));
    if (!given.every((arg) => fits(arg, rows, columns))) return fixed("its ranges are of different sizes");
    const readers = names.map((name) => own[name] ?? readerOf(signature.takes[name]!));
    const one = (row: number, column: number): string => {
      const elements = given.map((arg) => (arg === null ? null : elementOf(arg, row, column, context)));
      const readings = readers.map((read, index) => read(itemAt(elements, index), system, context));
      const call = { elements: byName(names, elements), system, context };
      const formula = itemFormula(signature, readings, (values) => build(byName(names, values), call), call);
      if (rows === 1 && columns === 1) return formula;
      const blank = blankItem(signature, given, elements);
      return blank === null ? formula : `IF(${blank},"",${formula})`;
    };
    const formulas = Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => one(row, column)),
    );
    return { kind: "cells", formulas } satisfies Translation;
  };

const byName = <T extends Takes, Value>(names: readonly (keyof T)[], values: readonly Value[]): ByName<T, Value> =>
  Object.fromEntries(names.map((name, index) => [name, itemAt(values, index)])) as ByName<T, Value>;

function fits(arg: Argument | null, rows: number, columns: number): boolean {
  if (arg?.range === undefined) return true;
  const [high, wide] = [rowsOf(arg.range), columnsOf(arg.range)];
  return (high === 1 || high === rows) && (wide === 1 || wide === columns);
}

function itemFormula(
  { gives }: Signature<Takes>,
  readings: readonly Reading[],
  build: (values: readonly string[]) => Built,
  { system, context }: Pick<BuildCall, "system" | "context">,
): string {
  const whole = (values: readonly string[]): string => {
    const built = build(values);
    const { value, checks = [], isInUsersUnit = false } = typeof built === "string" ? { value: built } : built;
    const all = [...new Set([...readings.flatMap((reading) => reading.checks), ...checks])];
    const answer = isInUsersUnit ? value : fromSIText(value, gives, system);
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
  { takes }: Signature<Takes>,
  given: readonly (Argument | null)[],
  elements: readonly (Element | null)[],
): string | null {
  const groups = new Map<string, string[]>();
  Object.values(takes).forEach(({ needed }, index) => {
    const [range, element] = [given[index]?.range, elements[index] ?? null];
    if (!needed || range === undefined || element === null || isOneCell(range)) return;
    const direction = `${rowsOf(range) > 1} ${columnsOf(range) > 1}`;
    groups.set(direction, [...(groups.get(direction) ?? []), isBlankOrZero(element.text)]);
  });
  const blanks = [...groups.values()].map(both);
  if (blanks.length === 0) return null;
  return blanks.length === 1 ? itemAt(blanks, 0) : `OR(${blanks.join(",")})`;
}
