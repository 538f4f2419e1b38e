import { type RangeRef, readRange } from "../../../sheets/rangeRef";
import type { OurCall, Piece } from "../../../share/formula/tree";
import { cellAddress, type Place } from "../../../sheets/address";
import type { Calculated } from "../../../sheets/calculated";
import { type OurFormula, ourFormulasOn } from "../ourFormulas";
import type { ShownArguments } from "./namesInCall";

const MOST_CELLS = 5000; // of one argument that are looked through for names

/** Every call of one of our functions in a book, also inside other calls, with what its arguments show. */
export const callsIn = (book: Calculated): { readonly name: string; readonly args: ShownArguments }[] =>
  book.workbook.sheets.flatMap((sheet) =>
    ourFormulasOn(sheet).flatMap(({ calls }) =>
      calls.map((call) => ({ name: call.name, args: shownArguments(call, sheet.name, book) })),
    ),
  );

/** Formulas that are one call of ours and nothing else, with what its arguments show. */
export function wholeCallsIn(book: Calculated): readonly {
  readonly sheet: string;
  readonly at: string;
  readonly name: string;
  readonly args: ShownArguments;
}[] {
  return book.workbook.sheets.flatMap((sheet) =>
    ourFormulasOn(sheet).flatMap(({ at, pieces }) => {
      const [first, only, ...rest] = pieces.filter(({ type }) => type !== "whitespace");
      if (only?.type !== "our call" || rest.length > 0 || (first as { value?: string }).value !== "=") return [];
      const call = only as OurCall;
      return [{ sheet: sheet.name, at, name: call.name, args: shownArguments(call, sheet.name, book) }];
    }),
  );
}

/** A table of thousands of cells is gone through only where somebody asks for that argument. */
const shownArguments =
  ({ args }: OurCall, sheet: string, book: Calculated): ShownArguments =>
  (place) =>
    shownBy(args[place] ?? [], sheet, book);

/** A cell or range that a call of ours takes. */
interface Taken extends RangeRef {
  readonly by: string; // the function
  readonly place: number; // of the argument, from 0
  readonly asItIs: boolean; // and is not reckoned with before, as in 100*B2
  readonly args: OurCall["args"]; // of the call
  readonly from: string; // the sheet on which the call stands
}

/** Every cell and range that a call of ours in a book takes. */
export const takenCells = (book: Calculated): Taken[] =>
  book.workbook.sheets.flatMap((sheet) =>
    ourFormulasOn(sheet).flatMap(({ calls }) =>
      calls.flatMap(({ name: by, args }) =>
        args.flatMap((pieces, place) => {
          const asItIs = pieces.filter(({ type }) => type !== "whitespace").length === 1;
          return pieces.flatMap((piece) => {
            const range =
              piece.type === "our call" ? null : rangeOfAnyKind((piece as { value: string }).value, sheet.name, book);
            return range === null ? [] : [{ ...range, by, place, asItIs, args, from: sheet.name }];
          });
        }),
      ),
    ),
  );

export const isWithinRange = ({ left, right, top, bottom }: RangeRef, { column, row }: Place): boolean =>
  column >= left && column <= right && row >= top && row <= bottom;

/** The cells that an argument is, of whatever kind its reference; null where it is worked out inside the call, or typed. */
export function rangeOfArgument(pieces: readonly Piece[], sheet: string, book: Calculated): RangeRef | null {
  const [only, ...rest] = pieces.filter(({ type }) => type !== "whitespace");
  return only === undefined || rest.length > 0 || only.type === "our call"
    ? null
    : rangeOfAnyKind((only as { value: string }).value, sheet, book);
}

/** The cells of a reference, a name, whole columns or rows, or a table: of Runs[#All] and Runs[Flex] alike all its cells. */
const rangeOfAnyKind = (text: string, sheet: string, book: Calculated): RangeRef | null =>
  rangeNamed(text, sheet, book) ?? readRange(withEnds(text), sheet) ?? tableNamed(/^[^[]*/.exec(text)![0], book);

/** Runs!$A:$C as Runs!A1:C1048576, and 3:8 as A3:XFD8. */
const withEnds = (text: string): string =>
  text
    .replace(/(^|!)\$?([a-z]{1,3}):\$?([a-z]{1,3})$/i, (_, on, first, last) => `${on}${first}1:${last}1048576`)
    .replace(/(^|!)\$?(\d+):\$?(\d+)$/, (_, on, first, last) => `${on}A${first}:XFD${last}`);

function tableNamed(wanted: string, { workbook }: Calculated): RangeRef | null {
  for (const { name: sheet, tables = [] } of workbook.sheets) {
    const table = tables.find(({ name }) => name.toLowerCase() === wanted.toLowerCase());
    if (table !== undefined) return readRange(table.range, sheet);
  }
  return null;
}

/** The cells that an argument of a call in a cell's formula names; null where it is worked out inside the call, or typed. */
export function argumentCells(
  book: Calculated,
  sheet: string,
  at: string,
  name: string,
  place: number,
): RangeRef | null {
  const there = book.workbook.sheets.find((one) => one.name === sheet);
  const formula = there === undefined ? undefined : ourFormulasOn(there).find((one) => one.at === at);
  return formula === undefined ? null : cellsNamed(book, sheet, formula, name, place);
}

/** The same of a formula that is at hand. */
export function cellsNamed(
  book: Calculated,
  sheet: string,
  { calls }: OurFormula,
  name: string,
  place: number,
): RangeRef | null {
  const call = calls.find((one) => one.name === name);
  const [only, ...rest] = (call?.args[place] ?? []).filter(({ type }) => type !== "whitespace");
  return only === undefined || rest.length > 0 || only.type === "our call"
    ? null
    : rangeNamed((only as Exclude<Piece, OurCall>).value, sheet, book);
}

export function rangeNamed(text: string, sheet: string, book: Calculated): RangeRef | null {
  const named = book.workbook.names.find(({ name }) => name.toLowerCase() === text.toLowerCase());
  return named === undefined ? readRange(text, sheet) : readRange(named.at, named.sheet);
}

/** A typed value, or what the cells of a reference or of a name show; what is worked out inside the call shows nothing. */
function shownBy(pieces: readonly Piece[], sheet: string, book: Calculated): (string | number)[] {
  const [only, ...rest] = pieces.filter(({ type }) => type !== "whitespace");
  if (only === undefined || rest.length > 0 || only.type === "our call") return [];
  const { type, value } = only as Exclude<Piece, OurCall>;
  if (type === "string") return [value.slice(1, -1).replaceAll('""', '"')];
  if (type === "number") return [Number(value)];
  const range = rangeNamed(value, sheet, book);
  if (range === null) return [];
  const width = range.right - range.left + 1;
  const most = Math.min(MOST_CELLS, width * (range.bottom - range.top + 1)); // a whole column is not walked down
  return Array.from({ length: most }, (_, index) => {
    const address = cellAddress(range.left + (index % width), range.top + Math.floor(index / width));
    return book.shown.get(range.sheet)?.get(address)?.value;
  }).filter((value) => typeof value === "string" || typeof value === "number");
}
