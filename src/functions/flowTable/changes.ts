import { findNamed } from "../../core/naming/findNamed";
import { lossCoefficient } from "../../core/fittings/lossCoefficient";
import { type FittingItem, parseFittingList } from "../../core/fittings/fittingList";
import { lossFamilies, PLAIN_END } from "../../reference/lossFamilies";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { leakColumns } from "../../reference/columnsOfRuns";
import type { RunColumn } from "../../reference/runColumns";
import { stockDiameters } from "../../reference/tradeSizes";
import { readNumber } from "../arguments";
import type { Cell, Matrix } from "../cells";
import { cellOf, findColumns } from "../runsTable/columns";
import type { Edit } from "../runsTable/editTable";
import type { TableRun } from "../runsTable/readRuns";

/** A change that an owner can make to one run, as cells typed into the table. */
export interface Change {
  readonly entry: TableRun;
  readonly words: string;
  readonly edits: readonly Edit[];
}

/** The changes worth trying at a run that the hood's air passes. */
export function changesAlong(table: Matrix, entry: TableRun, system: UnitSystem): Change[] {
  const cell = cellReader(table, entry.row);
  return [
    ...hoseToPipe(entry, system),
    ...largerSize(entry, system),
    ...longerRadius(entry, cell, system),
    ...cleanedFilter(entry, cell, system),
    ...betterEntry(entry),
  ];
}

/** A leak sealed, wherever in the system it is. */
export function sealedLeak(table: Matrix, entry: TableRun): Change[] {
  if (entry.run.leakArea === 0) return [];
  const cell = cellReader(table, entry.row);
  const columns = leakColumns.filter((column) => cell(column) !== null);
  return [
    change(
      entry,
      "leak sealed",
      columns.map((column) => [column, null] as const),
    ),
  ];
}

/** The gate of a branch that the hood's air does not pass, shut. */
export const shutGate = (entry: TableRun): Change[] =>
  entry.run.gate === "open" ? [change(entry, "gate there shut", [["Gate", "shut"]])] : [];

type CellReader = (column: RunColumn) => Cell;

function cellReader(table: Matrix, row: number): CellReader {
  const places = findColumns(table[0]!);
  return (column) => cellOf(table.slice(1), row, places, column);
}

const change = (entry: TableRun, words: string, cells: readonly (readonly [RunColumn, Cell])[]): Change => ({
  entry,
  words,
  edits: cells.map(([column, cell]) => ({ row: entry.row, column, cell })),
});

function hoseToPipe(entry: TableRun, system: UnitSystem): Change[] {
  const { length, hoseLength } = entry.run;
  if (hoseLength === 0) return [];
  const pipe = fromSI(length + hoseLength, unitOf("length", system));
  return [
    change(entry, "hose replaced by smooth pipe", [
      ["Length", pipe],
      ["Flex", null],
    ]),
  ];
}

function largerSize(entry: TableRun, system: UnitSystem): Change[] {
  const next = stockDiameters(system).find((size) => size > entry.run.diameter * (1 + 1e-9));
  if (next === undefined) return [];
  const size = Number(fromSI(next, unitOf("diameter", system)).toPrecision(12));
  return [change(entry, `one size larger, ${size} ${unitOf("diameter", system).label}`, [["Diameter", size]])];
}

/** Elbows by r/D take the next larger printed radius. */
function longerRadius(entry: TableRun, cell: CellReader, system: UnitSystem): Change[] {
  const text = cell("Fittings");
  if (typeof text !== "string") return [];
  const items = parseFittingList("Fittings", text, unitOf("diameter", system).factor, "any");
  const eased = items.map((item) => ({ ...item, shape: nextRadius(item) ?? item.shape }));
  if (items.every((item) => nextRadius(item) === null)) return [];
  return [
    change(entry, "elbows of the next longer radius", [["Fittings", eased.map((item) => itemText(item)).join("; ")]]),
  ];
}

function nextRadius({ family, shape }: FittingItem): number | null {
  if (family?.rule !== "elbow") return null;
  const now = shape ?? family.shape?.usual ?? Infinity;
  const radii = family.points.map((point) => point.shape!).filter((radius) => radius > now);
  return radii.length === 0 ? null : Math.min(...radii);
}

/** An entry of a list as a person would type it; a diameter carries its unit. */
function itemText({ family, coefficient, shape, angle, count }: FittingItem): string {
  if (family === null) return `${coefficient} x${count}`;
  const form =
    shape === null
      ? ""
      : family.shape?.quantity === "diameter"
        ? ` ${Number((shape * 1000).toPrecision(12))} mm`
        : ` ${shape}`;
  return `${family.key}${form}${angle === null ? "" : ` ${angle}`} x${count}`;
}

/** A filter or separator whose loss when clean stands beside its present one. */
function cleanedFilter(entry: TableRun, cell: CellReader, system: UnitSystem): Change[] {
  const clean = cell("Device clean loss");
  if (entry.run.device === null || clean === null) return [];
  const loss = readNumber("Device clean loss", clean, "pressure", system);
  if (loss >= entry.run.device.ratedLoss) return [];
  return [change(entry, "filter cleaned to its rated loss", [["Device loss", clean]])];
}

/** Kinds of hood entry from worse to better; the next better one that can be built at any hood. */
const BETTER_ENTRIES = ["flanged end", "bell mouth"] as const;

function betterEntry(entry: TableRun): Change[] {
  const now = entry.run.hood ?? plainEnd;
  const better = BETTER_ENTRIES.find((name) => coefficientOf(name) < now - 1e-9);
  return better === undefined ? [] : [change(entry, `entry improved to ${better}`, [["Hood", better]])];
}

const coefficientOf = (name: string): number => lossCoefficient(findNamed(lossFamilies, name)!, null, null);
const plainEnd = coefficientOf(PLAIN_END);
