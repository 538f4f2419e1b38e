import { SEPARATOR_EXPONENT } from "../../core/devices/deviceLoss";
import { DomainError, type Limits, shown } from "../../core/errors";
import { listCoefficient } from "../../core/fittings/fittingList";
import { ROUGHEST } from "../../core/friction/frictionFactor";
import { gateOpening } from "../../core/leaks/gateOpening";
import { DISCHARGE_COEFFICIENT } from "../../core/leaks/openingLeak";
import { plain, requireNamed } from "../../core/naming/findNamed";
import type { Device, Run } from "../../core/network/network";
import { sectionArea } from "../../core/section/section";
import { gateConditions } from "../../reference/gateConditions";
import { neededColumns, quantityOfColumn } from "../../reference/columnsOfRuns";
import type { UnitSystem } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import type { TransportRow } from "../../reference/schema";
import { DEFAULT_DUST, transport } from "../../reference/transport";
import { readChoice, readFittings, readMaterial, readWithin } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, toMatrix } from "../cells";
import { cellOf, findColumns } from "./columns";

/** A run as the table states it: what the network needs, and what only the notes need. */
export interface TableRun {
  readonly row: number; // place in the table below the header, from 0
  readonly run: Run;
  readonly dust: TransportRow;
  readonly typed: { readonly hood: string; readonly dust: string | null }; // the names themselves, where the cells hold one
  readonly asksInVain: boolean; // an airflow typed where no hood is
}

export interface RunsTable {
  readonly runs: readonly TableRun[];
  readonly rows: number; // rows below the header up to the last one filled
}

const ABOVE_ZERO: Limits = { above: 0 };
const FROM_ZERO: Limits = { atLeast: 0 };

/**
 * Reads a runs table into runs in SI.
 *
 * @param given the range as the host handed it over
 * @param system the units the table is in
 * @throws DomainError that names the row and the column
 */
export function readRuns(given: unknown, system: UnitSystem): RunsTable {
  const table = toMatrix(given);
  const places = findColumns(table[0]!);
  const body = table.slice(1);
  const runs: Omit<TableRun, "asksInVain">[] = [];
  body.forEach((_, row) => {
    const cell = (column: RunColumn): Cell => cellOf(body, row, places, column);
    if (neededColumns.some((column) => cell(column) !== null)) runs.push(readRun(row, cell, system));
  });
  if (runs.length === 0) throw new DomainError("runs", null, "a table with at least one run below its headers");
  const joined = joinedNames(runs.map(({ run }) => run));
  return {
    runs: runs.map((entry) => ({
      ...entry,
      asksInVain: entry.run.wantedAirflow > 0 && joined.has(plain(entry.run.name)),
    })),
    rows: runs.at(-1)!.row + 1,
  };
}

/** The runs that another joins, by the spelling in which names are compared. */
export const joinedNames = (runs: readonly { readonly to: string }[]): ReadonlySet<string> =>
  new Set(runs.map(({ to }) => plain(to)));

function readRun(row: number, cell: (column: RunColumn) => Cell, system: UnitSystem): Omit<TableRun, "asksInVain"> {
  const name = readText(`Run of row ${row + 2}`, cell("Run"), "a name");
  const label = `run ${shown(name)} (row ${row + 2})`;
  const said = (column: RunColumn): string => `${column} of ${label}`;
  const number = <Fallback>(column: RunColumn, limits: Limits, fallback: Fallback): number | Fallback => {
    const value = cell(column);
    return value === null ? fallback : readWithin(said(column), value, quantityOfColumn(column), limits, system);
  };
  const coefficientOf = (column: RunColumn, kind: "hood" | "any"): number | null => {
    const value = cell(column);
    return value === null
      ? null
      : inRow(label, () => listCoefficient(readFittings(said(column), value, kind, system), diameter));
  };

  const diameter = readWithin(said("Diameter"), cell("Diameter"), quantityOfColumn("Diameter"), ABOVE_ZERO, system);
  const gate = readGate(said("Gate"), cell("Gate"));
  const roughness = readMaterial(said("Material"), cell("Material"), system);
  if (roughness > ROUGHEST * diameter)
    throw new DomainError(said("Material"), cell("Material"), `rough by at most ${ROUGHEST} of the diameter`);
  const leakOf = (column: RunColumn): number => readLeak(said(column), cell(column), diameter, system);
  const leakArea = leakOf("Leak") + (gate === "open" ? leakOf("Leak open") : gate === "shut" ? leakOf("Leak shut") : 0);
  const run: Run = {
    name,
    label,
    to: cell("To") === null ? "" : readText(said("To"), cell("To"), "the name of a run"),
    side: readChoice(said("Side"), cell("Side"), ["suction", "discharge"]),
    diameter,
    length: number("Length", FROM_ZERO, 0),
    roughness,
    hoseLength: number("Flex", FROM_ZERO, 0),
    coefficient: (coefficientOf("Fittings", "any") ?? 0) + number("K", FROM_ZERO, 0),
    hood: coefficientOf("Hood", "hood"),
    wantedAirflow: number("Airflow", FROM_ZERO, 0),
    gate,
    leakArea,
    device: readDevice(said, number),
  };
  const [hood, dust] = [cell("Hood"), cell("Dust")];
  return {
    row,
    run,
    dust: readDust(said("Dust"), dust),
    typed: { hood: typeof hood === "string" ? hood : "", dust: typeof dust === "string" ? dust : null },
  };
}

function readText(name: string, cell: Cell, what: string): string {
  if (cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue) return refuseCell(name, cell, what);
  return String(cell).trim();
}

function readGate(name: string, cell: Cell): Run["gate"] {
  return cell === null ? "none" : readChoice(name, cell, ["open", "shut"]);
}

/** An effective area, or a gate condition by name. [m2] */
function readLeak(name: string, cell: Cell, diameter: number, system: UnitSystem): number {
  if (cell === null) return 0;
  const named = typeof cell === "string" && !Number.isFinite(Number(cell));
  const area = named
    ? gateOpening(requireNamed(name, gateConditions, cell, `an open area or a name in the table "gates"`), diameter)
    : readWithin(name, cell, "openArea", FROM_ZERO, system);
  if (DISCHARGE_COEFFICIENT * area >= sectionArea(diameter, null))
    throw new DomainError(name, cell, "smaller than the duct itself");
  return area;
}

type NumberReader = <Fallback>(column: RunColumn, limits: Limits, fallback: Fallback) => number | Fallback;

function readDevice(said: (column: RunColumn) => string, number: NumberReader): Device | null {
  const ratedLoss = number("Device loss", FROM_ZERO, null);
  if (ratedLoss === null) return null;
  const ratedAirflow = number("Device airflow", ABOVE_ZERO, null);
  if (ratedAirflow === null) throw new DomainError(said("Device airflow"), null, "given beside a device loss");
  return {
    ratedLoss,
    ratedAirflow,
    exponent: number("Device exponent", { atLeast: 0.5, atMost: 2.5 }, SEPARATOR_EXPONENT),
  };
}

/** What the run carries: it sets the velocity under which a note warns of settling. */
function readDust(name: string, cell: Cell): TransportRow {
  const wanted = cell ?? DEFAULT_DUST;
  const what = `a name in the table "transport"`;
  return typeof wanted === "string"
    ? requireNamed<TransportRow>(name, transport, wanted, what)
    : refuseCell(name, wanted, what);
}

/** A refusal of a shape or an angle inside a fitting's text does not know its row; say it. */
function inRow<Value>(label: string, read: () => Value): Value {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof DomainError) || error.argument.includes(label)) throw error;
    throw new DomainError(
      `${error.argument} in the fittings of ${label}`,
      error.value,
      error.requirement,
      error.limits,
    );
  }
}
