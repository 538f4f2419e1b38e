import type { Sheet, SheetCell } from "../../src/sheets/workbook";

/** A sheet with nothing on it but these cells. */
export const sheetOf = (name: string, cells: readonly SheetCell[], more: Partial<Sheet> = {}): Sheet => ({
  name,
  columns: [],
  tallRows: [],
  frozen: { rows: 0, columns: 0 },
  cells,
  lists: [],
  flags: [],
  ...more,
});
