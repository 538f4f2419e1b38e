import { neededColumns } from "../../../reference/columnsOfRuns";
import type { Calculated } from "../../../sheets/calculated";
import { readRange } from "../../../sheets/rangeRef";
import { columnLetters, placeOf } from "../../../sheets/address";
import { lookThrough, tablesWith, textIn } from "../../check/tablesIn";

/** The selected cell, where it takes the fittings or the hood of a run. */
export interface SelectedPart {
  readonly sheet: string;
  readonly at: string;
  readonly column: "Fittings" | "Hood";
  readonly run: string; // empty where the row has no name yet
  readonly runAt: string; // where that stands
  readonly content: string; // as the cell shows it
  readonly formula: string | null; // that stands there in place of a text
}

/** @param reference the selected cells, with their sheet; the first one counts */
export function selectedPart(book: Calculated, reference: string): SelectedPart | null {
  const range = readRange(reference, "");
  if (range === null) return null;
  const at = `${columnLetters(range.left)}${range.top}`;
  for (const table of tablesWith(lookThrough(book), neededColumns)) {
    if (table.sheet !== range.sheet || range.top <= table.headerRow) continue;
    const column = (["Fittings", "Hood"] as const).find((name) => {
      const first = table.address(table.headerRow, name);
      return placeOf(first).column === range.left && textIn(table.value(table.headerRow, name)).startsWith(name);
    });
    if (column !== undefined)
      return {
        ...{ sheet: table.sheet, at, column },
        run: textIn(table.value(range.top, "Run")),
        runAt: table.address(range.top, "Run"),
        content: textIn(table.value(range.top, column)),
        formula: formulaIn(book, table.sheet, at),
      };
  }
  return null;
}

function formulaIn({ workbook }: Calculated, sheet: string, at: string): string | null {
  const cell = workbook.sheets.find(({ name }) => name === sheet)?.cells.find((one) => one.at === at);
  return cell !== undefined && "formula" in cell ? cell.formula : null;
}
