import { cellAddress, columnLetters } from "../sheets/address";
import type { RangeRef } from "./formula/rangeRef";

/** A sheet's name as a formula writes it; always in quotes, which every program understands. */
export const quotedSheet = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

const dollared = (column: number, row: number): string => `$${columnLetters(column)}$${row}`;

/** One cell as a formula on any sheet writes it: 'Runs'!$B$9. */
export const cellText = (sheet: string, column: number, row: number): string =>
  `${quotedSheet(sheet)}!${dollared(column, row)}`;

/** A range as a formula on any sheet writes it: 'Runs'!$B$8:$S$48, or one cell. */
export function rangeText({ sheet, top, left, bottom, right }: RangeRef): string {
  const first = cellText(sheet, left, top);
  return top === bottom && left === right ? first : `${first}:${dollared(right, bottom)}`;
}

/** A range as a person reads it: Runs!B8:S48. */
export function plainRange({ sheet, top, left, bottom, right }: RangeRef): string {
  const first = `${sheet}!${cellAddress(left, top)}`;
  return top === bottom && left === right ? first : `${first}:${cellAddress(right, bottom)}`;
}

/** A text as a formula writes it. A quote inside is CHAR(34): written twice, the grid of the local sheet takes it for two texts. */
export const quotedText = (text: string): string => `"${text.replaceAll('"', '"&CHAR(34)&"')}"`;

/** A number as a formula writes it, safe behind any operator. */
export function numberText(value: number): string {
  const text = String(value).toUpperCase();
  return value < 0 ? `(${text})` : text;
}
