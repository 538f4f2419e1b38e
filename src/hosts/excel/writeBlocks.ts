import { cellAddress, placeOf } from "../../sheets/address";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { CellValue } from "../../sheets/workbook";
import type { CellBlock, WriteOutcome } from "../host";
import { asLiteral } from "./literal";
import { rangeAt } from "./rangeAt";

/** Writes values into cells of the open workbook; looks first whether the sheets are there and take them, and then whether they hold them. */
export const writeBlocks = (blocks: readonly CellBlock[]): Promise<WriteOutcome> =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const names = [...new Set(blocks.map(({ sheet }) => sheet))];
    const gone = names.find((wanted) => !worksheets.items.some(({ name }) => name === wanted));
    if (gone !== undefined) return { written: false, why: `There is no sheet called ${gone} any more.` };
    const protections = names.map((name) => ({ name, protection: worksheets.getItem(name).protection }));
    for (const { protection } of protections) protection.load("protected");
    await context.sync();
    const locked = protections.find(({ protection }) => protection.protected);
    if (locked !== undefined)
      return { written: false, why: `The sheet ${locked.name} is protected: take the protection off first.` };
    const lines = blocks.flatMap((block) => linesOf(worksheets, block));
    // an empty text empties a cell; null would leave it as it is
    for (const { range, values } of lines)
      range.values = [values.map((value) => (typeof value === "string" ? asLiteral(value) : (value ?? "")))];
    await context.sync();
    for (const { range } of lines) range.load("values");
    await context.sync();
    const wrong = lines.flatMap(otherwise)[0];
    return wrong === undefined ? { written: true } : { written: false, why: wrong };
  });

interface Line {
  readonly range: Excel.Range;
  readonly values: readonly CellValue[];
  readonly addressOf: (across: number) => string;
}

/** A row at a time: over rows that a filter hides, Excel has been seen to write a block's first row again and again (office-js issue 224). */
function linesOf(worksheets: Excel.WorksheetCollection, { sheet, at, rows }: CellBlock): Line[] {
  const { row, column } = placeOf(at);
  return rows.map((values, down) => {
    const top = row + down;
    const range = { top, bottom: top, left: column, right: column + values.length - 1 };
    return {
      range: rangeAt(worksheets.getItem(sheet), range),
      values,
      addressOf: (across) => `${sheetPrefix(sheet)}${cellAddress(column + across, top)}`,
    };
  });
}

/** A sentence for each cell that holds something else than was written, as one formatted as text holds no number. */
const otherwise = ({ range, values, addressOf }: Line): string[] =>
  values.flatMap((value, across) =>
    isSame(range.values[0]?.[across], value ?? "")
      ? []
      : [
          `${addressOf(across)} does not hold what was written into it: undo that, give the cell the number format General, take a filter off the sheet, and try again.`,
        ],
  );

const CLOSE = 1e-12; // of a number, for the digits that an answer of Excel may leave out

const isSame = (held: unknown, written: CellValue): boolean =>
  typeof held === "number" && typeof written === "number"
    ? Math.abs(held - written) <= CLOSE * Math.abs(written)
    : held === written;
