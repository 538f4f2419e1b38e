import { plain } from "../../../core/naming/findNamed";
import type { UnitSystem } from "../../../reference/quantities";
import type { Piece } from "../../../share/formula/tree";
import type { Calculated } from "../../../sheets/calculated";
import { isOneCell } from "../../../sheets/rectangle";
import { cellAddress, type Place } from "../../../sheets/address";
import { isWithinRange, rangeNamed, takenCells } from "./callsIn";

/** In which units a table's numbers are read, where its headers do not say: those of the calls that take it. */
export type UnitsTold = (sheet: string, place: Place) => UnitSystem | null;

/** Looks at the calls of a book when it is first asked. Null where no call takes the cell, or two read it in different units. */
export function unitsTold(book: Calculated): UnitsTold {
  let taken: ReturnType<typeof takenCells> | undefined;
  return (sheet, place) => {
    taken ??= takenCells(book);
    const told = new Set(
      taken
        .filter((range) => range.asItIs && range.sheet === sheet && isWithinRange(range, place))
        .map(({ from, args }) => (args.some((pieces) => saysSI(pieces, from, book)) ? "SI" : "IP")),
    );
    const [only, ...others] = told;
    return only === undefined || others.length > 0 ? null : only;
  };
}

/** Whether an argument is the word SI, typed or in one cell: no other argument is that alone. */
function saysSI(pieces: readonly Piece[], sheet: string, book: Calculated): boolean {
  const [only, ...rest] = pieces.filter(({ type }) => type !== "whitespace");
  if (only === undefined || rest.length > 0 || only.type === "our call") return false;
  const { type, value } = only as { type: string; value: string };
  if (type === "string") return plain(value.slice(1, -1)) === "si";
  const range = rangeNamed(value, sheet, book);
  if (range === null || !isOneCell(range)) return false;
  const word = book.shown.get(range.sheet)?.get(cellAddress(range.left, range.top))?.value;
  return typeof word === "string" && plain(word) === "si";
}
