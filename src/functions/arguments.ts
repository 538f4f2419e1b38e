import { DENSITY_LIMITS, STANDARD_DENSITY } from "../core/air/constants";
import { DomainError, isWithin, type Limits, requireWithin } from "../core/errors";
import { bareCoefficient, type FittingItem, parseFittingList } from "../core/fittings/fittingList";
import type { Beside } from "../core/fittings/singleCoefficient";
import { plain, requireNamed } from "../core/naming/findNamed";
import { DEFAULT_MATERIAL, materials } from "../reference/materials";
import { fromSI, type Quantity, toSI, type Unit, type UnitSystem, unitOf } from "../reference/quantities";
import { SMOOTH } from "../reference/zeroWords";
import { limitsIn, refuseCell } from "./cellErrors";
import { type Cell, CellErrorValue, cellAt, isNothing, rangeOf } from "./cells";
import { readingsOfPoint } from "./readingsOfPoint";
import type { BesideRule, OptionalNumber } from "./signature";

/** Wall roughness [m] from a material's name or a number; a wall of none is said in a word, since a blank may come as 0. */
export function readMaterial(
  name: string,
  cell: Cell,
  system: UnitSystem,
  otherwise: "left out" | "blank" = "left out",
): number {
  if (isNothing(cell))
    return refuseCell(name, cell, waysOut("a name, a roughness above 0", SMOOTH, otherwise, DEFAULT_MATERIAL));
  if (saysZero(cell, SMOOTH)) return 0;
  if (typeof cell !== "string" || numberIn(cell) !== null) return readNumber(name, cell, "diameter", system);
  return requireNamed(name, materials, cell, `a name in the table "materials" or a roughness`).roughness;
}

/** Roughness where no material is given [m]. */
export const usualRoughness = (): number => requireNamed("material", materials, DEFAULT_MATERIAL, "").roughness;

/** A number that may be left out, from a cell that is given. */
export function readOptional<Usual extends number | null>(
  name: string,
  cell: Cell,
  { quantity, limits, usual, zero }: OptionalNumber<Usual>,
  system: UnitSystem,
): number | Usual {
  if (typeof zero === "object") {
    const unit = unitOf(quantity, system);
    if (isNothing(cell))
      return refuseCell(name, cell, waysOut("a number other than 0", zero, "left out", shownIn(unit, usual)));
    return saysZero(cell, zero) ? toSI(0, unit) : readNumber(name, cell, quantity, system, limits);
  }
  if (isNothing(cell)) return zero === "none" ? 0 : usual;
  return readNumber(name, cell, quantity, system, limits);
}

/** A fitting's shape or angle beside its name. */
export function readBeside(name: string, cell: Cell, { quantity, words }: BesideRule, system: UnitSystem): Beside {
  if (isNothing(cell)) return "blank or 0";
  return saysZero(cell, words) ? 0 : readNumber(name, cell, quantity!, system);
}

const shownIn = (unit: Unit, usual: number | null): string =>
  usual === null ? "" : `${Number(fromSI(usual, unit).toPrecision(4))} ${unit.label}`.trim();

const saysZero = (cell: Cell, words: readonly string[]): boolean =>
  typeof cell === "string" && words.includes(plain(cell));

const waysOut = (what: string, words: readonly string[], otherwise: string, usual: string): string =>
  `${what}, "${words[0]!}" for 0, or ${otherwise} for ${usual}`;

/** A fitting, a hood entry, a list of them, or a bare coefficient. */
export function readFittings(
  name: string,
  cell: Cell,
  kind: "hood" | "any",
  system: UnitSystem,
): readonly FittingItem[] {
  if (cell === null || cell instanceof CellErrorValue || typeof cell === "boolean") {
    return refuseCell(
      name,
      cell,
      kind === "hood" ? "a hood entry's name or its K" : "a fitting's name, a list of them, or a K",
    );
  }
  if (typeof cell === "number") return [bareCoefficient(name, cell, 1)];
  const items = parseFittingList(name, cell, unitOf("diameter", system).factor, kind);
  if (items.length === 0) throw new DomainError(name, cell, "given");
  return items;
}

/** One of a few words; a blank takes the first. */
export function readChoice<Word extends string>(name: string, cell: Cell, words: readonly Word[]): Word {
  if (isNothing(cell)) return words[0]!;
  const found =
    typeof cell === "string" ? words.find((word) => word === cell || plain(word) === plain(cell)) : undefined;
  return found ?? refuseCell(name, cell, words.map((word) => `"${word}"`).join(" or "));
}

/** The unit system of a call; one cell, blank means I-P. */
export function readUnits(given: unknown): UnitSystem {
  const cell = singleCell("units", given);
  return readChoice("units", typeof cell === "string" && plain(cell) === "i p" ? "IP" : cell, ["IP", "SI"]);
}

/** One cell of an argument that is not for ranges. */
export function singleCell(name: string, given: unknown): Cell {
  if (given == null) return null;
  const range = rangeOf(given);
  const { rows, wide } = range;
  if (rows.length > 1 || wide > 1) throw new DomainError(name, `${rows.length} by ${wide} cells`, "one cell");
  return cellAt(range, 0, 0);
}

/** The density of a whole-table call [kg/m3]. */
export function readDensity(given: unknown, system: UnitSystem): number {
  const cell = singleCell("density", given);
  if (isNothing(cell)) return STANDARD_DENSITY;
  return readWithin("density", cell, "density", DENSITY_LIMITS, system);
}

/** A number within limits [SI], refused in the user's unit. */
export function readWithin(name: string, cell: Cell, quantity: Quantity, limits: Limits, system: UnitSystem): number {
  const value = readNumber(name, cell, quantity, system, limits);
  const unit = unitOf(quantity, system);
  if (!isWithin(value, limits)) requireWithin(name, fromSI(value, unit), limitsIn(unit, limits), unit.label);
  return value;
}

/** A number or a numeric text, from the user's unit into SI; limits tell whether it may be a percentage. */
export const readNumber = (
  name: string,
  cell: Cell,
  quantity: Quantity,
  system: UnitSystem,
  limits: Limits | null = null,
): number => readNumberIn(unitOf(quantity, system), name, cell, limits);

const LARGEST_RATIO = 10; // what may be more is a number in percent or a loss coefficient, of which 60% is no number

/** The same in a unit that is known already. A percentage is a share of 1, or a ratio; it is no length, and no number that is in percent itself. */
export function readNumberIn(unit: Unit, name: string, cell: Cell, limits: Limits | null): number {
  const isRatio = unit.label === "" && (limits?.atMost ?? Infinity) <= LARGEST_RATIO;
  const text = typeof cell === "string" && isRatio ? cell.replace(/\s*%\s*$/, "e-2") : cell;
  const value = typeof text === "number" ? text : typeof text === "string" ? numberIn(text) : null;
  if (value === null || !Number.isFinite(value)) {
    return refuseCell(name, cell, unit.label === "" ? "a number" : `a number (${unit.label})`);
  }
  const [larger] = typeof text === "string" ? readingsOfPoint(text.trim()) : [value];
  if (larger !== value) return refuseCell(name, cell, `a number, not a text that may mean ${larger} or ${value}`);
  return toSI(value, unit);
}

function numberIn(text: string): number | null {
  return /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i.test(text) ? Number(text) : null;
}
