import type { Guide } from "../guide";
import { inHost } from "../inHost";
import { lookUp } from "../tables/lookUp";

/**
 * A reference table, one row of it, or one value with its source; columns carry their unit in both systems.
 * @customfunction REFERENCE
 * @param table Name of the table: materials, fittings, hoods, transport, machines, leakage, gates, filters, exposure ...
 * @param [key] Key of a row, such as "pvc pipe"; the whole table when left out
 * @param [column] Header of a column, such as "roughness (mm)"; the whole row when left out
 * @returns table
 */
export function reference(table: unknown[][], key?: unknown[][], column?: unknown[][]): unknown[][] {
  return inHost(null, () => lookUp(table, key, column));
}

export const guide: Guide = {
  maths: "A table, a row or a value with its source beside it",
  source: "tables",
  basis: "",
  limits: "The view Tables shows the same rows with words around them.",
  cautions: ["metal with wood", "codes decide"],
  also: ["look up", "table", "cfm of a machine"],
  example: { asks: "Roughness of galvanised steel", args: ["materials", "galvanised steel", "roughness (mm)"] },
};
