/** Letters of a column from 1: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

export const cellAddress = (column: number, row: number): string => `${columnLetters(column)}${row}`;

/** Column and row from 1 of an address such as "B4". */
export function placeOf(address: string): { column: number; row: number } {
  const match = /^([A-Z]{1,3})([1-9][0-9]*)$/.exec(address);
  if (match === null) throw new Error(`not the address of a cell: ${address}`);
  const column = [...match[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { column, row: Number(match[2]) };
}
