import type { FittingItem } from "../../core/fittings/fittingList";
import { lossCoefficient } from "../../core/fittings/lossCoefficient";
import { rowOf } from "../../core/naming/findNamed";
import { type Network, type Run, runWith } from "../../core/network/network";
import { itemAt } from "../../reference/itemAt";
import { lossFamilies } from "../../reference/lossFamilies";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { stockDiameters } from "../../reference/tradeSizes";
import { plainEnd } from "../runsTable/surroundings";
import type { TableRun } from "../runsTable/readRun";
import { type RunsTable, withGate } from "../runsTable/readRuns";
import { resized } from "../runsTable/resized";

/** A change that an owner can make to one run. */
export interface Change {
  readonly words: string;
  readonly run: () => Run; // as it is then; refused where, say, a fitting has no value at the larger size
  readonly along?: readonly { readonly index: number; readonly run: Run }[]; // other runs that change with it
}

/** The changes worth trying at a run that the hood's air passes, or that stands after the fan. */
export const changesAlong = (entry: TableRun, isOpenEnd: boolean, system: UnitSystem): Change[] => [
  ...hoseToPipe(entry),
  ...largerSize(entry, system),
  ...longerRadius(entry),
  ...cleanedFilter(entry),
  ...(isOpenEnd && !entry.isPort ? betterEntry(entry) : []),
];

export const SEALED = "leak sealed";

/** A leak sealed, wherever in the system it is. */
export const sealedLeak = ({ run }: TableRun): Change[] =>
  run.leakArea === 0 ? [] : [{ words: SEALED, run: () => runWith(run, { leakArea: 0 }) }];

/** The gate of a branch that the hood's air does not pass, shut. */
export const shutGate = (entry: TableRun): Change[] =>
  entry.run.gate === "open" ? [{ words: "gate there shut", run: () => withGate(entry, "shut").run }] : [];

/**
 * The gate of a branch that is shut, left open: its air keeps the dust moving further down. Shut gates that stand on the way of that
 * air are opened with it, as TOGETHER and SIZES do, since behind one of them it would change nothing.
 */
export function openedGate({ runs }: RunsTable, { joins }: Network, index: number): Change[] {
  const entry = itemAt(runs, index);
  if (entry.run.gate !== "shut") return [];
  const along: { readonly index: number; readonly run: Run }[] = [];
  for (let next = itemAt(joins, index); next >= 0; next = itemAt(joins, next))
    if (itemAt(runs, next).run.gate === "shut")
      along.push({ index: next, run: withGate(itemAt(runs, next), "open").run });
  const names = along.map(({ run }) => run.name).join(", ");
  const too = along.length === 0 ? "" : `, and ${along.length === 1 ? "that" : "those"} of ${names}`;
  return [{ words: `gate there left open${too}`, run: () => withGate(entry, "open").run, along }];
}

/** The stock sizes below a run's own, widest first; a run with a device keeps its size. */
export const narrowerSizes = (entry: TableRun, system: UnitSystem): Change[] =>
  entry.run.device !== null
    ? []
    : stockDiameters(system)
        .filter((size) => size < entry.run.diameter * (1 - 1e-9))
        .sort((a, b) => b - a)
        .map((size) => ({ words: `narrower pipe, ${inStock(size, system)}`, run: () => resized(entry, size) }));

function hoseToPipe({ run, hoseAsPipe = run.hoseLength }: TableRun): Change[] {
  const length = run.length + hoseAsPipe;
  return run.hoseLength === 0
    ? []
    : [{ words: "hose replaced by smooth pipe", run: () => runWith(run, { length, hoseLength: 0 }) }];
}

function largerSize(entry: TableRun, system: UnitSystem): Change[] {
  const diameter = stockDiameters(system).find((size) => size > entry.run.diameter * (1 + 1e-9));
  if (diameter === undefined) return [];
  return [{ words: `one size larger, ${inStock(diameter, system)}`, run: () => resized(entry, diameter) }];
}

function inStock(diameter: number, system: UnitSystem): string {
  const unit = unitOf("diameter", system);
  return `${Number(fromSI(diameter, unit).toPrecision(12))} ${unit.label}`;
}

/** Elbows by r/D take the next larger printed radius. */
function longerRadius({ run, fittings, coefficientOf }: TableRun): Change[] {
  const eased = fittings.map((item) => ({ ...item, shape: nextRadius(item) ?? item.shape }));
  if (fittings.every((item) => nextRadius(item) === null)) return [];
  return [
    {
      words: "elbows of the next longer radius",
      run: () => runWith(run, { coefficient: coefficientOf(eased, run.diameter) }),
    },
  ];
}

function nextRadius({ family, shape }: FittingItem): number | null {
  if (family?.rule !== "elbow") return null;
  const now = shape ?? family.shape?.usual ?? Infinity;
  const radii = family.points.flatMap((point) => (point.shape !== null && point.shape > now ? [point.shape] : []));
  return radii.length === 0 ? null : Math.min(...radii);
}

/** A filter or separator whose loss when clean stands beside its present one. */
function cleanedFilter({ run, cleanLoss }: TableRun): Change[] {
  const { device } = run;
  const clean = device === null ? null : cleanLoss();
  if (device === null || clean === null || !(clean >= 0 && clean < device.ratedLoss)) return [];
  return [
    { words: "filter cleaned to its rated loss", run: () => runWith(run, { device: { ...device, ratedLoss: clean } }) },
  ];
}

const coefficientOf = (name: string): number => lossCoefficient(rowOf(lossFamilies, name), null, null);

/** Kinds of hood entry from worse to better; the next better one that can be built at any hood. */
const BETTER_ENTRIES = ["flanged end", "bell mouth"].map((name) => ({ name, coefficient: coefficientOf(name) }));

function betterEntry({ run }: TableRun): Change[] {
  const now = run.hood ?? plainEnd;
  const better = BETTER_ENTRIES.find(({ coefficient }) => coefficient < now - 1e-9);
  if (better === undefined) return [];
  const { name, coefficient: hood } = better;
  return [{ words: `entry improved to ${name}`, run: () => runWith(run, { hood }) }];
}
