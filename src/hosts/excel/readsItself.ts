import { readRange, type RangeRef } from "../../sheets/rangeRef";

/** A text, in which nothing is a reference; or a cell or a range, with its sheet or without. */
const PARTS =
  /"(?:[^"]|"")*"|(?:(?:'(?:[^']|'')+'|[^\s"'!,;()+\-*/&=<>^:]+)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?(?![\w(])/gi;

/** Whether a formula reads the cell in which it is to stand: Excel shows 0 there then, and an add-in is not told. */
export function readsItself(formula: string, cell: RangeRef): boolean {
  for (const { 0: text, index } of formula.matchAll(PARTS)) {
    if (text.startsWith('"') || /[\w.]/.test(formula.charAt(index - 1))) continue;
    const range = readRange(text, cell.sheet);
    if (range?.sheet.toLowerCase() === cell.sheet.toLowerCase() && isWithin(cell, range)) return true;
  }
  return false;
}

const isWithin = (cell: RangeRef, { left, right, top, bottom }: RangeRef): boolean =>
  cell.left >= left && cell.left <= right && cell.top >= top && cell.top <= bottom;
