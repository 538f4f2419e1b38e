/**
 * A formula that is filled down a column, written once: the first cell has it with the range that it goes for, the ones below name
 * its number only. It halves a copy, most of which is such columns. Formulas that name another sheet or call our functions are left
 * as they are, since it is not known that every program moves those along.
 */
const CELL = /<c r="([A-Z]+)(\d+)"([^>]*)><f>([^<]*)<\/f>/g;

/** A text, a number, or a word with the bracket that makes it a function's name. */
const PIECE = /"(?:[^"]|"")*"|\d[\w.]*|[A-Za-z_$][\w.$]*\(?/g;

const ADDRESS = /^(\$?[A-Z]{1,3})(\$?)(\d+)$/;

const STAYS = /!|_xldudf_/;

/** A formula that names no other sheet, as it reads one row below. */
export const oneRowBelow = (formula: string): string =>
  formula.replace(PIECE, (piece) => {
    const [, column, fixed, row] = ADDRESS.exec(piece) ?? [];
    return column === undefined || fixed === "$" ? piece : `${column}${Number(row) + 1}`;
  });

/** Cells one below the other with the same formula. */
interface Filled {
  readonly first: number; // row
  last: number;
  formula: string; // as the last one has it
  number?: number; // among those of the sheet that have several cells
}

/** A sheet's part with each such formula once. */
export function withSharedFormulas(xml: string): string {
  const at = new Map<string, Filled>();
  const lowest = new Map<string, Filled>(); // so far, by the column's letters
  let count = 0;
  for (const [, letters, row, , formula] of xml.matchAll(CELL)) {
    const above = lowest.get(letters!);
    if (above?.last === Number(row) - 1 && oneRowBelow(above.formula) === formula) {
      above.number ??= count++;
      above.last += 1;
      above.formula = formula!;
      at.set(`${letters}${row}`, above);
    } else if (STAYS.test(formula!)) lowest.delete(letters!);
    else {
      const begun = { first: Number(row), last: Number(row), formula: formula! };
      lowest.set(letters!, begun);
      at.set(`${letters}${row}`, begun);
    }
  }
  return xml.replace(CELL, (all, letters: string, row: string, look: string, formula: string) => {
    const filled = at.get(`${letters}${row}`);
    if (filled?.number === undefined) return all;
    const range = `${letters}${filled.first}:${letters}${filled.last}`;
    const once =
      Number(row) === filled.first
        ? `<f t="shared" ref="${range}" si="${filled.number}">${formula}</f>`
        : `<f t="shared" si="${filled.number}"/>`;
    return `<c r="${letters}${row}"${look}>${once}`;
  });
}
