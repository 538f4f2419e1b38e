import type { Workbook } from "../../src/sheets/workbook";

/** The book without the cells whose formulas match: what a test doesn't ask and only takes time. */
export const withoutCells = (book: Workbook, formulas: RegExp): Workbook => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.filter((cell) => !("formula" in cell && formulas.test(cell.formula))),
  })),
});
