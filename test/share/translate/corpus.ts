/** Seeded inputs for every function whose calls stay live in a copy. */
import { materials } from "../../../src/reference/materials";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { gateConditions } from "../../../src/reference/gateConditions";
import { leakageClasses } from "../../../src/reference/leakageClasses";
import { convertibleUnits, fromSI, type Quantity, type UnitSystem, unitOf } from "../../../src/reference/quantities";
import { offeredEntries } from "../../../src/share/translate/tableBlocks/offeredEntries";
import type { CellValue } from "../../../src/sheets/workbook";
import type { Random } from "./random";

export interface Sample {
  readonly name: string;
  readonly units: boolean;
  readonly shared?: readonly number[]; // arguments that five calls have in common: a list of fittings takes many cells
  readonly inputs: (random: Random, units: UnitSystem) => CellValue[];
}

const inUnit = (si: number, quantity: Quantity, units: UnitSystem): number => fromSI(si, unitOf(quantity, units));

// What a small system has, and well beyond it, in SI.
const airflow = (random: Random, units: UnitSystem) => inUnit(random.scale(1e-4, 3), "airflow", units);
const diameter = (random: Random, units: UnitSystem) => inUnit(random.scale(0.03, 1), "diameter", units);
const velocity = (random: Random, units: UnitSystem) => inUnit(random.scale(0.5, 50), "velocity", units);
const pressure = (random: Random, units: UnitSystem) => inUnit(random.scale(1, 8000), "pressure", units);
const density = (random: Random, units: UnitSystem) =>
  random.maybe(inUnit(random.between(0.6, 1.5), "density", units), 0.6);

const names = (rows: readonly { readonly key: string; readonly aliases: readonly string[] }[]): string[] =>
  rows.flatMap(({ key, aliases }) => [key, ...aliases]);

/** As people type names: capitals, blanks and hyphens where they like. */
const typed = (random: Random, name: string): string =>
  random.pick([name, name.toUpperCase(), ` ${name} `, name.replaceAll(" ", "-")]);

const material = (random: Random, units: UnitSystem): CellValue =>
  random.pick([null, typed(random, random.pick(names(materials))), inUnit(random.between(0, 3e-3), "diameter", units)]);

function sortedEntries() {
  const entries = offeredEntries();
  const fixed = entries.filter(({ item }) => item === null);
  return {
    fixed,
    byDiameter: entries.filter(({ item }) => item !== null),
    hoods: fixed.filter(({ family }) => family.kind === "hood"),
  };
}

let sorted: ReturnType<typeof sortedEntries> | undefined;
/** Made when first asked for, so that a fault in them is a test's and not the file's. */
const offered = () => (sorted ??= sortedEntries());

function list(random: Random): CellValue {
  const entries = Array.from({ length: random.pick([1, 1, 2, 3, 8]) }, () => {
    const entry = random.pick([
      random.pick(offered().fixed).text,
      random.pick(offered().byDiameter).text,
      "0.37",
      ".5",
      "2",
    ]);
    return `${entry}${random.pick(["", "", " x2", " x12"])}`;
  });
  return random.pick([entries.join("; "), entries.join(";"), random.between(0, 3)]);
}

const hood = (random: Random): CellValue =>
  random.pick([random.pick(offered().hoods).text, random.pick(offered().hoods).text, random.between(0, 2)]);

const conversion = (random: Random): CellValue[] => {
  const units = random.pick(Object.values(convertibleUnits)).flatMap((unit) => unit.names);
  return [random.between(-50, 5000), random.pick(units), random.pick(units)];
};

/** A name alone, or beside it a shape and an angle that may lie outside its printed points. */
const coefficient = (random: Random, units: UnitSystem): CellValue[] => {
  const { key, points, shape, angle } = random.pick(lossFamilies);
  if (random.maybe(true, 0.3) === null) return [random.pick(offered().fixed).text, null, null];
  const [one, other] = [random.pick(points), random.pick(points)];
  const part = random.between(0, 1);
  const between = (from: number | null, to: number | null): number | null =>
    from === null || to === null ? null : from + part * (to - from);
  const x = between(one.shape, other.shape);
  return [
    typed(random, key),
    x !== null && shape?.quantity === "diameter" ? inUnit(x, "diameter", units) : x,
    random.maybe(between(one.angle, other.angle) ?? (angle === null ? null : random.between(20, 120))),
  ];
};

/** Diameters at which every fitting that goes by diameter has a K. */
const fittingDiameter = (random: Random, units: UnitSystem) => inUnit(random.between(0.1, 0.254), "diameter", units);

export const samples: readonly Sample[] = [
  { name: "AREA", units: true, inputs: (r, u) => [diameter(r, u), r.maybe(diameter(r, u), 0.5)] },
  { name: "VELOCITY", units: true, inputs: (r, u) => [airflow(r, u), diameter(r, u), r.maybe(diameter(r, u), 0.5)] },
  { name: "AIRFLOW", units: true, inputs: (r, u) => [velocity(r, u), diameter(r, u), r.maybe(diameter(r, u), 0.5)] },
  { name: "DIAMETER", units: true, inputs: (r, u) => [airflow(r, u), velocity(r, u)] },
  {
    name: "TRADESIZE",
    units: true,
    inputs: (r, u) => [
      inUnit(r.between(0.066, 1.2), "diameter", u),
      r.pick([null, "down", " Up", "nearest", "NEAREST"]),
    ],
  },
  { name: "EQUIVDIAMETER", units: true, inputs: (r, u) => [diameter(r, u), diameter(r, u)] },
  {
    name: "DENSITY",
    units: true,
    inputs: (r, u) => [
      r.maybe(inUnit(r.between(235, 330), "temperature", u)),
      r.maybe(inUnit(r.between(-400, 4000), "length", u)),
      r.maybe(r.between(0, 1)),
    ],
  },
  { name: "VELOCITYPRESSURE", units: true, inputs: (r, u) => [velocity(r, u), density(r, u)] },
  { name: "PITOTVELOCITY", units: true, inputs: (r, u) => [pressure(r, u), density(r, u)] },
  { name: "FRICTION", units: true, inputs: (r, u) => [airflow(r, u), diameter(r, u), material(r, u), density(r, u)] },
  {
    name: "RUNLOSS",
    units: true,
    inputs: (r, u) => [
      airflow(r, u),
      diameter(r, u),
      inUnit(r.between(0, 60), "length", u),
      material(r, u),
      density(r, u),
    ],
  },
  { name: "LOSSCOEFFICIENT", units: true, inputs: coefficient },
  {
    name: "FITTINGLOSS",
    units: true,
    shared: [1, 2],
    inputs: (r, u) => [airflow(r, u), fittingDiameter(r, u), list(r), r.maybe(r.between(0, 4), 0.5), density(r, u)],
  },
  {
    name: "EQUIVLENGTH",
    units: true,
    shared: [0, 2],
    inputs: (r, u) => [list(r), airflow(r, u), fittingDiameter(r, u), material(r, u), density(r, u)],
  },
  { name: "HOODSUCTION", units: true, inputs: (r, u) => [airflow(r, u), diameter(r, u), hood(r), density(r, u)] },
  { name: "HOODAIRFLOW", units: true, inputs: (r, u) => [pressure(r, u), diameter(r, u), hood(r), density(r, u)] },
  {
    name: "DEVICELOSS",
    units: false,
    inputs: (r) => [r.between(0, 2000), r.between(0, 9), r.between(100, 2000), r.maybe(r.between(0.5, 2.5))],
  },
  {
    name: "LEAK",
    units: true,
    inputs: (r, u) => [
      inUnit(r.scale(1e-6, 0.02), "openArea", u),
      pressure(r, u),
      r.maybe(r.between(0.2, 1), 0.4),
      density(r, u),
    ],
  },
  {
    name: "LEAKAREA",
    units: true,
    inputs: (r, u) => [airflow(r, u), pressure(r, u), r.maybe(r.between(0.2, 1), 0.4), density(r, u)],
  },
  {
    name: "LEAKAT",
    units: false,
    inputs: (r) => [r.between(0, 500), r.between(0.1, 12), r.between(0, 12), r.maybe(r.between(0.5, 1), 0.5)],
  },
  {
    name: "GATELEAK",
    units: true,
    inputs: (r, u) => [typed(r, r.pick(names(gateConditions))), diameter(r, u), pressure(r, u), density(r, u)],
  },
  {
    name: "SEAMLEAK",
    units: true,
    inputs: (r, u) => [
      r.pick([r.between(1, 60), typed(r, r.pick(names(leakageClasses)))]),
      inUnit(r.between(0.1, 50), "area", u),
      pressure(r, u),
    ],
  },
  {
    name: "CORRECTEDREADING",
    units: false,
    inputs: (r) => [r.between(0, 2000), r.between(0.01, 2), r.between(0.01, 2)],
  },
  {
    name: "AIRFLOWERROR",
    units: true,
    inputs: (r, u) => [
      velocity(r, u),
      inUnit(r.between(0.05, 0.6), "diameter", u),
      r.maybe(r.between(0, 9)),
      r.maybe(inUnit(r.between(0, 0.5), "velocity", u)),
      r.maybe(inUnit(r.between(0, 0.004), "diameter", u)),
    ],
  },
  { name: "AIRPOWER", units: true, inputs: (r, u) => [airflow(r, u), pressure(r, u), r.maybe(r.between(0.2, 1))] },
  { name: "CONVERTUNIT", units: false, inputs: conversion },
];
