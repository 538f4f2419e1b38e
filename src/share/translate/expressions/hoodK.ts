import type { UnitSystem } from "../../../reference/quantities";
import type { LookupTables } from "../lookupTables";
import { isListed, plainName } from "./text";

/** K of a hood entry in a cell: a number is the K itself, a text one entry of the table of hoods. */
export function hoodK(cell: string, system: UnitSystem, tables: LookupTables): { value: string; check: string } {
  const block = tables.block(`hoods ${system}`);
  const names = block.range("entry");
  const named = `INDEX(${block.range("K")},MATCH(${plainName(cell)},${names},0))`;
  return {
    value: `IF(ISNUMBER(${cell}),${cell},${named})`,
    check: `IF(ISNUMBER(${cell}),${cell}>=0,${isListed(plainName(cell), names)})`,
  };
}
