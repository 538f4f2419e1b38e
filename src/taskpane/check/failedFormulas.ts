import type { Calculated, ShownError } from "../../sheets/calculated";
import { filledAddresses } from "../../sheets/rectangle";
import { ourFormulasOn } from "./ourFormulas";

/** A cell of an answer of ours that shows an error. */
export interface FailedFormula {
  readonly sheet: string;
  readonly at: string;
  readonly of: string; // the cell in which the formula stands
  readonly error: ShownError;
}

/** Cells that formulas with calls of our functions fill, and that show an error, in the order of the sheets. */
export const failedFormulas = ({ workbook, shown }: Calculated): FailedFormula[] =>
  workbook.sheets.flatMap((one) => {
    const sheet = one.name;
    const here = shown.get(sheet);
    return ourFormulasOn(one).flatMap(({ at: of }) =>
      filledAddresses(of, here?.get(of)?.fills ?? ONE_CELL).flatMap((at) => {
        const value = here?.get(at)?.value ?? null;
        return typeof value === "object" && value !== null ? [{ sheet, at, of, error: value }] : [];
      }),
    );
  });

const ONE_CELL = { rows: 1, columns: 1 };
