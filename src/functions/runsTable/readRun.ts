import { STANDARD_DENSITY } from "../../core/air/constants";
import { velocityPressure } from "../../core/air/velocityPressure";
import { SEPARATOR_EXPONENT } from "../../core/devices/deviceLoss";
import { DomainError, type Limits, shown } from "../../core/errors";
import { joiningBranch, withoutJoining } from "../../core/fittings/joiningBranch";
import { type FittingItem, listCoefficient } from "../../core/fittings/fittingList";
import { mitreCoefficient } from "../../core/fittings/slowAir";
import { lossCoefficient } from "../../core/fittings/lossCoefficient";
import { ROUGHEST } from "../../core/friction/frictionFactor";
import { hoseFactor } from "../../core/hose/hoseFactor";
import { gateOpening } from "../../core/leaks/gateOpening";
import { DISCHARGE_COEFFICIENT } from "../../core/leaks/openingLeak";
import { findNamed, plain, requireNamed } from "../../core/naming/findNamed";
import { LARGEST_COEFFICIENT, LONGEST_RUN } from "../../core/largest";
import type { Device, Run } from "../../core/network/network";
import { FAN, isAfterFan } from "../../core/network/openAir";
import { DUCT_SIZE, meanVelocity, sectionArea } from "../../core/section/section";
import { EXIT, lossFamilies } from "../../reference/lossFamilies";
import { gateConditions } from "../../reference/gateConditions";
import { quantityOfColumn } from "../../reference/columnsOfRuns";
import type { UnitSystem } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import type { TransportRow } from "../../reference/schema";
import { DEFAULT_DUST, transport } from "../../reference/transport";
import { readChoice, readFittings, readMaterial, readNumber, readWithin, usualRoughness } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue } from "../cells";
import { readHose } from "./readHose";
import { hoseRoughness } from "./surroundings";

/** A row of a runs table: its run, what only the notes need, and what the run's numbers came from, for whoever alters it. */
export interface TableRun {
  readonly row: number; // place in the table below the header, from 0
  readonly run: Run;
  readonly dust: TransportRow;
  readonly typed: { readonly hood: string; readonly dust: string | null }; // the names themselves, where the cells hold one
  readonly fittings: readonly FittingItem[]; // of the column Fittings
  readonly coefficientOf: (fittings: readonly FittingItem[], diameter: number) => number; // [-] with the column K
  readonly hoodOf: (diameter: number) => number | null; // [-]
  readonly isPort: boolean; // its entry is a machine's own, which no other entry can replace
  readonly hoseTimesOf: (diameter: number) => number; // [-]
  readonly hoseAsPipe?: number; // [m] of pipe in the place of its hose; where left out, as much as there is hose
  readonly leakOf: (gate: Gate, diameter: number) => number; // [m2]
  readonly cleanLoss: () => number | null; // [Pa] of the device; read when it is asked for
}

export type Gate = Run["gate"];
/** Which gates are open, by the plain names of their runs, all others being shut; null as the table has them. */
export type OpenGates = ReadonlySet<string> | null;
export type CellReader = (column: RunColumn) => Cell;

const EXIT_COEFFICIENT = lossCoefficient(findNamed(lossFamilies, EXIT)!, null, null);

/** What counts for nothing after the fan: air would flow through a gate that is shut there. */
const BEFORE_THE_FAN: readonly RunColumn[] = ["Gate", "Hood", "Port suction"];

const ABOVE_ZERO: Limits = { above: 0 };
const FROM_ZERO: Limits = { atLeast: 0 };
const LENGTH: Limits = { atLeast: 0, atMost: LONGEST_RUN };
const COEFFICIENT: Limits = { atLeast: 0, atMost: LARGEST_COEFFICIENT };

/**
 * Reads a row of a runs table into a run in SI.
 *
 * @param row its place in the table below the header, from 0
 * @param cell its cells by their columns
 * @param open which gates are open
 * @param isRun whether a run of the table has this name, in its plain spelling
 * @param system the units the table is in
 * @throws DomainError that names the row and the column
 */
export function readRun(
  row: number,
  cell: CellReader,
  open: OpenGates,
  isRun: (name: string) => boolean,
  system: UnitSystem,
): TableRun {
  const name = readText(`Run of row ${row + 2}`, cell("Run"), "a name");
  const label = `run ${shown(name)} (row ${row + 2})`;
  const said = (column: RunColumn): string => `${column} of ${label}`;
  const number = <Fallback>(column: RunColumn, limits: Limits, fallback: Fallback): number | Fallback => {
    const value = cell(column);
    return value === null ? fallback : readWithin(said(column), value, quantityOfColumn(column), limits, system);
  };
  const items = (column: RunColumn, kind: "hood" | "any"): readonly FittingItem[] | null => {
    const value = cell(column);
    return value === null ? null : readFittings(said(column), value, kind, system);
  };
  const sumOf = (list: readonly FittingItem[], at: number): number => inRow(label, () => listCoefficient(list, at));

  const diameter = readWithin(said("Diameter"), cell("Diameter"), quantityOfColumn("Diameter"), DUCT_SIZE, system);
  const gate = readGate(label, name, cell, open);
  const material = cell("Material");
  const roughness = material === null ? usualRoughness() : readMaterial(said("Material"), material, system, "blank");
  if (roughness > ROUGHEST * diameter)
    throw new DomainError(said("Material"), cell("Material"), `rough by at most ${ROUGHEST} of the diameter`);
  const leakOf = (state: Gate, at: number): number => {
    const leak = (column: RunColumn): number => readLeak(said(column), cell(column), at, system);
    return leak("Leak") + (state === "open" ? leak("Leak open") : state === "shut" ? leak("Leak shut") : 0);
  };
  const leakArea = leakOf(gate, diameter);
  const to = cell("To") === null ? "" : readText(said("To"), cell("To"), "the name of a run");
  const side = readSide(said("Side"), cell("Side"), plain(to), isRun);
  for (const column of BEFORE_THE_FAN)
    if (side === "discharge" && cell(column) !== null)
      refuseCell(said(column), cell(column), "left blank after the fan, where none is counted");
  const length = number("Length", LENGTH, 0);
  const hose = readHose(said("Flex"), cell("Flex"), system);
  if (hose.length > 0 && (hose.roughness ?? hoseRoughness) > ROUGHEST * diameter)
    throw new DomainError(said("Flex"), cell("Flex"), "left out: hose is too rough for so small a diameter");
  const hoseTimesOf = (at: number): number => hoseFactor(at, hose.lies);
  const fittings = items("Fittings", "any") ?? [];
  const branch = side === "suction" && plain(to) !== FAN ? joiningBranch(fittings) : null;
  const counted = (list: readonly FittingItem[]): readonly FittingItem[] =>
    branch === null || branch.plain ? list : withoutJoining(list);
  sumOf(fittings, diameter); // refuses a branch, too, that no table knows
  const further = number("K", COEFFICIENT, 0);
  if (cell("Hood") === 0) refuseCell(said("Hood"), 0, "a hood entry's name, its K above 0, or blank where no hood is");
  const entry = items("Hood", "hood");
  const measured = portLoss(said, cell, number, diameter);
  const isPort = measured !== null || (entry ?? []).some(({ family }) => family?.port !== undefined);
  // A machine's inside stays as it is where the pipe behind it grows, so its loss goes by the pipe that it was told for.
  const hoodOf = (at: number): number | null => {
    const coefficient = measured ?? (entry && sumOf(entry, at));
    return coefficient !== null && isPort ? coefficient * (at / diameter) ** 4 : coefficient;
  };
  // Each property by its name: spreads would take longer here than reading the cells does.
  const run: Run = {
    name,
    label,
    to,
    side,
    diameter,
    length,
    roughness,
    hoseLength: hose.length,
    hoseTimes: hoseTimesOf(diameter),
    hoseRoughness: hose.roughness,
    coefficient: sumOf(counted(fittings), diameter) + further,
    mitreCoefficient: mitreCoefficient(fittings),
    exitCoefficient: fittings.some(({ family }) => family?.key === EXIT) ? EXIT_COEFFICIENT : 0,
    branch,
    junctionFactor: 1,
    hood: hoodOf(diameter),
    wantedAirflow: number("Airflow", FROM_ZERO, 0),
    gate,
    leakArea,
    device: readDevice(said, number),
  };
  const [hood, dust] = [cell("Hood"), cell("Dust")];
  return {
    row,
    run,
    fittings,
    hoodOf,
    leakOf,
    isPort,
    hoseTimesOf,
    dust: readDust(said("Dust"), dust),
    typed: { hood: typeof hood === "string" ? hood : "", dust: typeof dust === "string" ? dust : null },
    coefficientOf: (list, at) => sumOf(counted(list), at) + further,
    cleanLoss: () => {
      const clean = cell("Device clean loss");
      return clean === null ? null : readNumber("Device clean loss", clean, "pressure", system);
    },
  };
}

function readText(name: string, cell: Cell, what: string): string {
  if (cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue) return refuseCell(name, cell, what);
  return String(cell).trim();
}

/** Left blank it is suction, but for a run that goes into the open air. */
export function readSide(name: string, cell: Cell, to: string, isRun: (name: string) => boolean): Run["side"] {
  if (cell === null && isAfterFan(to, isRun)) return "discharge";
  return readChoice(name, cell, ["suction", "discharge"]);
}

/** The state of a run's gate: as the table has it, or as whoever says which gates are open has it. */
export function readGate(label: string, name: string, cell: CellReader, open: OpenGates): Gate {
  const typed = cell("Gate");
  if (typed === null) return "none";
  if (open !== null) return open.has(plain(name)) ? "open" : "shut";
  return readChoice(`Gate of ${label}`, typed, ["open", "shut"]);
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
  const ratedAirflow = number("Device airflow", ABOVE_ZERO, null);
  if (ratedLoss === null && ratedAirflow === null) return null;
  if (ratedLoss === null)
    throw new DomainError(said("Device loss"), null, "given beside a device airflow, or both left blank");
  if (ratedAirflow === null) throw new DomainError(said("Device airflow"), null, "given beside a device loss");
  return {
    ratedLoss,
    ratedAirflow,
    exponent: number("Device exponent", { atLeast: 0.5, atMost: 2.5 }, SEPARATOR_EXPONENT),
  };
}

/**
 * Entry coefficient of a machine's port from the static suction that it takes at an airflow, as its manual prints it or as
 * it was measured, in standard air: K = p / p_v - 1.
 */
function portLoss(
  said: (column: RunColumn) => string,
  cell: CellReader,
  number: NumberReader,
  diameter: number,
): number | null {
  const suction = number("Port suction", ABOVE_ZERO, null);
  const airflow = number("Port airflow", ABOVE_ZERO, null);
  if (suction === null && airflow === null) return null;
  if (suction === null) throw new DomainError(said("Port suction"), null, "given beside a port airflow");
  if (airflow === null) throw new DomainError(said("Port airflow"), null, "given beside a port suction");
  if (cell("Hood") !== null)
    throw new DomainError(
      said("Hood"),
      cell("Hood"),
      "left blank beside a port suction, which says how the air enters",
    );
  const pressure = velocityPressure(meanVelocity(airflow, sectionArea(diameter, null)), STANDARD_DENSITY);
  if (!(suction >= pressure))
    throw new DomainError(
      said("Port suction"),
      cell("Port suction"),
      "at least the velocity pressure of that airflow in this diameter, since the air must be brought to that speed",
    );
  return suction / pressure - 1;
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
