import { cellAddress, placeOf } from "../../sheets/address";
import type { Calculated } from "../../sheets/calculated";
import type { Cell, Matrix } from "./answering";

const MOST = 20_000; // cells: a whole column is no argument

/** What stands under a reference or a name of a book; null where it names no cells of it. */
export function cellsOfBook({ workbook, shown }: Calculated, reference: string): Matrix | null {
  const named = workbook.names.find(({ name }) => name.toLowerCase() === reference.toLowerCase());
  if (named !== undefined) return [[cellOf(shown.get(named.sheet)?.get(named.at)?.value)]];
  const match = /^(?:(.+)!)?([^!]+)$/.exec(reference)!;
  const wanted = match[1]?.replace(/^'(.*)'$/, "$1").replaceAll("''", "'");
  const sheets = workbook.sheets.map(({ name }) => name);
  const sheet =
    wanted === undefined
      ? sheets.length === 1
        ? sheets[0]
        : undefined
      : sheets.find((name) => name.toLowerCase() === wanted.toLowerCase());
  if (sheet === undefined) return null;
  const [first, last] = match[2]!.replaceAll("$", "").toUpperCase().split(":").map(placeOf);
  const from = first!;
  const to = last ?? from;
  if (to.row < from.row || to.column < from.column) return null;
  if ((to.row - from.row + 1) * (to.column - from.column + 1) > MOST) return null;
  return Array.from({ length: to.row - from.row + 1 }, (_, down) =>
    Array.from({ length: to.column - from.column + 1 }, (__, across) =>
      cellOf(shown.get(sheet)?.get(cellAddress(from.column + across, from.row + down))?.value),
    ),
  );
}

/** An error cell is handed over as its name: the functions refuse it in their own words. */
const cellOf = (value: Cell | { readonly error: string } | undefined): Cell =>
  value === undefined ? null : typeof value === "object" && value !== null ? value.error : value;
