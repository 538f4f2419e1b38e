import { cellAddress } from "../../src/sheets/address";
import type { Calculated, ShownCell } from "../../src/sheets/calculated";
import type { CellName, SheetCell } from "../../src/sheets/workbook";
import { findingsIn } from "../../src/taskpane/check/findingsIn";
import { type Seen, seenIn } from "../../src/taskpane/check/seenIn";

type Value = ShownCell["value"];

export interface SheetOfTest {
  readonly rows: readonly (readonly Value[])[];
  readonly at?: { readonly column: number; readonly row: number }; // of the first value; A1 where not said
  readonly formulas?: Readonly<Record<string, string>>; // by address
  readonly formats?: Readonly<Record<string, string>>; // by address
}

/** A book typed by hand: what its cells show, and which of them are formulas. */
export function bookOf(sheets: Readonly<Record<string, SheetOfTest>>, names: readonly CellName[] = []): Calculated {
  const entries = Object.entries(sheets).map(
    ([name, { rows, at = { column: 1, row: 1 }, formulas = {}, formats = {} }]) => {
      const shown = new Map<string, ShownCell>();
      rows.forEach((row, down) =>
        row.forEach((value, across) => {
          if (value !== null && value !== "") shown.set(cellAddress(at.column + across, at.row + down), { value });
        }),
      );
      const cells = [...shown].flatMap(([address, { value }]): SheetCell[] => {
        const formula = formulas[address];
        const look = formats[address] === undefined ? {} : { format: formats[address] };
        if (formula !== undefined) return [{ at: address, formula, ...look }];
        return typeof value === "object" && value !== null ? [] : [{ at: address, value, ...look }];
      });
      const sheet = { name, columns: [], tallRows: [], frozen: { rows: 0, columns: 0 }, cells, lists: [], flags: [] };
      return { name, sheet, shown };
    },
  );
  return {
    workbook: { name: "Typed by hand", sheets: entries.map(({ sheet }) => sheet), names },
    shown: new Map(entries.map(({ name, shown }) => [name, shown])),
  };
}

/** What there is to see in such a book. */
export const seenOf = (...book: Parameters<typeof bookOf>): Seen => seenIn(bookOf(...book));

/** What Check finds in such a book. */
export const foundIn = (sheets: Parameters<typeof bookOf>[0]) =>
  findingsIn(seenOf(sheets)).map(({ rule, what, sheet, at }) => ({ rule, what, sheet, at }));

const runsHeader = [
  "Run",
  "To",
  "Airflow (cfm)",
  "Diameter (in)",
  "Flex (ft)",
  "Hood",
  "Fittings",
  "Gate",
  "Leak shut",
];

/** A sound shop of our own invention: nothing in it is to be found. */
export const soundRuns: readonly (readonly Value[])[] = [
  runsHeader,
  ["saw", "main", 400, 4, 3, "flanged end", "elbow 1.5 x2; branch 30", "open", "shut seated"],
  ["planer", "main", 400, 4, 3, "flanged end", "elbow 2", "open", ""],
  ["main", "fan", "", 6, "", "", "elbow 1.5", "", ""],
];

/** The sound runs with one cell changed. */
export const runsWith = (run: string, column: string, value: Value): Value[][] =>
  soundRuns.map((row) => row.map((cell, i) => (row[0] === run && runsHeader[i]!.startsWith(column) ? value : cell)));

export const solveHeader = [
  "Run",
  "Airflow (cfm)",
  "Velocity (fpm)",
  "Static suction (in.w.g.)",
  "Leak (cfm)",
  "Run loss (in.w.g.)",
  "Gate",
  "Note",
];
