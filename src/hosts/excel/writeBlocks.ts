import { placeOf } from "../../sheets/address";
import type { CellBlock, WriteOutcome } from "../host";
import { asLiteral } from "./literal";
import { rangeAt } from "./rangeAt";

/** Writes values into cells of the open workbook; looks first whether the sheets are there and take them. */
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
    for (const { sheet, at, rows } of blocks) {
      const { row, column } = placeOf(at);
      const range = rangeAt(worksheets.getItem(sheet), {
        ...{ top: row, left: column },
        ...{ bottom: row + rows.length - 1, right: column + (rows[0]?.length ?? 1) - 1 },
      });
      // an empty text empties a cell; null would leave it as it is
      range.values = rows.map((line) =>
        line.map((value) => (value === null ? "" : typeof value === "string" ? asLiteral(value) : value)),
      );
    }
    await context.sync();
    return { written: true };
  });
