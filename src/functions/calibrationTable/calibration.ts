import { DomainError } from "../../core/errors";
import { type Model, saidBy, type State, stateAt } from "../../core/network/calibration/model";
import type { Reading } from "../../core/network/calibration/reading";
import { judge, type Judged } from "../../core/network/calibration/slips";
import { unknownsOf } from "../../core/network/calibration/unknowns";
import { itemAt } from "../../reference/itemAt";
import type { UnitSystem } from "../../reference/quantities";
import { type Matrix, toMatrix } from "../cells";
import { readCurve } from "../fanTable/readCurve";
import { openedBy } from "../flowTable/openRuns";
import type { Fan } from "../flowTable/solveRuns";
import { remembering } from "../remember";
import type { OpenGates } from "../runsTable/readRun";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import { sharedRuns } from "../runsTable/sharedRuns";
import { surroundings } from "../runsTable/surroundings";
import { type Deviations, readErrors } from "../uncertaintyTable/readErrors";
import { type ReadingRow, readReadingRows, type RowReading } from "./readReadingRows";

/** What CALIBRATE and its companions are asked with, as the host handed it over, but for the density and the units. */
export interface Given {
  readonly runs: unknown;
  readonly curve: unknown;
  readonly readings: unknown;
  readonly open?: unknown; // a set of open gates that is asked for though nobody may have read in it
  readonly errors: unknown;
  readonly density: number; // [kg/m3]
  readonly system: UnitSystem;
}

/** A set of open gates in which somebody read. */
export interface OpenSet {
  readonly words: string;
  readonly open: OpenGates;
  readonly table: RunsTable;
}

/** A reading as it was typed; without what the core takes where it cannot be used. */
export interface Typed {
  readonly row: ReadingRow;
  readonly one: RowReading | null; // null where the row cannot be read at all
  readonly reading: Reading | null;
  readonly refusal: string | null;
}

/** A table of runs with its fan, and what readings tell of them. */
export interface Calibration {
  readonly table: TableReader;
  readonly fan: Fan;
  readonly sets: readonly OpenSet[];
  readonly asked: number; // which of them that is; the first where none is asked for
  readonly model: Model;
  readonly asTold: State;
  readonly typed: readonly Typed[];
  readonly judged: Judged;
}

const MOST_ROWS = 200;

const remember = remembering<Calibration>();

/** Reads the tables and finds the most plausible system; what was asked before, by whichever function, is not worked out again. */
export function calibrated({ runs, curve, readings, open, errors, density, system }: Given): Calibration {
  const inputs = [runs, curve, readings, errors, ...(open === undefined ? [] : [open])].map(toMatrix);
  return remember([...inputs, density, system], () => {
    const fan = { curve: readCurve(curve, system), density };
    return calibrate(sharedRuns(runs, system), fan, itemAt(inputs, 2), readErrors(errors), system, open);
  });
}

function calibrate(
  table: TableReader,
  fan: Fan,
  readings: Matrix,
  errors: Deviations,
  system: UnitSystem,
  open: unknown,
): Calibration {
  const rows = readReadingRows(readings, table, system);
  const also = open === undefined ? undefined : openedBy(open, table);
  const sets = setsOf(rows, table, also);
  const asked = also === undefined ? 0 : sets.findIndex((one) => keyOf(one.open) === keyOf(also));
  const systems = sets.map(({ table: own }) => ({
    network: own.network(),
    curve: fan.curve,
    surroundings: surroundings(fan.density),
  }));
  const count = itemAt(sets, 0).table.runs.length;
  if (count > MOST_ROWS) throw new DomainError("runs", count, `at most ${MOST_ROWS} rows`);
  const meters = [
    ...new Set(rows.flatMap((row) => row.readings.flatMap(({ meter }) => (meter === null ? [] : [meter])))),
  ];
  const networks = systems.map(({ network }) => network);
  const unknowns = unknownsOf(networks, errors, meters.length);
  const model: Model = { systems, unknowns, wander: errors.get("model") ?? 0 };
  const asTold = stateAt(model, new Float64Array(unknowns.length), new Set(sets.keys()));
  const typed = rows.flatMap((row): Typed[] => {
    if (row.refusal !== null) return [{ row, one: null, reading: null, refusal: row.refusal }];
    return row.readings.map((one) => {
      const meter = unknowns.findIndex(({ kind, run }) => kind === "meter" && itemAt(meters, run) === one.meter);
      const set = sets.findIndex(({ open }) => keyOf(open) === keyOf(row.open));
      const reading: Reading = { set, run: row.run, what: one.what, value: one.value, deviation: one.deviation, meter };
      if (saidBy(asTold, reading) > 0) return { row, one, reading, refusal: null };
      const where = `${one.what} in row ${row.row} of readings`;
      return { row, one, reading: null, refusal: `${where} stands where no air moves while these gates are open` };
    });
  });
  const usable = typed.flatMap(({ reading }) => (reading === null ? [] : [reading]));
  return { table, fan, sets, asked, model, asTold, typed, judged: judge(model, usable, asTold) };
}

/** The sets in which somebody read; without any, the gates as the table has them. */
function setsOf(rows: readonly ReadingRow[], table: TableReader, also: OpenGates | undefined): OpenSet[] {
  const sets = new Map<string, OpenSet>();
  const add = (open: OpenGates, words: string): void => {
    if (!sets.has(keyOf(open))) sets.set(keyOf(open), { words, open, table: table.runs(open) });
  };
  for (const { open, openWords, refusal } of rows) if (refusal === null) add(open, openWords);
  if (also !== undefined) add(also, "");
  if (sets.size === 0) add(null, "");
  return [...sets.values()];
}

const keyOf = (open: OpenGates): string => (open === null ? "as the table has them" : JSON.stringify([...open].sort()));
