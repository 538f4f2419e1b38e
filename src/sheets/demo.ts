import { DENSITY_CELL, UNITS_CELL } from "./demo/budgetLayout";
import { BUDGET_SHEET, budgetSheet } from "./demo/budgetSheet";
import { cautionsSheet } from "./demo/cautionsSheet";
import { flowSheet } from "./demo/flowSheet";
import { singleCellsSheet } from "./demo/singleCellsSheet";
import type { Workbook } from "./workbook";

/** The workbook that the local sheet opens on. */
export const demo: Workbook = {
  name: "Demo",
  sheets: [budgetSheet, flowSheet, singleCellsSheet, cautionsSheet],
  names: [
    { name: "units", sheet: BUDGET_SHEET, at: UNITS_CELL },
    { name: "density", sheet: BUDGET_SHEET, at: DENSITY_CELL },
  ],
};
