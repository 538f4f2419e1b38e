import { requireNamed } from "../core/naming/findNamed";
import { gateConditions } from "../reference/gateConditions";
import { leakageClasses } from "../reference/leakageClasses";
import { type UnitSystem, unitOf } from "../reference/quantities";
import {
  readBeside,
  readChoice,
  readFittings,
  readMaterial,
  readNumber,
  readNumberIn,
  readOptional,
  usualRoughness,
} from "./arguments";
import { refuseCell } from "./cellErrors";
import type { Cell } from "./cells";
import type { LeakageClass, Rule } from "./signature";

/** Reads one cell of an argument; undefined where the call leaves it out, which is not the same as a blank cell. */
type Reader = (cell: Cell | undefined) => unknown;

/** How the cells of one argument are read into SI. */
export function readerOf(name: string, rule: Rule, system: UnitSystem): Reader {
  const { ifLeftOut, read } = readingOf(name, rule, system);
  return (cell) => (cell !== undefined ? read(cell) : ifLeftOut === undefined ? read(null) : ifLeftOut());
}

interface Reading {
  readonly read: (cell: Cell) => unknown;
  readonly ifLeftOut?: () => unknown; // as if its cell were blank where there is none
}

function readingOf(name: string, rule: Rule, system: UnitSystem): Reading {
  switch (rule.kind) {
    case "number": {
      const unit = unitOf(rule.quantity, system);
      const number = (cell: Cell): number => readNumberIn(unit, name, cell, rule.limits);
      if (rule.needed) return { read: (cell) => (cell === null ? refuseCell(name, cell, "given") : number(cell)) };
      return { read: (cell) => readOptional(name, cell, rule, system), ifLeftOut: () => rule.usual };
    }
    case "beside":
      return { read: (cell) => readBeside(name, cell, rule, system), ifLeftOut: () => null };
    case "word":
      return { read: (cell) => readChoice(name, cell, rule.words) };
    case "material":
      return { read: (cell) => readMaterial(name, cell, system), ifLeftOut: usualRoughness };
    case "fittings":
      return { read: (cell) => readFittings(name, cell, "any", system) };
    case "hood entry":
      return { read: (cell) => readFittings(name, cell, "hood", system) };
    case "gate condition":
      return { read: (cell) => readGateCondition(name, cell) };
    case "leakage class":
      return { read: (cell) => readLeakageClass(name, cell, system) };
    case "unit name":
      return { read: (cell) => (typeof cell === "string" ? cell : refuseCell(name, cell, "a name")) };
  }
}

function readGateCondition(name: string, cell: Cell) {
  const what = `a name in the table "gates"`;
  return typeof cell === "string" ? requireNamed(name, gateConditions, cell, what) : refuseCell(name, cell, what);
}

/** A number is a class C_L, a text a name in the table. What it means in the seam's law, the function itself knows. */
function readLeakageClass(name: string, cell: Cell, system: UnitSystem): LeakageClass {
  const what = "a class number or an EN letter A to D";
  if (cell === null) return refuseCell(name, cell, what);
  if (typeof cell !== "string" || (cell.trim() !== "" && Number.isFinite(Number(cell))))
    return { isEuropean: false, value: readNumber(name, cell, "ratio", system) };
  const row = requireNamed(name, leakageClasses, cell, what);
  return { isEuropean: row.system === "EN", value: row.value };
}
