import { cellAddress, placeOf } from "../../sheets/address";
import type { Block } from "./blocks";

export type Area = Omit<Block, "key">;

/** "B4:C9" or "B4" as a rectangle; a sheet's name before it and dollar signs are passed over. */
export function areaOf(address: string): Area {
  const [first, last = first] = withoutSheet(address).replaceAll("$", "").split(":") as [string, string?];
  const from = placeOf(first);
  const to = placeOf(last);
  return { ...from, columns: to.column - from.column + 1, rows: to.row - from.row + 1 };
}

/** Whether an address is one of cells, not of whole columns or rows. */
export const isOfCells = (address: string): boolean =>
  /^\$?[A-Z]+\$?\d+(:\$?[A-Z]+\$?\d+)?$/.test(withoutSheet(address));

export function addressOf({ column, row, columns, rows }: Area): string {
  const first = cellAddress(column, row);
  return columns * rows === 1 ? first : `${first}:${cellAddress(column + columns - 1, row + rows - 1)}`;
}

/** The range of a rectangle. */
export const rangeAt = (sheet: Excel.Worksheet, area: Area): Excel.Range => sheet.getRange(addressOf(area));

export const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1);

/** A sheet's name as a formula or an address writes it. */
export const quoted = (sheet: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
