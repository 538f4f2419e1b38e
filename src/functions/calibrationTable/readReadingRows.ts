import { LEAST_PERCENT } from "../../reference/leastPercent";
import { DomainError, type Limits } from "../../core/errors";
import { correctedReading } from "../../core/measuring/correctedReading";
import { plain, unknownName } from "../../core/naming/findNamed";
import type { Spot } from "../../core/network/calibration/reading";
import { sectionArea } from "../../core/section/section";
import { FAN, NOT_USED, type ReadingColumn, readingColumns, USED } from "../../reference/readingColumns";
import type { UnitSystem } from "../../reference/quantities";
import { readWithin } from "../arguments";
import { failureOf, refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, type Matrix } from "../cells";
import { readOpen, requireGates } from "../flowTable/openRuns";
import { headersOf } from "../headersOf";
import type { OpenGates, TableRun } from "../runsTable/readRun";
import type { TableReader } from "../runsTable/readRuns";

/** One reading of a row. */
export interface RowReading {
  readonly what: Spot["what"];
  readonly value: number; // SI
  readonly deviation: number; // [-]
  readonly meter: string | null; // whose lasting error it shares
}

/** A row in which somebody wrote, as far as it can be read. */
export interface ReadingRow {
  readonly row: number; // in the range, from 1
  readonly at: string;
  readonly run: number; // -1: the fan
  readonly open: OpenGates;
  readonly openWords: string;
  readonly readings: readonly RowReading[];
  readonly refusal: string | null; // why it is not used
}

export const MOST_READINGS = 60;

const WHAT = { Airflow: "airflow", Velocity: "velocity", Suction: "suction", Drop: "drop" } as const;
const KINDS = Object.keys(WHAT) as (keyof typeof WHAT)[];
/** How far one reading strays from the next, where nobody says: standard deviations. Judgements of ours. [%] */
export const USUAL_PERCENT: Readonly<Record<Spot["what"], number>> = { airflow: 4, velocity: 4, suction: 3, drop: 3 };

const ABOVE_ZERO: Limits = { above: 0 };
export const PERCENT: Limits = { atLeast: LEAST_PERCENT, atMost: 100 };
export const TIMES: Limits = { atLeast: 1, atMost: 100 };

type CellOf = (column: ReadingColumn) => Cell;

/**
 * The table of readings: a row for a place and a set of open gates, each filled quantity a reading. A row that is wrong says why and
 * keeps no other from being read.
 *
 * @throws DomainError where the table itself is none
 */
export function readReadingRows(matrix: Matrix, table: TableReader, system: UnitSystem): ReadingRow[] {
  const columns = findColumns(matrix, system);
  const rows = matrix.slice(1).flatMap((line, index): ReadingRow[] => {
    const cell: CellOf = (column) => {
      const place = columns.get(column);
      const found = place === undefined ? null : (line[place] ?? null);
      return found === 0 ? null : found;
    };
    const isBlank = (["Open", "At", ...KINDS] as const).every((column) => cell(column) === null);
    return isBlank ? [] : rowOf(index + 2, cell, table, system);
  });
  const count = rows.reduce((sum, { readings }) => sum + readings.length, 0);
  if (count > MOST_READINGS) throw new DomainError("readings", count, `at most ${MOST_READINGS} readings`);
  return rows.filter(({ readings, refusal }) => readings.length > 0 || refusal !== null);
}

/**
 * Whether a row is left aside.
 *
 * @throws DomainError for what may mean either
 */
export function notUsed(row: number, cell: Cell): boolean {
  const word = typeof cell === "string" ? plain(cell) : cell;
  if (word === null || word === "" || word === true || word === 1 || USED.includes(word as string)) return false;
  if (word === false || NOT_USED.includes(word as string)) return true;
  return refuseCell(`Use in row ${row} of readings`, cell, '"no" for a row that is left aside, or blank');
}

function findColumns(table: Matrix, system: UnitSystem): ReadonlyMap<ReadingColumn, number> {
  const found = headersOf("readings", table, readingColumns, system);
  if (found.has("At") && KINDS.some((kind) => found.has(kind))) return found;
  throw new DomainError(
    "readings",
    table[0]?.[0] ?? null,
    `a table whose first row has the headers At and one of ${KINDS.join(", ")}`,
  );
}

/** Nothing of a row that is left aside. */
function rowOf(row: number, cell: CellOf, table: TableReader, system: UnitSystem): ReadingRow[] {
  const said = (column: ReadingColumn): string => `${column} in row ${row} of readings`;
  const [at, opened] = [cell("At"), cell("Open")];
  const blank = {
    ...{ row, run: -1, open: null, readings: [] as readonly RowReading[], refusal: null },
    at: at === null || at instanceof CellErrorValue ? "" : String(at).trim(),
    openWords: opened === null || opened instanceof CellErrorValue ? "" : String(opened).trim(),
  };
  try {
    if (notUsed(row, cell("Use"))) return [];
    const open = readOpen(said("Open"), [[opened]], table.names);
    if (open !== null) requireGates(table);
    const entries = table.runs(open).runs;
    const run = placeOf(said("At"), at, entries);
    const readings = KINDS.flatMap((kind): RowReading[] => {
      const value = cell(kind);
      return value === null ? [] : [readingOf(kind, value, run < 0 ? null : entries[run]!, cell, said, system)];
    });
    return [{ ...blank, open, run, readings }];
  } catch (error) {
    return [{ ...blank, refusal: failureOf(error, system, () => undefined).sentence }];
  }
}

function placeOf(name: string, cell: Cell, entries: readonly TableRun[]): number {
  if (cell === null || cell instanceof CellErrorValue || typeof cell === "boolean")
    return refuseCell(name, cell, `the name of a run, or "${FAN}"`);
  const place = entries.findIndex(({ run }) => plain(run.name) === plain(String(cell)));
  if (place >= 0 || plain(String(cell)) === FAN) return place;
  const names = [FAN, ...entries.map(({ run }) => run.name)].map((key) => ({ key }));
  throw unknownName(name, names, String(cell), `the name of a run, or "${FAN}"`);
}

function readingOf(
  kind: keyof typeof WHAT,
  cell: Cell,
  entry: TableRun | null,
  cellOf: CellOf,
  said: (column: ReadingColumn) => string,
  system: UnitSystem,
): RowReading {
  const what = WHAT[kind];
  if (entry === null && (what === "velocity" || what === "drop"))
    throw new DomainError(said(kind), cell, "read in a run that the table has, not at the fan");
  if (what === "drop" && !((entry?.run.device?.ratedLoss ?? 0) > 0))
    throw new DomainError(said(kind), cell, "read across a separator or filter: that run has no device loss");
  if (what === "suction" && entry?.run.side === "discharge")
    throw new DomainError(said(kind), cell, "read before the fan: that run stands after it");
  const quantity = what === "airflow" || what === "velocity" ? what : "pressure";
  const value = readWithin(said(kind), cell, quantity, ABOVE_ZERO, system);
  const number = (column: ReadingColumn, limits: Limits, usual: number): number => {
    const given = cellOf(column);
    return given === null ? usual : readWithin(said(column), given, "ratio", limits, system);
  };
  const percent = number("±", PERCENT, USUAL_PERCENT[what]);
  const times = number("Times", TIMES, 1);
  const isAir = what === "airflow" || what === "velocity";
  return {
    what,
    value: what === "airflow" ? withTrueArea(value, entry, cellOf("Area"), said("Area"), system) : value,
    deviation: percent / 100 / Math.sqrt(times),
    meter: meterOf(cellOf("Meter"), said("Meter"), isAir),
  };
}

/** An airflow from a meter that was given another area than the duct has. */
function withTrueArea(value: number, entry: TableRun | null, cell: Cell, name: string, system: UnitSystem): number {
  if (cell === null) return value;
  const typed = readWithin(name, cell, "area", ABOVE_ZERO, system);
  if (entry === null)
    throw new DomainError(name, cell, "left out at the fan, whose duct nobody told: name the last run");
  return correctedReading(value, typed, sectionArea(entry.run.diameter, null));
}

/** Airflows share the error of one meter where none is named; pressures then share none. */
function meterOf(cell: Cell, name: string, isAir: boolean): string | null {
  if (cell === null) return isAir ? "air" : null;
  if (cell instanceof CellErrorValue || typeof cell === "boolean") return refuseCell(name, cell, "a meter's name");
  return `${isAir ? "air" : "pressure"} ${plain(String(cell))}`;
}
