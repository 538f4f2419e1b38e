import type { CellBlock } from "../../hosts/host";
import { cellAddress, placeOf } from "../../sheets/address";
import type { Calculated } from "../../sheets/calculated";
import type { CellValue } from "../../sheets/workbook";

/**
 * What the cells of blocks showed when a book was read. Reading a book takes Excel a while, in which the sheet can be used: it writes only
 * while they still show that. Names beside the cells belong to the blocks, too, so that an inserted row is seen.
 */
export const asRead = ({ shown }: Calculated, blocks: readonly CellBlock[]): CellBlock[] =>
  blocks.map(({ sheet, at, rows }) => {
    const { column, row } = placeOf(at);
    const held = (down: number, across: number): CellValue => {
      const value = shown.get(sheet)?.get(cellAddress(column + across, row + down))?.value ?? null;
      return typeof value === "object" ? (value?.error ?? null) : value;
    };
    return { sheet, at, rows: rows.map((line, down) => line.map((_, across) => held(down, across))) };
  });

/** One cell, for its place alone. */
export const cell = (sheet: string, at: string): CellBlock => ({ sheet, at, rows: [[null]] });
