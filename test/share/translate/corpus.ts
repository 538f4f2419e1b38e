/** Seeded inputs for every function whose calls stay live in a copy. */
import type { Limits } from "../../../src/core/errors";
import type { Rule } from "../../../src/functions/signature";
import { materials } from "../../../src/reference/materials";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { gateConditions } from "../../../src/reference/gateConditions";
import { leakageClasses } from "../../../src/reference/leakageClasses";
import { convertibleUnits, fromSI, type Quantity, type UnitSystem, unitOf } from "../../../src/reference/quantities";
import { offeredEntries } from "../../../src/share/translate/tableBlocks/offeredEntries";
import type { CellValue } from "../../../src/sheets/workbook";
import { signed } from "../../support/cellFunctions";
import type { Random } from "./random";

export interface Sample {
  readonly name: string;
  readonly units: boolean;
  readonly shared?: readonly number[]; // arguments that five calls have in common: a list of fittings takes many cells
  readonly inputs: (random: Random, units: UnitSystem) => CellValue[];
}

const inUnit = (si: number, quantity: Quantity, units: UnitSystem): number => fromSI(si, unitOf(quantity, units));

const names = (rows: readonly { readonly key: string; readonly aliases: readonly string[] }[]): string[] =>
  rows.flatMap(({ key, aliases }) => [key, ...aliases]);

/** As people type names: capitals, blanks and hyphens where they like. */
const typed = (random: Random, name: string): string =>
  random.pick([name, name.toUpperCase(), ` ${name} `, name.replaceAll(" ", "-")]);

const material = (random: Random, units: UnitSystem): CellValue =>
  random.pick([
    random.pick([null, 0, "Smooth"]),
    typed(random, random.pick(names(materials))),
    inUnit(random.between(0, 3e-3), "diameter", units),
  ]);

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

/** What a cell of a small system holds, and well beyond it, in SI; a pure number by its limits. */
const SPANS: Partial<Record<Quantity, (random: Random) => number>> = {
  airflow: (random) => random.scale(1e-4, 3),
  diameter: (random) => random.scale(0.03, 1),
  velocity: (random) => random.scale(0.5, 50),
  pressure: (random) => random.scale(1, 8000),
  density: (random) => random.between(0.6, 1.5),
  length: (random) => random.between(0, 60),
  area: (random) => random.between(0.1, 50),
  openArea: (random) => random.scale(1e-6, 0.02),
};

function pureNumber(random: Random, { above, atLeast, atMost }: Limits): number {
  const [low, high] = [atLeast ?? (above ?? 0) + 0.1, atMost ?? 2000];
  return random.between(low, high);
}

/** A cell for one argument, drawn by the rule by which the function reads it. */
function cellFor(rule: Rule, random: Random, units: UnitSystem): CellValue {
  switch (rule.kind) {
    case "number": {
      const si = SPANS[rule.quantity]?.(random) ?? pureNumber(random, rule.limits);
      const value = inUnit(si, rule.quantity, units);
      return rule.needed ? value : random.maybe(value, 0.6);
    }
    case "beside":
      throw new Error("a shape and an angle hang on their fitting: draw them with it");
    case "word":
      return random.pick([null, typed(random, random.pick(rule.words))]);
    case "material":
      return material(random, units);
    case "fittings":
      return list(random);
    case "hood entry":
      return hood(random);
    case "gate condition":
      return typed(random, random.pick(names(gateConditions)));
    case "leakage class":
      return random.pick([random.between(1, 60), typed(random, random.pick(names(leakageClasses)))]);
    case "unit name":
      return random.pick(Object.values(convertibleUnits).flatMap((kind) => kind.flatMap((unit) => unit.names)));
  }
}

/** Arguments that hang together, or whose numbers must lie elsewhere than those of their kind. */
const OWN: Readonly<Record<string, Sample["inputs"]>> = {
  CONVERTUNIT: conversion,
  LOSSCOEFFICIENT: coefficient,
  JUNCTIONLOSS: (r, u) => {
    const main = r.scale(0.02, 1);
    const width = (): number => inUnit(r.between(0.08, 0.3), "diameter", u);
    return [
      r.between(5, 92),
      inUnit(main * r.between(0, 1.05), "airflow", u),
      inUnit(main, "airflow", u),
      ...[width(), width(), r.pick([null, 0, width()])],
      r.pick([null, "Branch", " straight "]),
      r.maybe(inUnit(r.between(0.6, 1.5), "density", u)),
    ];
  },
  DENSITY: (r, u) => [
    r.pick([
      inUnit(r.between(235, 330), "temperature", u),
      inUnit(r.between(255, 300), "temperature", u),
      "0°",
      0,
      null,
    ]),
    r.maybe(inUnit(r.between(-400, 4000), "length", u)),
    r.maybe(r.between(0, 1)),
  ],
  AIRFLOWERROR: (r, u) => [
    inUnit(r.scale(0.5, 50), "velocity", u),
    inUnit(r.between(0.05, 0.6), "diameter", u),
    ...[r.between(0, 9), inUnit(r.between(0, 0.5), "velocity", u), inUnit(r.between(0, 0.004), "diameter", u)].map(
      (value) => r.pick([value, value, value, value, "none", r.pick([0, null])]),
    ),
  ],
};

/** One argument that lies elsewhere than others of its kind. */
const ELSEWHERE: Readonly<Record<string, (random: Random, units: UnitSystem) => CellValue>> = {
  "TRADESIZE diameter": (random, units) => inUnit(random.between(0.066, 1.2), "diameter", units),
  "FITTINGLOSS diameter": fittingDiameter,
  "EQUIVLENGTH diameter": fittingDiameter,
};

const SHARED: Readonly<Record<string, readonly number[]>> = { FITTINGLOSS: [1, 2], EQUIVLENGTH: [0, 2] };

/** Every function over single values; those that begin with a fan's curve are compared as whole calls. */
export const samples: readonly Sample[] = signed
  .filter(({ first }) => first === 0)
  .map(({ name, names: args, rules, units }) => ({
    name,
    units,
    ...(SHARED[name] === undefined ? {} : { shared: SHARED[name] }),
    inputs:
      OWN[name] ??
      ((random, system) =>
        rules.map((rule, index) =>
          (ELSEWHERE[`${name} ${args[index]!}`] ?? ((r, u) => cellFor(rule, r, u)))(random, system),
        )),
  }));
