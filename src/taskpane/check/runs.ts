import { findNamed, plain } from "../../core/naming/findNamed";
import { headerName } from "../../core/naming/headerName";
import { isAfterFan } from "../../core/network/openAir";
import { leakColumns, neededColumns, quantityOfColumn } from "../../reference/columnsOfRuns";
import { toSI, type UnitSystem, unitOf } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import type { TransportRow } from "../../reference/schema";
import { transport } from "../../reference/transport";
import { type FoundTable, type LookedThrough, numberIn, tablesWith, textIn } from "./tablesIn";

/** A row of a runs table, in SI; what cannot be read is null or empty, since the functions refuse it in their own words. */
export interface BookRun {
  readonly name: string;
  readonly to: string;
  readonly diameter: number | null; // [m]
  readonly pipe: number; // [m]
  readonly hose: number; // [m]
  readonly noLength: boolean; // nothing stands under Length, which the table has, or Flex
  readonly airflow: number; // [m3/s] wanted
  readonly hood: string; // as typed
  readonly material: string; // as typed
  readonly fittings: string;
  readonly leaks: readonly { readonly column: RunColumn; readonly condition: string }[];
  readonly gated: boolean;
  readonly gateSaid: boolean; // or something that is refused
  readonly shut: boolean;
  readonly device: boolean; // a separator or another with a loss of its own
  readonly deviceSaid: boolean; // or a 0 for none
  readonly discharge: boolean;
  readonly dust: TransportRow; // of its own column, else of the book
  readonly ownDust: string | null; // as typed in its own column; null where nothing is, or no dust that we know
  readonly at: (column: RunColumn) => string; // address of its cell
}

export interface BookRuns {
  readonly sheet: string;
  readonly system: UnitSystem;
  readonly table: FoundTable;
  readonly runs: readonly BookRun[];
}

/** Every runs table of a book, whose ducts carry this dust where a row names no other. */
export function runsIn(sheets: readonly LookedThrough[], dust: TransportRow): BookRuns[] {
  return tablesWith(sheets, neededColumns)
    .map((table) => {
      const system = table.system;
      const names = new Set(table.rows.map((row) => plain(textIn(table.value(row, "Run")))));
      const runs = table.rows.flatMap((row) => runIn(table, row, names, system, dust) ?? []);
      return { sheet: table.sheet, system, table, runs };
    })
    .filter(({ runs }) => runs.length > 0);
}

const LENGTH = headerName("Length");

function runIn(
  table: FoundTable,
  row: number,
  names: ReadonlySet<string>,
  system: UnitSystem,
  dust: TransportRow,
): BookRun | null {
  const text = (column: RunColumn): string => textIn(table.value(row, column));
  const [name, to] = [text("Run"), text("To")];
  if (name === "" || to === "") return null;
  const hasLengths = table.headers.some((header) => header.name === LENGTH);
  const inSI = (column: RunColumn): number | null => {
    const value = numberIn(table.value(row, column));
    return value === null || value <= 0 ? null : toSI(value, unitOf(quantityOfColumn(column), system));
  };
  return {
    name,
    to,
    diameter: inSI("Diameter"),
    pipe: inSI("Length") ?? 0,
    hose: hoseOf(text("Flex"), system),
    noLength: hasLengths && text("Length") === "" && text("Flex") === "",
    airflow: inSI("Airflow") ?? 0,
    hood: text("Hood"),
    material: text("Material"),
    fittings: text("Fittings"),
    leaks: leakColumns
      .map((column) => ({ column, condition: text(column) }))
      .filter(({ condition }) => condition !== ""),
    gated: ["open", "shut"].includes(plain(text("Gate"))),
    gateSaid: !["", "0"].includes(text("Gate")),
    shut: plain(text("Gate")) === "shut",
    device: (numberIn(table.value(row, "Device loss")) ?? 0) !== 0,
    deviceSaid: text("Device loss") !== "",
    discharge: ["", "0"].includes(text("Side"))
      ? isAfterFan(plain(to), (other) => names.has(other))
      : plain(text("Side")) === "discharge",
    dust: findNamed(transport, text("Dust")) ?? dust,
    ownDust: findNamed(transport, text("Dust")) === undefined ? null : text("Dust"),
    at: (column) => table.address(row, column),
  };
}

/** [m] A length of hose, also where words say how it lies; 0 where it is refused. */
function hoseOf(flex: string, system: UnitSystem): number {
  const length = Number(/^[\d.,]+/.exec(flex)?.[0].replace(",", "."));
  return length > 0 ? toSI(length, unitOf("length", system)) : 0;
}

/** Names of runs are compared as the functions do when they join them. */
export const sameName = (one: string, other: string): boolean => plain(one) === plain(other);

/** Which table is meant where a book has several; "" where it has one or none. */
export function whichRuns(tables: readonly BookRuns[]): string {
  const [first, ...others] = tables;
  if (first === undefined || others.length === 0) return "";
  return `This book has ${tables.length} tables of runs: here is that of the sheet ${first.sheet}, the first.`;
}
