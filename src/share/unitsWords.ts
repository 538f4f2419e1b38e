import type { UnitSystem } from "../reference/quantities";
import type { Calculated } from "../sheets/calculated";
import type { Sheet, SheetCell } from "../sheets/workbook";
import { quotedText } from "./references";
import { unitsSaid } from "./budget/headerCells";
import { headCellFor, takenIn } from "./fixed/checkCells";
import type { CellIndex } from "./fixed/cellIndex";
import { rangesRead } from "./fixed/rangesRead";
import type { Original } from "./originals";
import type { UnitsTaken } from "./translateSheets";

const MOST = 200; // cells asked in one formula; others show #N/A where they are used

/** The sheets with a sentence at the head of each on which a call takes its units from a cell: blank while that cell says what it said. */
export function withUnitsWords(
  sheets: readonly Sheet[],
  units: readonly UnitsTaken[],
  book: Calculated,
  index: CellIndex,
): { readonly sheets: Sheet[]; readonly added: readonly Original[] } {
  const added: Original[] = [];
  const read = units.length === 0 ? new Map<string, never[]>() : rangesRead(book, index);
  const told = sheets.map((sheet): Sheet => {
    const here = units.filter((one) => one.sheet === sheet.name);
    if (here.length === 0) return sheet;
    const at = headCellFor(sheet, takenIn(sheet), read.get(sheet.name) ?? []);
    if (at === null) return sheet;
    const lost = (system: UnitSystem, otherwise: string): string => {
      const cells = [...new Set(here.flatMap((one) => (one.system === system ? [one.stands] : [])))].slice(0, MOST);
      return cells.length === 0
        ? otherwise
        : `IF(AND(${cells.join(",")}),${otherwise},${quotedText(unitsSaid(system))})`;
    };
    const cell: SheetCell = { at, formula: `=${lost("IP", lost("SI", '""'))}`, style: "total" };
    added.push({ sheet: sheet.name, at, formula: "", written: { rows: 1, columns: 1 } });
    return { ...sheet, cells: [...sheet.cells.filter((one) => one.at !== at), cell] };
  });
  return { sheets: told, added };
}
