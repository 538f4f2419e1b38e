import { findNamed, plain } from "../../core/naming/findNamed";
import { toSI, type UnitSystem, unitOf } from "../../reference/quantities";
import type { TransportRow } from "../../reference/schema";
import { transport } from "../../reference/transport";
import type { Calculated } from "../../sheets/calculated";
import { dustOfBook } from "./namedCells";
import { type FoundTable, numberIn, systemOf, tablesWith, textIn } from "./tablesIn";

/** A row of a runs table, in SI; what cannot be read is null or empty, since the functions refuse it in their own words. */
export interface BookRun {
  readonly name: string;
  readonly to: string;
  readonly diameter: number | null; // [m]
  readonly hose: number; // [m]
  readonly airflow: number; // [m3/s] wanted
  readonly hood: string; // as typed
  readonly material: string; // as typed
  readonly fittings: string;
  readonly leaks: readonly { readonly column: string; readonly condition: string }[];
  readonly shut: boolean;
  readonly discharge: boolean;
  readonly dust: TransportRow; // of its own column, else of the book
  readonly ownDust: string | null; // as typed in its own column; null where nothing is, or no dust that we know
  readonly at: (column: string) => string; // address of its cell
}

export interface BookRuns {
  readonly sheet: string;
  readonly system: UnitSystem;
  readonly table: FoundTable;
  readonly runs: readonly BookRun[];
}

/** Every runs table of a book. */
export function runsIn(book: Calculated): BookRuns[] {
  const dust = dustOfBook(book);
  return tablesWith(book, ["run", "to", "diameter"])
    .map((table) => {
      const system = systemOf(table);
      const runs = table.rows.flatMap((row) => runIn(table, row, system, dust) ?? []);
      return { sheet: table.sheet, system, table, runs };
    })
    .filter(({ runs }) => runs.length > 0);
}

const LEAKS = ["leak", "leak open", "leak shut"];

function runIn(table: FoundTable, row: number, system: UnitSystem, dust: TransportRow): BookRun | null {
  const text = (header: string): string => textIn(table.value(row, header));
  const [name, to] = [text("run"), text("to")];
  if (name === "" || to === "") return null;
  const inSI = (header: string, quantity: "diameter" | "length" | "airflow"): number | null => {
    const value = numberIn(table.value(row, header));
    return value === null || value <= 0 ? null : toSI(value, unitOf(quantity, system));
  };
  return {
    name,
    to,
    diameter: inSI("diameter", "diameter"),
    hose: inSI("flex", "length") ?? 0,
    airflow: inSI("airflow", "airflow") ?? 0,
    hood: text("hood"),
    material: text("material"),
    fittings: text("fittings"),
    leaks: LEAKS.map((column) => ({ column, condition: text(column) })).filter(({ condition }) => condition !== ""),
    shut: plain(text("gate")) === "shut",
    discharge: plain(text("side")) === "discharge",
    dust: findNamed(transport, text("dust")) ?? dust,
    ownDust: findNamed(transport, text("dust")) === undefined ? null : text("dust"),
    at: (column) => table.address(row, column),
  };
}

/** Names of runs are compared as the functions do when they join them. */
export const sameName = (one: string, other: string): boolean => plain(one) === plain(other);
