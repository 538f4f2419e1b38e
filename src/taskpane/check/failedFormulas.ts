import type { Calculated, ShownError } from "../../sheets/calculated";
import { callsOurs } from "../../sheets/ourCalls";
import { filledAddresses } from "../../sheets/rectangle";

/** A cell of an answer of ours that shows an error. */
export interface FailedFormula {
  readonly sheet: string;
  readonly at: string;
  readonly of: string; // the cell in which the formula stands
  readonly error: ShownError;
}

/** Cells that formulas with calls of our functions fill, and that show an error, in the order of the sheets. */
export const failedFormulas = ({ workbook, shown }: Calculated): FailedFormula[] =>
  workbook.sheets.flatMap(({ name: sheet, cells }) =>
    cells.flatMap((cell) => {
      if (!("formula" in cell) || !callsOurs(cell.formula)) return [];
      const here = shown.get(sheet);
      return filledAddresses(cell.at, here?.get(cell.at)?.fills ?? ONE_CELL).flatMap((at) => {
        const value = here?.get(at)?.value ?? null;
        return typeof value === "object" && value !== null ? [{ sheet, at, of: cell.at, error: value }] : [];
      });
    }),
  );

const ONE_CELL = { rows: 1, columns: 1 };
