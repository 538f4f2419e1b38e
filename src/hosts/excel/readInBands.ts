/** A few rows of a sheet, or a piece of a long one, with what was asked of them; row and column count from 1. */
export interface Band {
  readonly row: number;
  readonly column: number;
  readonly range: Excel.Range;
  readonly formulas: readonly (readonly unknown[])[];
  readonly values: readonly (readonly unknown[])[];
}

const CELLS = 4000; // in one answer: with formats a cell takes up to about half a kilobyte, and an answer holds 5 MB

/** Reads formulas and values in bands, each in a request of its own, so that no answer grows too large: one row coloured to its end has 16,384 cells. */
export async function readInBands(
  context: Excel.RequestContext,
  area: Excel.Range,
  take: (band: Band) => Promise<void> | void,
  prepare: (range: Excel.Range) => void = () => undefined,
): Promise<void> {
  area.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (area.isNullObject) return;
  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const width = Math.min(columnCount, CELLS);
  const height = Math.max(1, Math.floor(CELLS / columnCount));
  for (let down = 0; down < rowCount; down += height)
    for (let right = 0; right < columnCount; right += width) {
      const [rows, columns] = [Math.min(height, rowCount - down), Math.min(width, columnCount - right)];
      const band = area.getCell(down, right).getAbsoluteResizedRange(rows, columns);
      prepare(band);
      await take(await read(context, band, rowIndex + down + 1, columnIndex + right + 1));
    }
}

async function read(context: Excel.RequestContext, range: Excel.Range, row: number, column: number): Promise<Band> {
  range.load("formulas,values");
  await context.sync();
  return { row, column, range, formulas: range.formulas as unknown[][], values: range.values as unknown[][] };
}
