import { type placeOf } from "../../../sheets/address";
import { namedColumns, pagesAcross, roomOn } from "../../../sheets/paper";
import { rectangleOf } from "../../../sheets/rectangle";
import type { PrintSetup } from "../../../sheets/workbook";
import type { GridModel } from "../grid";
import { printSetup } from "../readGridSheet";
import { cellLook } from "./cellLook";

/** A sheet shared out over pages. Columns and rows count from 0; hidden ones are left out. */
export interface Pages {
  readonly format: PrintSetup;
  readonly room: ReturnType<typeof roomOn>;
  /** Side by side, each with how much smaller than on the screen it is drawn. */
  readonly pages: readonly { readonly columns: readonly number[]; readonly scale: number }[];
  readonly rows: PrintedRows;
}

/** The rows above those that come back on each page, these, and the rest. */
export interface PrintedRows {
  readonly above: readonly number[];
  readonly titles: readonly number[];
  readonly rest: readonly number[];
  readonly begins: ReadonlySet<number>; // with which a part begins that a page should not cut
}

export const POINTS_OF_PIXEL = 0.75;

/** A sheet of a user's own is printed upright on the paper of the sheets beside it. */
export function pagesOf(model: GridModel, sheetId: string): Pages {
  const { getters } = model;
  const format = printSetup(model, sheetId) ?? { paper: usualPaper(model), landscape: false };
  const end = format.area === undefined ? lastUsed(model, sheetId) : endOf(format.area);
  const shown = upTo(end.column).filter((column) => !getters.isColHidden(sheetId, column));
  const widths = shown.map((column) => getters.getColSize(sheetId, column) * POINTS_OF_PIXEL);
  const room = roomOn(format);
  const named = namedColumns(getters.getPaneDivisions(sheetId).xSplit);
  const whole = wholeBetween(shown, format.shared?.columns ?? []);
  const pages = pagesAcross(widths, named, format, whole).map((places) => {
    const wide = places.reduce((sum, place) => sum + (widths[place] ?? 0), 0);
    const scale = Math.min(1, room.across / wide, (format.shared?.scale ?? 100) / 100);
    return { columns: places.flatMap((place) => shown[place] ?? []), scale };
  });
  return { format, room, pages, rows: rowsOf(model, sheetId, end.row, format) };
}

/** What lies between two breaks stays together where a page has room for it; whoever made columns wider gets more pages. */
const wholeBetween = (shown: readonly number[], begins: readonly number[]): { first: number; last: number }[] => {
  const places = begins.map((begin) => shown.findIndex((column) => column + 1 >= begin)).filter((place) => place > 0);
  return [0, ...places].map((place, index) => ({ first: place + 1, last: places[index] ?? shown.length }));
};

function rowsOf({ getters }: GridModel, sheetId: string, last: number, { titleRows, shared }: PrintSetup): PrintedRows {
  const rows = upTo(last).filter((row) => !getters.isRowHidden(sheetId, row));
  const begins = new Set(shared?.rows.map((row) => row - 1));
  if (titleRows === undefined) return { above: [], titles: [], rest: rows, begins };
  const { first, last: end } = titleRows;
  return {
    above: rows.filter((row) => row + 1 < first),
    titles: rows.filter((row) => row + 1 >= first && row + 1 <= end),
    rest: rows.filter((row) => row + 1 > end),
    begins,
  };
}

const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

const endOf = (area: string): ReturnType<typeof placeOf> => {
  const { right, bottom } = rectangleOf(area);
  return { column: right, row: bottom };
};

/** The last column and row in which something is seen, a chart's corner too; counted from 1. */
function lastUsed({ getters }: GridModel, sheetId: string): ReturnType<typeof placeOf> {
  const end = { column: 1, row: 1 };
  const reach = (column: number, row: number): void => {
    end.column = Math.max(end.column, column + 1);
    end.row = Math.max(end.row, row + 1);
  };
  for (const cell of getters.getCells(sheetId)) {
    const position = getters.getCellPosition(cell.id);
    if (cellLook(getters, position).isSeen) reach(position.col, position.row);
  }
  for (const position of getters.getEvaluatedCellsPositions(sheetId))
    if (cellLook(getters, position).isSeen) reach(position.col, position.row);
  for (const figure of getters.getFigures(sheetId)) {
    let { col, row } = figure;
    for (let wide = figure.offset.x + figure.width; (wide -= getters.getColSize(sheetId, col)) > 1;) col++;
    for (let high = figure.offset.y + figure.height; (high -= getters.getRowSize(sheetId, row)) > 1;) row++;
    reach(col, row);
  }
  return end;
}

const usualPaper = (model: GridModel): PrintSetup["paper"] =>
  model.getters
    .getSheetIds()
    .map((id) => printSetup(model, id)?.paper)
    .find((paper) => paper !== undefined) ?? "A4";
