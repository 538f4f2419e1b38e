import { plain } from "../../core/naming/findNamed";
import type { UnitSystem } from "../../reference/quantities";
import type { Argument } from "./translation";
import { itemAt } from "../../reference/itemAt";

/** The unit system of a call, from what its argument shows now; null where that cannot be told or is no unit system. */
export function unitsOf(arg: Argument | null): UnitSystem | null {
  if (arg === null) return "IP";
  const value =
    arg.computed === true || arg.value.length !== 1 || itemAt(arg.value, 0).length !== 1
      ? undefined
      : itemAt(arg.value, 0)[0];
  if (value === null || value === 0 || (typeof value === "string" && value.trim() === "")) return "IP";
  if (typeof value !== "string") return null;
  const word = plain(value);
  return word === "si" ? "SI" : word === "ip" || word === "i p" ? "IP" : null;
}
