import { LARGEST_COEFFICIENT } from "../../../core/largest";
import type { UnitSystem } from "../../../reference/quantities";
import type { LookupTables } from "../lookupTables";
import { entryName, isListed, NO_ANSWER } from "./text";

/**
 * K of one hood entry or fitting in a cell: a number is the K itself, a text one entry of the table. A fitting that goes by
 * the duct's diameter has none here, nor has a list.
 */
export function entryK(
  cell: string,
  kind: "hoods" | "fittings",
  system: UnitSystem,
  tables: LookupTables,
): { value: string; check: string } {
  const block = tables.block(`${kind} ${system}`);
  const names = block.range("entry");
  const name = entryName(cell);
  const k = `INDEX(${block.range("K")},MATCH(${name},${names},0))`;
  const listed = isListed(name, names);
  const named = kind === "hoods" ? k : `IF(${listed},IF(${k}="",${NO_ANSWER},${k}),${NO_ANSWER})`;
  return {
    value: `IF(ISNUMBER(${cell}),${cell},${named})`,
    check: `IF(ISNUMBER(${cell}),AND(${cell}>=0,${cell}<=${LARGEST_COEFFICIENT}),${listed})`,
  };
}

/** K of a hood entry in a cell. */
export const hoodK = (cell: string, system: UnitSystem, tables: LookupTables): { value: string; check: string } =>
  entryK(cell, "hoods", system, tables);
