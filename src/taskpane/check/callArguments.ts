import type { Calculated } from "../../sheets/calculated";
import type { Cell, Matrix } from "../functions/callFunction";
import type { BookAnswer } from "./answersIn";
import { shownByName } from "./namedCells";
import { type BookRuns, sameName } from "./runs";
import type { ShownValue } from "./tablesIn";

/** What of a book a cell function is given. */

/** The runs table as a function takes it. */
export const matrixOf = ({ table }: BookRuns): Matrix => [
  table.headers.map(({ name, unit }) => (unit === "" ? name : `${name} (${unit})`)),
  ...table.rows.map((row) => table.headers.map(({ name }) => cellOf(table.value(row, name)))),
];

/** The named cell density, as the sheets hand it over: what is no number there is refused here, too. Null where the book has none. */
export function densityIn(book: Calculated): Matrix | null {
  const value = cellOf(shownByName(book, "density"));
  return value === null ? null : [[value]];
}

/** What a cell shows, as a function takes it; an error as its name. */
export const cellOf = (value: ShownValue): Cell => (typeof value === "object" && value !== null ? value.error : value);

/** The answer of SOLVE that the book has for these runs, whose gates it tells; none where the table's gates hold. */
export const solvedIn = (answers: readonly BookAnswer[], { runs }: BookRuns): BookAnswer | undefined =>
  answers.find(
    ({ of, rows }) =>
      of === "SOLVE" &&
      rows.some(({ gate }) => isOpen(gate)) &&
      rows.every(({ run }) => runs.some(({ name }) => sameName(name, run))),
  );

/** Its open gates, as SOLVE takes them. */
export function openIn(answer: BookAnswer | undefined): Matrix | null {
  const open = answer?.rows.filter(({ gate }) => isOpen(gate)).map(({ run }) => run) ?? [];
  return open.length === 0 ? null : [[open.join("; ")]];
}

const isOpen = (gate: string): boolean => gate.toLowerCase() === "open";
