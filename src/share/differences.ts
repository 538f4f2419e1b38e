import type { Calculated, Shown, ShownCell } from "../sheets/calculated";
import type { SheetCell, Workbook } from "../sheets/workbook";

/** A cell in which a copy shows something else than the book that it was made from. */
export interface Difference {
  readonly sheet: string;
  readonly at: string;
  readonly inCopy: Value;
  readonly inBook: Value;
}

type Value = ShownCell["value"];

const CLOSE = 1e-9; // relative
const NOTHING = 1e-12; // what is left of two numbers that cancel, beside a 0

/**
 * Every cell of a book that its copy shows otherwise. A word that the copy says in place of the book's, typed into its cell, is
 * none, nor is one where the book had nothing: it says there what is fixed, and since when.
 *
 * @param computed what the copy's cells show, as an engine computed them
 */
export function differencesOf(book: Calculated, copy: Workbook, computed: Shown): Difference[] {
  return book.workbook.sheets.flatMap(({ name: sheet }) => {
    const before = valuesOf(book.shown, sheet);
    const after = valuesOf(computed, sheet);
    const cells = new Map(copy.sheets.find(({ name }) => name === sheet)?.cells.map((cell) => [cell.at, cell]));
    return [...new Set([...before.keys(), ...after.keys()])].flatMap((at): Difference[] => {
      const inBook = before.get(at)?.value ?? null;
      const inCopy = after.get(at)?.value ?? null;
      const isOwn = typeof inCopy === "string" && (before.has(at) ? isTyped(cells.get(at)) : inCopy !== "");
      return isSame(inBook, inCopy) || isOwn ? [] : [{ sheet, at, inCopy, inBook }];
    });
  });
}

const isTyped = (cell: SheetCell | undefined): boolean => cell !== undefined && "value" in cell;

const valuesOf = (shown: Shown, sheet: string): ReadonlyMap<string, ShownCell> => shown.get(sheet) ?? new Map();

/**
 * A blank and a text of no letters are alike, and so are all errors: plain formulas cannot say the functions' sentences. So are texts
 * whose numbers are the same but for the decimal sign: a formula that joins "ok: " and 21.3 shows "ok: 21,3" in a program set to a country
 * that writes a comma, and the copy is computed with points.
 */
function isSame(one: Value, other: Value): boolean {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= Math.max(NOTHING, CLOSE * Math.abs(one));
  if (isError(one) || isError(other)) return isError(one) && isError(other);
  if (typeof one === "string" && typeof other === "string") return withPoints(one) === withPoints(other);
  return (one ?? "") === (other ?? "");
}

const withPoints = (text: string): string => text.replace(/(\d),(?=\d)/g, "$1.");

const isError = (value: Value): boolean => value !== null && typeof value === "object";
