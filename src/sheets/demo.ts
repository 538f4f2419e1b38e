import { budgetBook } from "./book/budgetBook";
import { singleCellsSheet } from "./demo/singleCellsSheet";
import type { Workbook } from "./workbook";
import { sheetKeys } from "./sheetKeys";

const budget = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });

/** The workbook that the local sheet opens on: the budget filled with the invented shed, and one function to a line. */
export const demo: Workbook = { ...budget, name: "Demo", sheets: [...budget.sheets, singleCellsSheet] };
