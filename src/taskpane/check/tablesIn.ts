import { headerName } from "../../core/naming/headerName";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { factorOfTyped } from "../../reference/typedUnit";
import { cellAddress, placeOf } from "../../sheets/address";
import type { Calculated, Extent, ShownCell } from "../../sheets/calculated";
import { itemAt, lastOf } from "../../reference/itemAt";
import { percentText, showsPercent } from "../../sheets/showsPercent";
import { showsDay } from "../../sheets/showsDay";
import type { Sheet } from "../../sheets/workbook";
import { type UnitsTold, unitsTold } from "./named/unitsTold";

export type ShownValue = ShownCell["value"];

/** A table that was found by its headers, wherever it stands. Columns and rows count from 1. */
export interface FoundTable {
  readonly sheet: string;
  readonly headerRow: number;
  readonly headers: readonly FoundHeader[];
  readonly system: UnitSystem; // as the brackets after its headers say, else the calls that take it; inch-pound where nothing does
  readonly rows: readonly number[]; // below the header, up to the next header of the same kind
  readonly value: (row: number, header: string) => ShownValue; // by a header as people type it; null where the table has no such column
  readonly address: (row: number, header: string) => string; // the header's own cell where there is none
}

interface FoundHeader {
  readonly name: string; // in lower case, without what stands in brackets
  readonly unit: string; // what stood in the brackets
  readonly column: number;
}

/** A sheet looked through once: what its cells hold, and which texts stand side by side as headers may. */
export interface LookedThrough extends SheetLookedThrough {
  readonly unitsTold: UnitsTold;
}

interface SheetLookedThrough {
  readonly sheet: string;
  readonly at: (column: number, row: number) => ShownValue;
  readonly lastRow: number;
  readonly heads: readonly FoundHead[];
  readonly merged: readonly (readonly [at: string, extent: Extent])[]; // where something stands in them
  readonly headsWith: (name: string) => readonly FoundHead[]; // those of them that have a header of that name
}

interface FoundHead {
  readonly row: number;
  readonly headers: readonly FoundHeader[];
}

/** Looks through every sheet of a book. */
export function lookThrough(book: Calculated): LookedThrough[] {
  const told = unitsTold(book);
  return book.workbook.sheets.flatMap((sheet) => {
    const cells = book.shown.get(sheet.name);
    if (cells === undefined) return [];
    let seen = lookedThrough.get(cells);
    if (seen?.sheet !== sheet.name) lookedThrough.set(cells, (seen = sheetLookedThrough(sheet, cells)));
    return [{ ...seen, unitsTold: told }];
  });
}

/** A host hands over the very cells of last time where nothing can have changed, as on the sheet of tables, the largest. */
const lookedThrough = new WeakMap<ReadonlyMap<string, ShownCell>, SheetLookedThrough>();

/** What stands for a number whose cell shows a day or a time: 1/2 that became one must not be reckoned with as 46,000. */
export const DAY = "a day or a time";

function sheetLookedThrough({ name: sheet, cells }: Sheet, shown: ReadonlyMap<string, ShownCell>): SheetLookedThrough {
  const percents = new Set(
    cells.flatMap((cell) => ("value" in cell && showsPercent(cell.format ?? "") ? [cell.at] : [])),
  );
  const days = new Set(cells.flatMap(({ at, format }) => (format !== undefined && showsDay(format) ? [at] : [])));
  const values = new Map<number, ShownValue>();
  const texts = new Map<number, { column: number; text: string }[]>();
  const together: [string, Extent][] = [];
  let lastRow = 0;
  for (const [address, { value, merged }] of shown) {
    if (value === null || value === "") continue;
    if (merged !== undefined) together.push([address, merged]);
    const { column, row } = placeOf(address);
    values.set(
      keyOf(column, row),
      typeof value === "number" ? meantBy(value, days.has(address), percents.has(address)) : value,
    );
    lastRow = Math.max(lastRow, row);
    if (typeof value !== "string") continue;
    const line = texts.get(row);
    if (line === undefined) texts.set(row, [{ column, text: value }]);
    else line.push({ column, text: value });
  }
  const heads = [...texts].flatMap(([row, line]) =>
    segments(line.sort((a, b) => a.column - b.column)).map((headers) => ({ row, headers })),
  );
  const byName = new Map<string, Set<FoundHead>>();
  for (const head of heads)
    for (const { name } of head.headers) byName.set(name, (byName.get(name) ?? new Set()).add(head));
  return {
    ...{ sheet, lastRow, heads, merged: together },
    at: (column, row) => values.get(keyOf(column, row)) ?? null,
    headsWith: (name) => [...(byName.get(name) ?? [])],
  };
}

/** A percentage that was typed is as its cell shows it, which a function refuses where no share of 1 is meant. */
const meantBy = (value: number, isDay: boolean, isPercent: boolean): ShownValue =>
  isDay ? DAY : isPercent && value !== 0 ? percentText(value) : value;

const MORE_THAN_COLUMNS = 2 ** 15; // of any sheet
const keyOf = (column: number, row: number): number => row * MORE_THAN_COLUMNS + column;

/** Splits "Airflow (cfm)" into its name and its unit. */
function headerOf(text: string): { name: string; unit: string } {
  const unit = /[([](.*?)[)\]]/.exec(text)?.[1] ?? "";
  return { name: headerName(text), unit };
}

/** Texts of one row that stand side by side, so that two tables beside each other stay two. */
function segments(line: readonly { column: number; text: string }[]): FoundHeader[][] {
  const found: FoundHeader[][] = [];
  for (const { column, text } of line) {
    const header = { ...headerOf(text), column };
    const last = found.at(-1);
    if (last !== undefined && lastOf(last).column === column - 1) last.push(header);
    else found.push([header]);
  }
  return found;
}

/**
 * Every table whose header row has all of these names, on any sheet.
 *
 * @param all the columns of an answer, which stand side by side: what is typed beside it may have a header of the same name
 */
export function tablesWith(
  sheets: readonly LookedThrough[],
  needed: readonly string[],
  without: readonly string[] = [],
  all: readonly string[] = [],
): FoundTable[] {
  const [wanted, unwanted, together] = [needed.map(headerName), without.map(headerName), all.map(headerName)];
  return sheets.flatMap((sheet) => {
    const heads = sheet.headsWith(itemAt(wanted, 0)).filter(({ headers }) => {
      const has = (name: string): boolean => headers.some((header) => header.name === name);
      return wanted.every(has) && !unwanted.some(has);
    });
    return heads.map(({ row, headers }) => {
      const next = heads.find((other) => other.row > row)?.row ?? sheet.lastRow + 1;
      return table(sheet, row, next, sideBySide(headers, together));
    });
  });
}

/** Those of a line of headers that have all these names which the line has, and no other; the whole line where they stand apart. */
function sideBySide(headers: readonly FoundHeader[], names: readonly string[]): readonly FoundHeader[] {
  const there = names.filter((one) => headers.some(({ name }) => name === one));
  const windows = headers.map((_, from) => headers.slice(from, from + there.length));
  return (
    windows.find((some) => there.length > 0 && there.every((one) => some.some(({ name }) => name === one))) ?? headers
  );
}

function table(
  { sheet, at, unitsTold: told }: LookedThrough,
  headerRow: number,
  end: number,
  headers: readonly FoundHeader[],
): FoundTable {
  const columns = new Map([...headers].reverse().map(({ name, column }) => [name, column]));
  const asked = new Map<string, number | undefined>(); // the same few headers, row by row
  const columnOf = (header: string): number | undefined => {
    if (!asked.has(header)) asked.set(header, columns.get(headerName(header)));
    return asked.get(header);
  };
  return {
    sheet,
    headerRow,
    headers,
    system: unitsSaid(headers) ?? told(sheet, { column: itemAt(headers, 0).column, row: headerRow }) ?? "IP",
    rows: Array.from({ length: Math.max(0, end - headerRow - 1) }, (_, index) => headerRow + 1 + index),
    value: (row, header) => {
      const column = columnOf(header);
      return column === undefined ? null : at(column, row);
    },
    address: (row, header) => {
      const column = columnOf(header);
      return column === undefined ? cellAddress(itemAt(headers, 0).column, headerRow) : cellAddress(column, row);
    },
  };
}

const MEASURED = ["airflow", "diameter", "length", "velocity", "pressure"] as const;

/** The units that the brackets after headers say, in any spelling that the functions read; null where none does. */
function unitsSaid(headers: readonly FoundHeader[]): UnitSystem | null {
  const isOf = (system: UnitSystem): boolean =>
    headers.some(({ unit }) =>
      MEASURED.some((quantity) => {
        const { factor, label } = unitOf(quantity, system);
        return factorOfTyped(unit, quantity, label) === factor;
      }),
    );
  return isOf("SI") ? "SI" : isOf("IP") ? "IP" : null;
}

/** A cell as a number; null where it holds none. */
export const numberIn = (value: ShownValue): number | null =>
  typeof value === "number" && Number.isFinite(value) ? value : null;

/** A cell as text; empty where it holds none. */
export const textIn = (value: ShownValue): string =>
  typeof value === "string" ? value.trim() : typeof value === "number" ? String(value) : "";
