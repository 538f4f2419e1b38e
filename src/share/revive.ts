import { cellAddress, placeOf } from "../sheets/address";
import type { Calculated } from "../sheets/calculated";
import type { ChoiceList, Sheet, SheetCell, Workbook } from "../sheets/workbook";
import { OLD_FLAG } from "./fixed/fixedCall";
import { readRange } from "./formula/ranges";
import { noteBefore, unmarked } from "./marks";
import { COLUMNS, ORIGINALS_MARK, rangesIn, withRanges } from "./originals";
import { filledAddresses } from "./translateSheets";

/** Where a recorded formula belongs now. */
interface Recalled {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string | null; // null where the copy had added a cell
  readonly cells: readonly string[]; // that the copy had filled
}

/** The live budget that a club copy was made from, with the inputs as they now stand in the copy; null where the book is no such copy. */
export function revive({ workbook }: Calculated): Workbook | null {
  const record = workbook.sheets.find(({ cells }) =>
    cells.some((cell) => cell.at === "A1" && "value" in cell && cell.value === ORIGINALS_MARK),
  );
  if (record === undefined) return null;
  const { recalled, added } = readRecord(record);
  if (recalled.every(({ formula }) => formula === null)) return null;
  const left = new Set([record.name, ...added].map((name) => name.toLowerCase()));
  const sheets = workbook.sheets
    .filter(({ name }) => !left.has(name.toLowerCase()))
    .map((sheet) =>
      revived(
        sheet,
        recalled.filter((one) => one.sheet.toLowerCase() === sheet.name.toLowerCase()),
      ),
    );
  return { ...workbook, sheets, names: workbook.names.filter(({ sheet }) => !left.has(sheet.toLowerCase())) };
}

function readRecord({ name, cells }: Sheet): { recalled: Recalled[]; added: string[] } {
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
  const recalled = [...rows].flatMap(([row, line]) => (row > 4 ? recall(line, name) : []));
  return { recalled, added };
}

function recall(line: ReadonlyMap<number, SheetCell>, record: string): Recalled[] {
  const value = (column: number): unknown => {
    const cell = line.get(column);
    return cell !== undefined && "value" in cell ? cell.value : null;
  };
  const anchor = referenceIn(line.get(COLUMNS.anchor));
  const place = anchor === null ? null : readRange(anchor, record);
  if (place === null) return []; // its cell was deleted in the copy
  const at = cellAddress(place.left, place.top);
  const [rows, columns] = [Number(value(COLUMNS.rows) ?? 1), Number(value(COLUMNS.columns) ?? 1)];
  const filled = filledAddresses(at, { rows, columns });
  const code = value(COLUMNS.formula);
  if (typeof code !== "string" || code === "") return [{ sheet: place.sheet, at, formula: null, cells: filled }];
  const ranges: string[] = [];
  for (const [index, original] of rangesIn(code).entries()) {
    const reference = referenceIn(line.get(COLUMNS.references + index));
    if (reference === null) return []; // what it named was deleted in the copy
    ranges.push(asWritten(reference, original));
  }
  return [{ sheet: place.sheet, at, formula: withRanges(code, ranges), cells: filled }];
}

/** The reference in =ROWS(reference). */
function referenceIn(cell: SheetCell | undefined): string | null {
  if (cell === undefined || !("formula" in cell)) return null;
  const reference = /^=\s*ROWS\((.*)\)$/i.exec(cell.formula)?.[1];
  return reference === undefined || reference.includes("#REF!") ? null : reference;
}

/** A reference as the formula wrote it: without the name of a sheet where it had none. */
const asWritten = (reference: string, original: string): string =>
  original.includes("!") ? reference : reference.slice(reference.lastIndexOf("!") + 1);

function revived(sheet: Sheet, recalled: readonly Recalled[]): Sheet {
  const formulas = new Map(recalled.flatMap(({ at, formula }) => (formula === null ? [] : [[at, formula] as const])));
  const filled = new Set(recalled.flatMap(({ cells }) => cells));
  const cells = sheet.cells.map((cell): SheetCell => {
    if (!filled.has(cell.at)) return withoutFixedNote(cell);
    const { at, format } = cell;
    const style = unmarked(cell.style);
    const note = noteBefore(cell.note);
    const look = {
      at,
      ...(style && { style }),
      ...(format !== undefined && { format }),
      ...(note !== undefined && { note }),
    };
    const formula = formulas.get(at);
    return formula === undefined ? { ...look, value: null } : { ...look, formula };
  });
  const listed = new Set(cells.map(({ at }) => at));
  for (const [at, formula] of formulas) if (!listed.has(at)) cells.push({ at, formula });
  const flags = sheet.flags.filter(({ containsText }) => containsText !== OLD_FLAG);
  return { ...sheet, cells, flags, lists: sheet.lists.map(bothUnits) };
}

/** The copy's units cell offers its own units only. */
const bothUnits = (list: ChoiceList): ChoiceList =>
  list.strict && list.choices.length === 1 && (list.choices[0] === "IP" || list.choices[0] === "SI")
    ? { ...list, choices: ["IP", "SI"] }
    : list;

/** A cell without what the copy said in its note. */
function withoutFixedNote(cell: SheetCell): SheetCell {
  const note = noteBefore(cell.note);
  if (note === cell.note) return cell;
  const { at, style, format } = cell;
  const look = {
    at,
    ...(style && { style }),
    ...(format !== undefined && { format }),
    ...(note !== undefined && { note }),
  };
  return "formula" in cell ? { ...look, formula: cell.formula } : { ...look, value: cell.value };
}
