import { cellAddress, columnLetters, placeOf } from "../../../src/sheets/address";
import { misuse, Refusal } from "./refuse";
import { type Area, type BookState, type CellState, LAST_COLUMN, LAST_ROW, newCell, type SheetState } from "./state";

/** "B4:C9", "B4", "B:C" or "3:5" on a sheet. */
export function areaOn(sheet: SheetState, address: string): Area {
  const bare = address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
  const [from, to = from] = bare.split(":") as [string, string?];
  const [first, last] = [corner(from), corner(to)];
  if (first === null || last === null) throw misuse(`no address: ${address}`);
  const column = first.column ?? 1;
  const row = first.row ?? 1;
  return {
    sheet,
    column,
    row,
    columns: (last.column ?? LAST_COLUMN) - column + 1,
    rows: (last.row ?? LAST_ROW) - row + 1,
  };
}

function corner(text: string): { column?: number; row?: number } | null {
  if (/^[1-9][0-9]*$/.test(text)) return { row: Number(text) };
  if (/^[A-Z]{1,3}$/.test(text)) return { column: placeOf(`${text}1`).column };
  return /^[A-Z]{1,3}[1-9][0-9]*$/.test(text) ? placeOf(text) : null;
}

export function addressIn({ column, row, columns, rows }: Area): string {
  if (rows === LAST_ROW) return `${columnLetters(column)}:${columnLetters(column + columns - 1)}`;
  if (columns === LAST_COLUMN) return `${row}:${row + rows - 1}`;
  const first = cellAddress(column, row);
  return rows * columns === 1 ? first : `${first}:${cellAddress(column + columns - 1, row + rows - 1)}`;
}

const quoted = (name: string): string => (/^[A-Za-z_]\w*$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`);

export const fullAddress = (area: Area): string => `${quoted(area.sheet.name)}!${addressIn(area)}`;

const MOST_CELLS = 300_000;

/** The addresses in an area, row by row. */
export function addressesIn({ column, row, columns, rows }: Area): string[][] {
  if (columns * rows > MOST_CELLS) throw new Refusal("InvalidOperation", "more cells than one request should touch");
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, right) => cellAddress(column + right, row + down)),
  );
}

export const cellAt = (sheet: SheetState, at: string): CellState => sheet.cells.get(at) ?? newCell();

export function cellToChange(sheet: SheetState, at: string): CellState {
  if (sheet.isProtected) throw new Refusal("AccessDenied", `the sheet ${sheet.name} is protected`);
  if (sheet.fixed.has(at)) throw new Refusal("InvalidOperation", "You can't change part of an array.");
  const cell = sheet.cells.get(at) ?? newCell();
  sheet.cells.set(at, cell);
  return cell;
}

export const isFilled = (cell: CellState): boolean =>
  cell.value !== "" || cell.formula !== null || cell.anchor !== null;

/** The part of an area that is in use, as the smallest rectangle around it; null if nothing is. */
export function usedArea(area: Area, valuesOnly: boolean): Area | null {
  const used = [...area.sheet.cells]
    .filter(
      ([, cell]) => isFilled(cell) || (!valuesOnly && (Object.keys(cell.look).length > 0 || cell.format !== "General")),
    )
    .map(([at]) => placeOf(at))
    .filter(({ column, row }) => isInside(area, column, row));
  if (used.length === 0) return null;
  const columns = used.map(({ column }) => column);
  const rows = used.map(({ row }) => row);
  const [left, top] = [Math.min(...columns), Math.min(...rows)];
  return {
    sheet: area.sheet,
    column: left,
    row: top,
    columns: Math.max(...columns) - left + 1,
    rows: Math.max(...rows) - top + 1,
  };
}

const isInside = ({ column, row, columns, rows }: Area, atColumn: number, atRow: number): boolean =>
  atColumn >= column && atColumn < column + columns && atRow >= row && atRow < row + rows;

export function sheetNamed(book: BookState, key: string): SheetState | null {
  return book.sheets.find(({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase()) ?? null;
}
