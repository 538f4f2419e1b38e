import type { Calculated, CellErrorValue } from "../../../sheets/calculated";
import { callsOurs } from "../../../sheets/ourCalls";

/** A formula of ours that shows an error. */
export interface FailedFormula {
  readonly sheet: string;
  readonly at: string;
  readonly error: CellErrorValue;
}

/** Formulas that call our functions and show an error, in the order of the sheets. */
export const failedFormulas = ({ workbook, shown }: Calculated): FailedFormula[] =>
  workbook.sheets.flatMap(({ name: sheet, cells }) =>
    cells.flatMap((cell) => {
      if (!("formula" in cell) || !callsOurs(cell.formula)) return [];
      const value = shown.get(sheet)?.get(cell.at)?.value ?? null;
      return typeof value === "object" && value !== null ? [{ sheet, at: cell.at, error: value }] : [];
    }),
  );
