import type { UnitSystem } from "../../../reference/quantities";
import { sheetPrefix } from "../../sheetPrefix";
import type { Frame } from "../frame";
import { namedCells } from "../start/startLayout";
import type { Plan } from "./plan";
import { type SheetKey, usualNames } from "../../sheetKeys";
import type { Taken } from "./taken";

/** What the sheets of a plan call one another. */
export function frameOf(units: UnitSystem, planned: Plan, taken: Taken): Frame {
  const ref = (key: SheetKey, range: string): string => {
    const name = planned.sheets[key];
    if (name === undefined) throw new Error(`a sheet refers to ${usualNames[key]}, which is neither added nor there`);
    return `${sheetPrefix(name)}${range}`;
  };
  return {
    units,
    sheet: (key) => planned.sheets[key] ?? usualNames[key],
    has: (key) => planned.sheets[key] !== undefined,
    adds: (key) => planned.added.includes(key),
    ref,
    name: (key) => {
      if (planned.added.includes("start")) return planned.names[key];
      return taken.ourNames?.[key] ?? ref("start", namedCells[key]);
    },
  };
}
