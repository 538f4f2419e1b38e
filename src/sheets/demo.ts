import { budgetBook } from "./book/budgetBook";
import { singleCellsSheet } from "./demo/singleCellsSheet";
import type { Workbook } from "./workbook";
import { sheetKeys } from "./sheetKeys";

/** The workbook that the local sheet opens on: the budget filled with the invented shed, and one function to a line. */
export function demoBook(): Workbook {
  const budget = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
  return { ...budget, name: "Demo", sheets: [...budget.sheets, singleCellsSheet] };
}
