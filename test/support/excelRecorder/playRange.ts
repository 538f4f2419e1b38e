import { placeOf } from "../../../src/sheets/address";
import { type Calculate, enter } from "./enter";
import type { Played } from "./object";
import { addressesIn, addressIn, areaOn, cellAt, cellToChange, fullAddress, usedArea } from "./places";
import { misuse, Refusal } from "./refuse";
import { type Area, type BookState, type CellState, LAST_COLUMN, LAST_ROW } from "./state";

export interface RangeOptions {
  readonly calculate: Calculate;
  readonly spilledFormulas: "anchor's" | "values"; // the documentation does not say what a filled cell answers as its formula
}

const matrix = (area: Area, of: (cell: CellState, at: string) => unknown): unknown[][] =>
  addressesIn(area).map((line) => line.map((at) => of(cellAt(area.sheet, at), at)));

const typeOf = ({ value, isError }: CellState): string =>
  isError
    ? "Error"
    : value === ""
      ? "Empty"
      : { string: "String", number: "Double", boolean: "Boolean" }[typeof value as "string"];

const inside = (area: Area, row: number, column: number, rows: number, columns: number): Area => {
  if (area.row + row + rows - 1 > LAST_ROW || area.column + column + columns - 1 > LAST_COLUMN)
    throw misuse("beyond the sheet");
  return { ...area, row: area.row + row, column: area.column + column, rows, columns };
};

/** All, none or some (null) of the cells of an area are part of an answer that fills several cells. */
function hasSpill(area: Area): boolean | null {
  const anchors = new Set([...area.sheet.cells.values()].map(({ anchor }) => anchor));
  const parts = matrix(area, (cell, at) => cell.anchor !== null || anchors.has(at)).flat();
  return parts.every(Boolean) ? true : parts.some(Boolean) ? null : false;
}

function spillingTo(area: Area): Area | null {
  if (area.rows * area.columns !== 1) return null;
  const from = addressIn(area);
  const filled = [...area.sheet.cells].filter(([, cell]) => cell.anchor === from).map(([at]) => placeOf(at));
  if (filled.length === 0) return null;
  return {
    ...area,
    columns: Math.max(...filled.map(({ column }) => column)) - area.column + 1,
    rows: Math.max(...filled.map(({ row }) => row)) - area.row + 1,
  };
}

export const playRange = (book: BookState, { calculate, spilledFormulas }: RangeOptions): Played => ({
  reads: {
    address: fullAddress,
    rowIndex: ({ row }) => row - 1,
    columnIndex: ({ column }) => column - 1,
    rowCount: ({ rows }) => rows,
    columnCount: ({ columns }) => columns,
    cellCount: ({ rows, columns }) => (rows * columns > 2 ** 31 - 1 ? -1 : rows * columns),
    isEntireRow: ({ columns }) => columns === LAST_COLUMN,
    isEntireColumn: ({ rows }) => rows === LAST_ROW,
    hasSpill,
    values: (area) => matrix(area, ({ value }) => value),
    valueTypes: (area) => matrix(area, typeOf),
    numberFormat: (area) => matrix(area, ({ format }) => format),
    formulas: (area: Area) =>
      matrix(area, ({ formula, value, anchor }) =>
        anchor !== null && spilledFormulas === "anchor's" ? cellAt(area.sheet, anchor).formula : (formula ?? value),
      ),
  },
  writes: {
    values: (area, rows) => enter(book, area, rows, calculate),
    formulas: (area, rows) => enter(book, area, rows, calculate),
    numberFormat: (area: Area, rows: unknown[][]) => {
      if (rows.length !== area.rows || rows.some((row) => row.length !== area.columns))
        throw misuse("formats do not fit the range");
      addressesIn(area).forEach((line, down) =>
        line.forEach((at, right) => (cellToChange(area.sheet, at).format = String(rows[down]![right]))),
      );
    },
  },
  parts: {
    format: (area) => area,
    dataValidation: (area) => area,
    conditionalFormats: (area) => area,
    worksheet: ({ sheet }) => sheet,
  },
  calls: {
    getCell: (area, row, column) => inside(area, row, column, 1, 1),
    getRow: (area, row) => inside(area, row, 0, 1, area.columns),
    getAbsoluteResizedRange: (area, rows, columns) => inside(area, 0, 0, rows, columns),
    getBoundingRect: (area: Area, other: Area | string): Area => {
      const second = typeof other === "string" ? areaOn(area.sheet, other) : other;
      const [column, row] = [Math.min(area.column, second.column), Math.min(area.row, second.row)];
      return {
        sheet: area.sheet,
        column,
        row,
        columns: Math.max(area.column + area.columns, second.column + second.columns) - column,
        rows: Math.max(area.row + area.rows, second.row + second.rows) - row,
      };
    },
    getUsedRangeOrNullObject: (area, valuesOnly = false) => usedArea(area, valuesOnly),
    getSpillingToRangeOrNullObject: spillingTo,
    getMergedAreasOrNullObject: ({ sheet }: Area) =>
      sheet.merged.length === 0 ? null : sheet.merged.map((address) => areaOn(sheet, address)),
    getSpecialCellsOrNullObject: (area: Area, type: string) => {
      if (type !== "DataValidations") throw misuse(`the recorder finds no ${type}`);
      const found = [...area.sheet.cells].filter(([, { validation }]) => Object.keys(validation).length > 0);
      return found.length === 0 ? null : found.map(([at]) => areaOn(area.sheet, at));
    },
    getCellProperties: (area, asked) => matrix(area, ({ look }) => properties(look, asked)),
    getColumnProperties: ({ sheet, column, columns }: Area) =>
      Array.from({ length: columns }, (_, right) => ({
        format: { columnWidth: sheet.widths.get(column + right) ?? 48 },
      })),
    getRowProperties: ({ sheet, row, rows }: Area) =>
      Array.from({ length: rows }, (_, down) => ({ format: { rowHeight: sheet.heights.get(row + down) ?? 15 } })),
    select: (area: Area) => {
      if (area.sheet.visibility !== "Visible") throw new Refusal("InvalidSelection", "the sheet is hidden");
      book.selection = { sheet: area.sheet, areas: [addressIn(area)] };
    },
  },
});

/** The properties of a cell that were asked, with what Excel has where nobody has set one. */
function properties(look: Record<string, unknown>, asked: { format?: Record<string, any> }): unknown {
  const { font, fill, borders, ...rest } = asked.format ?? {};
  const usual: Record<string, unknown> = { color: "#000000", size: 11, bold: false, italic: false };
  const pick = (group: string, names: object): object =>
    Object.fromEntries(Object.keys(names).map((name) => [name, look[`${group}.${name}`] ?? usual[name] ?? null]));
  const side = (name: string): object => ({ style: look[`borders.Edge${name}.style`] ?? "None" });
  const filled = look["fill.color"];
  return {
    format: {
      ...(font ? { font: pick("font", font) } : {}),
      ...(fill ? { fill: { color: filled ?? "#FFFFFF", pattern: filled === undefined ? "None" : "Solid" } } : {}),
      ...(borders
        ? { borders: { top: side("Top"), right: side("Right"), bottom: side("Bottom"), left: side("Left") } }
        : {}),
      ...(rest.horizontalAlignment ? { horizontalAlignment: look.horizontalAlignment ?? "General" } : {}),
      ...(rest.wrapText ? { wrapText: look.wrapText ?? false } : {}),
    },
  };
}
