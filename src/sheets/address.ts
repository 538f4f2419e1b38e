/** A cell's place on its sheet; columns count from 1, as rows do. */
export interface Place {
  readonly column: number;
  readonly row: number;
}

/** What a sheet of Excel has; no other program of today has more. */
const LAST_ROW = 1048576;
const LAST_COLUMN = 16384;

/** Letters of a column from 1: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

export const cellAddress = (column: number, row: number): string => `${columnLetters(column)}${row}`;

/** The address that stays where it is when a formula is filled down: $B$4. */
export const fixedAddress = (column: number, row: number): string => `$${columnLetters(column)}$${row}`;

const ADDRESS = /^\$?([A-Za-z]{1,3})\$?([1-9][0-9]{0,6})$/;

/** The place of an address such as "B4" or "$b$4"; null where the text is none, or lies outside every sheet. */
export function readPlace(text: string): Place | null {
  const [, letters, digits] = ADDRESS.exec(text) ?? [];
  if (letters === undefined) return null;
  const column = [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  const row = Number(digits);
  return column <= LAST_COLUMN && row <= LAST_ROW ? { column, row } : null;
}

/** The place of an address as our own workbooks spell it: B4, in capitals and without dollar signs. */
export function placeOf(address: string): Place {
  const place = /[$a-z]/.test(address) ? null : readPlace(address);
  if (place === null) throw new Error(`not the address of a cell: ${address}`);
  return place;
}
