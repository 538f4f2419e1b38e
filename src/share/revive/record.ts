import { cellAddress, placeOf } from "../../sheets/address";
import { MOST_COLUMNS, MOST_ROWS } from "../../sheets/extent";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import { readRange } from "../../sheets/rangeRef";
import { reachesOutside } from "../outside";
import { COLUMNS, rangesInCode, type Said, withRanges } from "../originals";
import { filledAddresses } from "../../sheets/rectangle";
import { sheetsIn } from "./sheetsIn";
import { whyNotRevived } from "./whyNotRevived";

/** Where a recorded formula belongs now. */
export interface Recalled {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string | null; // null where the copy had added a cell
  readonly cells: readonly string[]; // that the copy had filled
  readonly why: string | null; // why the formula is not made live again
  readonly said?: Said; // a text or note that comes back where the copy's still stands
}

type RecordLine = ReadonlyMap<number, SheetCell>;

/** The lines of a record, and the sheets that the copy had added. */
export function readRecord({ name, cells }: Sheet): { lines: RecordLine[]; added: string[] } {
  const rows = new Map<number, Map<number, SheetCell>>();
  for (const cell of cells) {
    const { row, column } = placeOf(cell.at);
    const there = rows.get(row) ?? new Map<number, SheetCell>();
    rows.set(row, there.set(column, cell));
  }
  const added = [...(rows.get(3)?.values() ?? [])].flatMap((cell) => {
    const reference = referenceIn(cell);
    const range = reference === null ? null : readRange(reference, name);
    return range === null ? [] : [range.sheet];
  });
  return { lines: [...rows].flatMap(([row, line]) => (row > 4 ? [line] : [])), added };
}

/**
 * What a line of the record says; null where its cell was deleted in the copy.
 *
 * @param sheets names, in small letters, of the sheets that the live budget has
 * @param room cells that this formula may have filled at most
 */
export function recall(line: RecordLine, record: string, sheets: ReadonlySet<string>, room: number): Recalled | null {
  const value = (column: number): unknown => {
    const cell = line.get(column);
    return cell !== undefined && "value" in cell ? cell.value : null;
  };
  const anchor = referenceIn(line.get(COLUMNS.anchor));
  const place = anchor === null ? null : readRange(anchor, record);
  if (place === null) return null;
  const at = cellAddress(place.left, place.top);
  const said = saidIn(value(COLUMNS.rows), value(COLUMNS.formula), value(COLUMNS.references));
  if (said !== null) return { sheet: place.sheet, at, formula: null, cells: [], why: null, said };
  const [rows, columns] = [Number(value(COLUMNS.rows) ?? 1), Number(value(COLUMNS.columns) ?? 1)];
  const here = { sheet: place.sheet, at, formula: null, cells: [at] };
  if (!isCount(rows) || !isCount(columns) || rows * columns > room)
    return { ...here, why: "the record does not say how many cells it filled" };
  if (place.top > MOST_ROWS || place.left > MOST_COLUMNS)
    return { ...here, why: "its cell lies far outside the sheet" };
  const cells = filledAddresses(at, { rows, columns });
  const code = value(COLUMNS.formula);
  if (typeof code !== "string" || code === "") return { ...here, cells, why: null };
  const outside = reachesOutside(code);
  if (outside !== null) return { ...here, cells, why: outside };
  const ranges: string[] = [];
  for (const [index, original] of rangesInCode(code).entries()) {
    const reference = referenceIn(line.get(COLUMNS.references + index));
    if (reference === null) return { ...here, cells, why: "a range that it named was deleted in the copy" };
    ranges.push(asWritten(reference, original, place.sheet));
  }
  const formula = withRanges(code, ranges);
  const why = whyNotRevived(formula, sheets);
  return { ...here, cells, formula: why === null ? formula : null, why };
}

function saidIn(part: unknown, was: unknown, became: unknown): Said | null {
  if ((part !== "text" && part !== "note" && part !== "name") || typeof was !== "string" || typeof became !== "string")
    return null;
  return { part, was, became };
}

const isCount = (value: number): boolean => Number.isInteger(value) && value > 0;

/** The reference in =ROWS(reference). */
function referenceIn(cell: SheetCell | undefined): string | null {
  if (cell === undefined || !("formula" in cell)) return null;
  const reference = /^=\s*ROWS\((.*)\)$/i.exec(cell.formula)?.[1];
  return reference === undefined || reference.includes("#REF!") ? null : reference;
}

/** A reference as the formula wrote it: without the name of a sheet where it had none, unless its cells were moved to another. */
function asWritten(reference: string, original: string, sheet: string): string {
  const isElsewhere = sheetsIn(`=${reference}`).some((name) => name.toLowerCase() !== sheet.toLowerCase());
  return original.includes("!") || isElsewhere ? reference : reference.slice(reference.lastIndexOf("!") + 1);
}
