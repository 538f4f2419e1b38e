/** A few rows of a sheet, with what was asked of them; row and column count from 1. */
export interface Band {
  readonly row: number;
  readonly column: number;
  readonly range: Excel.Range;
  readonly formulas: readonly (readonly unknown[])[];
  readonly values: readonly (readonly unknown[])[];
}

const CELLS = 4000; // in one answer: with formats a cell takes up to about half a kilobyte, and an answer holds 5 MB

/** Reads formulas and values in bands of rows, each in a request of its own, so that no answer grows too large. */
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
  const height = Math.max(1, Math.floor(CELLS / columnCount));
  for (let from = 0; from < rowCount; from += height) {
    const band = area.getCell(from, 0).getAbsoluteResizedRange(Math.min(height, rowCount - from), columnCount);
    prepare(band);
    await take(await read(context, band, rowIndex + from + 1, columnIndex + 1));
  }
}

async function read(context: Excel.RequestContext, range: Excel.Range, row: number, column: number): Promise<Band> {
  range.load("formulas,values");
  await context.sync();
  return { row, column, range, formulas: range.formulas as unknown[][], values: range.values as unknown[][] };
}
