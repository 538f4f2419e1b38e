import { DENSITY_CELL, UNITS_CELL } from "./demo/budgetLayout";
import { BUDGET_SHEET, budgetSheet } from "./demo/budgetSheet";
import { cautionsSheet } from "./demo/cautionsSheet";
import { claimsSheet } from "./demo/claimsSheet";
import { flowSheet } from "./demo/flowSheet";
import { readingsSheet } from "./demo/readingsSheet";
import { singleCellsSheet } from "./demo/singleCellsSheet";
import type { Workbook } from "./workbook";

/** The workbook that the local sheet opens on. */
export const demo: Workbook = {
  name: "Demo",
  sheets: [budgetSheet, flowSheet, readingsSheet, claimsSheet, singleCellsSheet, cautionsSheet],
  names: [
    { name: "units", sheet: BUDGET_SHEET, at: UNITS_CELL },
    { name: "density", sheet: BUDGET_SHEET, at: DENSITY_CELL },
  ],
};
