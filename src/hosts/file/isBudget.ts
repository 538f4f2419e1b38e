import { neededNames } from "../../reference/columnsOfRuns";
import { placeOf } from "../../sheets/address";
import type { Calculated } from "../../sheets/calculated";
import { callsOurs } from "../../sheets/ourCalls";
import type { Sheet } from "../../sheets/workbook";

/** Whether a workbook has anything of ours: a formula that calls DUCT, or the header of a runs table. */
export const isBudget = ({ workbook }: Calculated): boolean =>
  workbook.sheets.some((sheet) => hasOurFormula(sheet) || hasRunsHeader(sheet));

const hasOurFormula = (sheet: Sheet): boolean =>
  sheet.cells.some((cell) => "formula" in cell && callsOurs(cell.formula));

/** A row in which the names of a run and of what it joins are headed, as in every runs table, in whatever order. */
function hasRunsHeader({ cells }: Sheet): boolean {
  const rowsOf = (header: string): Set<number> =>
    new Set(cells.flatMap((cell) => ("value" in cell && cell.value === header ? [placeOf(cell.at).row] : [])));
  const [first, ...others] = neededNames.map(rowsOf);
  return [...first!].some((row) => others.every((rows) => rows.has(row)));
}
