import { requireNamed } from "../core/naming/findNamed";
import { gateConditions } from "../reference/gateConditions";
import { leakageClasses } from "../reference/leakageClasses";
import type { UnitSystem } from "../reference/quantities";
import {
  readBeside,
  readChoice,
  readFittings,
  readMaterial,
  readNumber,
  readOptional,
  usualRoughness,
} from "./arguments";
import { refuseCell } from "./cellErrors";
import type { Cell } from "./cells";
import type { LeakageClass, Rule } from "./signature";

/**
 * How the cells of one argument are read into SI: made once a call, used once a cell.
 *
 * @param isGiven whether the call has this argument; one that is left out is not one whose cell is blank
 */
export function readerOf(name: string, rule: Rule, system: UnitSystem, isGiven: boolean): (cell: Cell) => unknown {
  switch (rule.kind) {
    case "number": {
      const { quantity } = rule;
      if (rule.needed)
        return (cell) => (cell === null ? refuseCell(name, cell, "given") : readNumber(name, cell, quantity, system));
      return isGiven ? (cell) => readOptional(name, cell, rule, system) : () => rule.usual;
    }
    case "beside":
      return isGiven ? (cell) => readBeside(name, cell, rule, system) : () => null;
    case "word":
      return (cell) => readChoice(name, cell, rule.words);
    case "material":
      return isGiven ? (cell) => readMaterial(name, cell, system) : usualRoughness;
    case "fittings":
      return (cell) => readFittings(name, cell, "any", system);
    case "hood entry":
      return (cell) => readFittings(name, cell, "hood", system);
    case "gate condition":
      return (cell) => readGateCondition(name, cell);
    case "leakage class":
      return (cell) => readLeakageClass(name, cell, system);
    case "unit name":
      return (cell) => (typeof cell === "string" ? cell : refuseCell(name, cell, "a name"));
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
