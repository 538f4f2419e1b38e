import { cellAddress, placeOf } from "../../sheets/address";
import type { Calculated, ShownCell } from "../../sheets/calculated";
import type { TranslatedSheets } from "../translateSheets";
import { itemAt } from "../../reference/itemAt";

/**
 * The book with its live answers as far as the copy writes them. A copy has formulas for more rows than an answer fills now, which show
 * an empty text where the book has a blank cell: taken for inputs, they would seem to have changed in a copy that nobody has touched.
 */
export function asWritten({ workbook, shown }: Calculated, live: TranslatedSheets["live"]): Calculated {
  const written = new Map([...shown].map(([sheet, cells]) => [sheet, new Map(cells)] as const));
  for (const { sheet, at, cells } of live) {
    const there = written.get(sheet) ?? new Map<string, ShownCell>();
    written.set(sheet, there);
    const { column, row } = placeOf(at);
    cells.forEach((line, down) =>
      line.forEach((_, across) => {
        const cell = cellAddress(column + across, row + down);
        if (there.get(cell) === undefined || there.get(cell)!.value === null) there.set(cell, { value: "" });
      }),
    );
    const fills = { rows: cells.length, columns: itemAt(cells, 0).length };
    if (fills.rows + fills.columns > 2) there.set(at, { ...there.get(at)!, fills });
  }
  return { workbook, shown: written };
}
