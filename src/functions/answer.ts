import { DomainError } from "../core/errors";
import { fromSI, type UnitSystem, unitOf } from "../reference/quantities";
import { readUnits } from "./arguments";
import { type Answered, asError, type Failure, failureOf, NOT_FINITE, raise } from "./cellErrors";
import { type Cell, cellAt, type Range, rangeOf } from "./cells";
import { readerOf } from "./readRule";
import type { Rule, Signature, Takes, Values } from "./signature";

/**
 * A function of single values over cells and ranges, by the spreadsheet's own array rule: equal shapes go item by item,
 * one cell meets all, a column with a row makes a grid.
 *
 * One cell: a failure is raised as the host's error. Several: a wrong item is such an error in its own cell, a blank one an
 * empty text, and the others compute.
 *
 * @param given the arguments as the host handed them over, in the signature's order, and after them the units
 * @param compute the answer in SI from the values of one item, which it must not keep: the next item takes their place
 */
export function answerOf<const T extends Takes>(
  signature: Signature<T>,
  given: readonly unknown[],
  compute: (values: Values<T>, system: UnitSystem) => number,
): Answered[][] {
  const { count, IP, SI } = itemsOf(signature);
  let items = IP;
  let grid: Grid;
  try {
    if (signature.units && readUnits(given[count]) === "SI") items = SI;
    grid = gridOf(items.names, given);
  } catch (error) {
    return raise(failureOf(error, "IP", () => undefined));
  }
  if (grid.rows === 1 && grid.width === 1) {
    const value = items.answer(grid.columns, 0, 0, compute);
    return typeof value === "number" ? [[value]] : raise(value);
  }
  return severalOf(items, grid, compute);
}

function severalOf(items: Items, { columns, rows, width }: Grid, compute: Compute): Answered[][] {
  let [wrong, first] = [0, ""];
  const refused = (failure: Failure): CustomFunctions.Error => {
    if (++wrong === 1) first = failure.sentence;
    if (wrong <= MOST_WRONG) return asError(failure);
    return raise({ kind: "invalidValue", sentence: `more than ${MOST_WRONG} cells are wrong; of the first: ${first}` });
  };
  const groups = neededTogether(items.rules, columns);
  const answer = new Array<Answered[]>(rows);
  for (let row = 0; row < rows; row++) {
    const line = new Array<Answered>(width);
    for (let column = 0; column < width; column++) {
      const value = isBlankItem(groups, row, column) ? "" : items.answer(columns, row, column, compute);
      line[column] = typeof value === "object" ? refused(value) : value;
    }
    answer[row] = line;
  }
  return answer;
}

type Compute = (values: never, system: UnitSystem) => number;

/** What a signature comes to in one unit system, worked out once for all calls. */
interface Items {
  readonly names: readonly string[];
  readonly rules: readonly Rule[];
  readonly answer: (columns: readonly Range[], row: number, column: number, compute: Compute) => number | Failure;
}

interface BothItems extends Readonly<Record<UnitSystem, Items>> {
  readonly count: number; // of arguments before the units
}

const known = new WeakMap<Signature<Takes>, BothItems>();

function itemsOf(signature: Signature<Takes>): BothItems {
  const before = known.get(signature);
  if (before !== undefined) return before;
  const count = Object.keys(signature.takes).length;
  const items = { count, IP: itemsIn(signature, "IP"), SI: itemsIn(signature, "SI") };
  known.set(signature, items);
  return items;
}

function itemsIn({ takes, gives }: Signature<Takes>, system: UnitSystem): Items {
  const names = Object.keys(takes);
  const rules = Object.values(takes);
  const unit = unitOf(gives, system);
  const readers = names.map((name, index) => readerOf(name, rules[index]!, system));
  const values: Record<string, unknown> = Object.fromEntries(names.map((name) => [name, null]));
  const read = new Array<Cell | undefined | typeof NOT_READ>(names.length).fill(NOT_READ); // whose value stands in `values`
  return {
    names,
    rules,
    answer: (columns, row, column, compute) => {
      try {
        for (let index = 0; index < names.length; index++) {
          const cell = columns[index] === LEFT_OUT ? undefined : cellAt(columns[index]!, row, column);
          if (cell === read[index]) continue; // a column often says the same again and again, and so do many calls
          values[names[index]!] = readers[index]!(cell);
          read[index] = cell;
        }
        const value = fromSI(compute(values as never, system), unit);
        return Number.isFinite(value) ? value : NOT_FINITE;
      } catch (error) {
        return failureOf(error, system, (name) => {
          const index = names.indexOf(name);
          if (index < 0) return undefined;
          return { quantity: rules[index]!.quantity, cell: cellAt(columns[index]!, row, column) };
        });
      }
    },
  };
}

const NOT_READ = Symbol("not read");

/** Most cells of one answer: written out they are less than the 5 MB that a host takes at once. */
export const MOST_ANSWERS = 200_000;

/** Most wrong ones among them: beyond that it is the range that is wrong, and to look for the name that is meant takes time. */
export const MOST_WRONG = 1000;

interface Grid {
  readonly columns: readonly Range[]; // one per argument
  readonly rows: number;
  readonly width: number;
}

function gridOf(names: readonly string[], given: readonly unknown[]): Grid {
  const columns = new Array<Range>(names.length);
  let [high, width, rows] = [1, 1, 1];
  for (let index = 0; index < names.length; index++) {
    const range = given[index] == null ? LEFT_OUT : rangeOf(given[index]);
    columns[index] = range;
    if (range.high > high) high = range.high;
    if (range.wide > width) width = range.wide;
    if (range.rows.length > rows) rows = range.rows.length;
  }
  if (high > 1 || width > 1) requireShapes(names, columns, high, width);
  if (rows * width > MOST_ANSWERS)
    throw new DomainError("the answer", `${rows} by ${width} cells`, `at most ${MOST_ANSWERS} cells in all`);
  return { columns, rows, width };
}

/** An argument that is left out is not one whose cell is blank. */
const LEFT_OUT: Range = { rows: [null], high: 1, wide: 1 };

function requireShapes(names: readonly string[], columns: readonly Range[], high: number, width: number): void {
  columns.forEach((range, index) => {
    const fits = (size: number, whole: number): boolean => size === 1 || size === whole;
    if (!fits(range.high, high) || !fits(range.wide, width)) {
      const shape = `${range.high} by ${range.wide} cells`;
      throw new DomainError(
        names[index]!,
        shape,
        `one cell, one row, one column or ${high} by ${width} cells like the other ranges`,
      );
    }
  });
}

/** The ranges of needed cells, those that run the same way together. */
function neededTogether(rules: readonly Rule[], columns: readonly Range[]): Range[][] {
  const groups = new Map<string, Range[]>();
  columns.forEach((range, index) => {
    if (!rules[index]!.needed || (range.high === 1 && range.wide === 1)) return;
    const direction = `${range.high > 1} ${range.wide > 1}`;
    groups.set(direction, [...(groups.get(direction) ?? []), range]);
  });
  return [...groups.values()];
}

/**
 * An item is blank when, among the ranges that run the same way, all needed cells are blank; 0 counts as blank here,
 * since some hosts send blanks as 0.
 */
function isBlankItem(groups: readonly (readonly Range[])[], row: number, column: number): boolean {
  for (const ranges of groups) if (areBlank(ranges, row, column)) return true;
  return false;
}

function areBlank(ranges: readonly Range[], row: number, column: number): boolean {
  for (const range of ranges) {
    const cell = cellAt(range, row, column);
    if (cell !== null && cell !== 0) return false;
  }
  return true;
}
