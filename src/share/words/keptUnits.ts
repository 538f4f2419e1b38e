import type { UnitSystem } from "../../reference/quantities";
import { text } from "../../sheets/cells";
import type { CellName, Sheet, Workbook } from "../../sheets/workbook";
import type { Original } from "../originals";

/** Where the copy keeps its units. */
const KEPT = { label: "C1", at: "D1" } as const;

/**
 * The name of the units cell, given to a cell of the copy's workings: headings follow that name, so that another word pasted into the
 * units cell of the budget cannot say of numbers in one system that they are in the other.
 */
export function keptUnits(
  { names }: Workbook,
  units: UnitSystem,
  workings: Sheet,
): { readonly names: readonly CellName[]; readonly workings: Sheet; readonly said: readonly Original[] } {
  const named = names.find(({ name }) => name.toLowerCase() === "units");
  if (named === undefined) return { names, workings, said: [] };
  const { name, sheet, at } = named;
  return {
    names: names.map((one) => (one === named ? { name, sheet: workings.name, at: KEPT.at } : one)),
    workings: { ...workings, cells: [...workings.cells, text(KEPT.label, "units"), text(KEPT.at, units)] },
    said: [
      { sheet, at, formula: "", written: { rows: 1, columns: 1 }, said: { part: "name", was: name, became: units } },
    ],
  };
}
