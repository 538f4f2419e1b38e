import { plain } from "../../core/naming/findNamed";
import type { UnitSystem } from "../../reference/quantities";
import { cellText } from "../../sheets/rangeRef";
import { apart, together } from "./lettersApart";
import type { Argument, CallContext, ShownValue } from "./translation";
import { itemAt } from "../../reference/itemAt";

/** The unit system of a call, from what its argument shows now; null where that cannot be told or is no unit system. */
export function unitsOf(arg: Argument | null, context: CallContext): UnitSystem | null {
  const system = systemOf(arg);
  const stands = context.takesUnits === undefined ? null : unitsStand(arg, context);
  if (system !== null && stands !== null) context.takesUnits?.({ sheet: arg!.range!.sheet, system, stands });
  return system;
}

function systemOf(arg: Argument | null): UnitSystem | null {
  if (arg === null) return "IP";
  const value =
    arg.computed === true || arg.value.length !== 1 || itemAt(arg.value, 0).length !== 1
      ? undefined
      : itemAt(arg.value, 0)[0];
  if (value === undefined) return null;
  if (isNone(value)) return "IP";
  if (typeof value !== "string") return null;
  const word = plain(value);
  return word === "si" ? "SI" : word === "ip" || word === "i p" ? "IP" : null;
}

const isNone = (value: ShownValue): boolean =>
  value === null || value === 0 || (typeof value === "string" && value.trim() === "");

/**
 * The cell that says whether the units of a call still stand where it takes them from: its plain formulas go on in those of the day, whatever
 * is typed there. Null where the call names them itself.
 */
export function unitsStand(arg: Argument | null, { workings, sheet }: CallContext): string | null {
  if (arg?.range === undefined || systemOf(arg) === null) return null;
  const cell = `TRIM(${cellText(arg.range.sheet, arg.range.left, arg.range.top)})`;
  const is = (word: string): string => `${cell}=${together(`"${apart(word)}"`)}`;
  const stands = systemOf(arg) === "SI" ? is("SI") : `OR(${is("IP")},${is("I-P")},${cell}="",${cell}="0")`;
  return workings.cell(`IFERROR(${stands},FALSE)`, sheet);
}
