import { placeOf } from "../../sheets/address";
import { runColumns } from "../../sheets/book/layout";
import type { Calculated } from "../../sheets/calculated";
import type { Sheet } from "../../sheets/workbook";
import { callsOurs } from "./storedFormula";

/** Whether a workbook has anything of ours: a formula that calls DUCT, or the header of a runs table. */
export const isBudget = ({ workbook }: Calculated): boolean =>
  workbook.sheets.some((sheet) => hasOurFormula(sheet) || hasRunsHeader(sheet));

const hasOurFormula = (sheet: Sheet): boolean =>
  sheet.cells.some((cell) => "formula" in cell && /duct/i.test(cell.formula) && callsOurs(cell.formula));

/** "Run" with "To" in the cell to its right, as every runs table begins. */
function hasRunsHeader(sheet: Sheet): boolean {
  const [run, to] = runColumns;
  const places = (word: string): Set<string> =>
    new Set(
      sheet.cells.flatMap((cell) => {
        if (!("value" in cell) || cell.value !== word) return [];
        const { row, column } = placeOf(cell.at);
        return [`${row}/${word === to ? column - 1 : column}`];
      }),
    );
  const right = places(to);
  return [...places(run)].some((place) => right.has(place));
}
