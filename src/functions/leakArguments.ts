import { constantOfClass, constantOfEuropeanClass } from "../core/leaks/seamLeak";
import { requireNamed } from "../core/naming/findNamed";
import { gateConditions } from "../reference/gateConditions";
import { leakageClasses } from "../reference/leakageClasses";
import type { GateConditionRow } from "../reference/schema";
import type { Argument } from "./arguments";
import { readNumber } from "./arguments";
import { refuseCell } from "./cellErrors";

/** A slide gate's condition by name. */
export const gateCondition = (name: string, given: unknown): Argument<GateConditionRow> => ({
  name,
  given,
  needed: true,
  quantity: null,
  read: (cell) => {
    const what = `a name in the table "gates"`;
    return typeof cell === "string" ? requireNamed(name, gateConditions, cell, what) : refuseCell(name, cell, what);
  },
});

/** A leakage class as the constant of the seam leak, m³/(s m² Pa^0.65): a number is a class C_L, a text a name in the table. */
export const leakageClass = (name: string, given: unknown): Argument<number> => ({
  name,
  given,
  needed: true,
  quantity: null,
  read: (cell, system) => {
    const what = "a class number or an EN letter A to D";
    if (cell === null) return refuseCell(name, cell, what);
    if (typeof cell !== "string" || (cell.trim() !== "" && Number.isFinite(Number(cell))))
      return constantOfClass(readNumber(name, cell, "ratio", system));
    const row = requireNamed(name, leakageClasses, cell, what);
    return row.system === "EN" ? constantOfEuropeanClass(row.value) : constantOfClass(row.value);
  },
});
