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
  { takes, gives, units }: Signature<T>,
  given: readonly unknown[],
  compute: (values: Values<T>, system: UnitSystem) => number,
): Answered[][] {
  const names = Object.keys(takes);
  const rules = Object.values(takes);
  let system: UnitSystem = "IP";
  let grid: Grid;
  try {
    if (units) system = readUnits(given[names.length]);
    grid = gridOf(names, given);
  } catch (error) {
    return raise(failureOf(error, "IP", () => undefined));
  }
  const unit = unitOf(gives, system);
  const readers = names.map((name, index) => readerOf(name, rules[index]!, system, given[index] != null));
  const values: Record<string, unknown> = {};
  const read = new Array<Cell | undefined>(names.length).fill(undefined); // whose value stands in `values`
  const one = (row: number, column: number): number | Failure => {
    try {
      for (let index = 0; index < names.length; index++) {
        const cell = cellAt(grid.columns[index]!, row, column);
        if (cell === read[index]) continue; // a column often says the same again and again
        read[index] = undefined;
        values[names[index]!] = readers[index]!(cell);
        read[index] = cell;
      }
      const value = fromSI(compute(values as Values<T>, system), unit);
      return Number.isFinite(value) ? value : NOT_FINITE;
    } catch (error) {
      return failureOf(error, system, (name) => {
        const index = names.indexOf(name);
        if (index < 0) return undefined;
        return { quantity: rules[index]!.quantity, cell: cellAt(grid.columns[index]!, row, column) };
      });
    }
  };
  if (grid.rows === 1 && grid.width === 1) {
    const value = one(0, 0);
    return typeof value === "number" ? [[value]] : raise(value);
  }
  let [wrong, first] = [0, ""];
  const refused = (failure: Failure): CustomFunctions.Error => {
    if (++wrong === 1) first = failure.sentence;
    if (wrong <= MOST_WRONG) return asError(failure);
    return raise({ kind: "invalidValue", sentence: `more than ${MOST_WRONG} cells are wrong; of the first: ${first}` });
  };
  const groups = neededTogether(rules, grid.columns);
  const answer = new Array<Answered[]>(grid.rows);
  for (let row = 0; row < grid.rows; row++) {
    const line = new Array<Answered>(grid.width);
    for (let column = 0; column < grid.width; column++) {
      const value = isBlankItem(groups, row, column) ? "" : one(row, column);
      line[column] = typeof value === "object" ? refused(value) : value;
    }
    answer[row] = line;
  }
  return answer;
}

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
  const columns = names.map((_, index) => rangeOf(given[index]));
  const high = Math.max(...columns.map((range) => range.high));
  const width = Math.max(...columns.map((range) => range.wide));
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
  const rows = Math.max(...columns.map((range) => range.rows.length));
  if (rows * width > MOST_ANSWERS)
    throw new DomainError("the answer", `${rows} by ${width} cells`, `at most ${MOST_ANSWERS} cells in all`);
  return { columns, rows, width };
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
const isBlankItem = (groups: readonly (readonly Range[])[], row: number, column: number): boolean =>
  groups.some((ranges) =>
    ranges.every((range) => {
      const cell = cellAt(range, row, column);
      return cell === null || cell === 0;
    }),
  );
