import { cellAddress } from "../../sheets/address";
import type { Calculated } from "../../sheets/calculated";
import { readRange } from "../../sheets/rangeRef";
import { cellsIn, placesIn } from "../../sheets/rectangle";
import type { Cell, Matrix } from "./callFunction";

const MOST = 20_000; // cells: a whole column is no argument

/** What stands under a reference or a name of a book; null where it names no cells of it. */
export function cellsOfBook({ workbook, shown }: Calculated, reference: string): Matrix | null {
  const named = workbook.names.find(({ name }) => name.toLowerCase() === reference.toLowerCase());
  if (named !== undefined) return [[cellOf(shown.get(named.sheet)?.get(named.at)?.value)]];
  const sheets = workbook.sheets.map(({ name }) => name);
  const [only, ...others] = sheets;
  const range = readRange(reference, others.length === 0 ? (only ?? "") : ""); // of several sheets it must name one
  const sheet = sheets.find((name) => name.toLowerCase() === range?.sheet.toLowerCase());
  if (range === null || sheet === undefined || cellsIn(range) > MOST) return null;
  const cells = shown.get(sheet);
  return placesIn(range).map((line) =>
    line.map(({ column, row }) => cellOf(cells?.get(cellAddress(column, row))?.value)),
  );
}

/** An error cell is handed over as its name: the functions refuse it in their own words. */
const cellOf = (value: Cell | { readonly error: string } | undefined): Cell =>
  value === undefined ? null : typeof value === "object" && value !== null ? value.error : value;
