import { cellAddress, columnLetters } from "../../sheets/address";

/** Places on a sheet as the file format writes them. */

export interface Place {
  readonly column: number; // from 1, as rows are
  readonly row: number;
}

export interface Area {
  readonly first: Place;
  readonly last: Place;
}

const CORNER = /^\$?([A-Za-z]{1,3})\$?([1-9][0-9]{0,6})$/;
const LAST_ROW = 1048576;
const LAST_COLUMN = 16384;

/** A cell's place, with or without dollar signs; null where the text is none, or lies outside every sheet. */
export function readPlace(text: string): Place | null {
  const match = CORNER.exec(text);
  if (match === null) return null;
  const column = [...match[1]!.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  const row = Number(match[2]);
  return column <= LAST_COLUMN && row <= LAST_ROW ? { column, row } : null;
}

/** A range "B4:C9" or one cell, its corners put in order; null where the text is neither. */
export function readArea(text: string): Area | null {
  const [from, to, ...rest] = text.split(":").map(readPlace);
  if (rest.length > 0 || from == null || to === null) return null;
  const end = to ?? from;
  return {
    first: { column: Math.min(from.column, end.column), row: Math.min(from.row, end.row) },
    last: { column: Math.max(from.column, end.column), row: Math.max(from.row, end.row) },
  };
}

export const addressOf = ({ column, row }: Place): string => cellAddress(column, row);

/** "B4:C9", or "B4" where it is one cell. */
export function areaText({ first, last }: Area): string {
  const [from, to] = [addressOf(first), addressOf(last)];
  return from === to ? from : `${from}:${to}`;
}

/** A range without dollar signs, as rules and tables of a file must have it; null where the text is none. */
export function plainRange(text: string): string | null {
  const area = readArea(text);
  return area === null ? null : areaText(area);
}

const absolute = ({ column, row }: Place): string => `$${columnLetters(column)}$${row}`;

/** A sheet's name as formulas write it; with quotes always, which is never wrong. */
export const quotedSheet = (name: string): string => `'${name.replaceAll("'", "''")}'`;

/** 'Single cells'!$B$4:$C$9 */
export function absoluteArea(sheet: string, { first, last }: Area): string {
  const [from, to] = [absolute(first), absolute(last)];
  return `${quotedSheet(sheet)}!${from === to ? from : `${from}:${to}`}`;
}

/** Sheet and range of a reference such as 'Single cells'!$B$4; null where it is none or names no sheet. */
export function readReference(text: string): { readonly sheet: string; readonly area: Area } | null {
  const match = /^=?(?:'((?:[^']|'')+)'|([^'!,()]+))!([^!]+)$/.exec(text.trim());
  const area = match === null ? null : readArea(match[3]!);
  if (match === null || area === null) return null;
  return { sheet: match[1] === undefined ? match[2]! : match[1].replaceAll("''", "'"), area };
}
