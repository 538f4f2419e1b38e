import { placeOf } from "../../sheets/address";
import type { StyleName } from "../../sheets/styles";
import type { Sheet, SheetCell, Workbook } from "../../sheets/workbook";
import { type CellSizes, chartFigure } from "./charts";
import { gridBorder, gridStyle } from "./looks";

/** Version of the grid's data format; without it old migrations run over the data. */
const DATA_VERSION = "19.3.2";

const CHARACTER = 7; // pixels of an average character of the default font
const LINE = 18; // pixels of a line of text
const ROW = 23; // pixels of an ordinary row
const COLUMN = 96; // pixels of a column whose width nobody set
const SPARE_ROWS = 40;
const LEAST_COLUMNS = 26;

/** Numbers the distinct values of a kind, as the grid's data refers to them. */
function numbering(): { readonly of: (value: unknown) => number; readonly all: Record<number, unknown> } {
  const numbers = new Map<string, number>();
  const all: Record<number, unknown> = {};
  const of = (value: unknown): number => {
    const key = JSON.stringify(value);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const next = numbers.size + 1;
    numbers.set(key, next);
    all[next] = value;
    return next;
  };
  return { of, all };
}

/** A workbook as the data that the grid's model is built from. */
export function gridData(workbook: Workbook): Record<string, unknown> {
  const styles = numbering();
  const borders = numbering();
  const formats = numbering();
  const sheets = workbook.sheets.map((sheet, index) => {
    const look = (pick: (cell: SheetCell) => number | null): Record<string, number> =>
      Object.fromEntries(sheet.cells.flatMap((cell) => (pick(cell) === null ? [] : [[cell.at, pick(cell)!]])));
    return {
      ...sheetData(sheet, `sheet${index + 1}`),
      styles: look(({ style }) => (style === undefined ? null : styles.of(gridStyle(style)))),
      borders: look(({ style }) => borderOf(style, borders)),
      formats: look(({ format }) => (format === undefined ? null : formats.of(format))),
    };
  });
  return {
    version: DATA_VERSION,
    sheets,
    styles: styles.all,
    borders: borders.all,
    formats: formats.all,
    namedRanges: Object.fromEntries(workbook.names.map(({ name, sheet, at }) => [name, `${quoted(sheet)}!${at}`])),
    cellNotes: workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ at, note }) =>
        note === undefined ? [] : [{ range: `${quoted(sheet.name)}!${at}`, note }],
      ),
    ),
  };
}

const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

function borderOf(style: StyleName | undefined, borders: ReturnType<typeof numbering>): number | null {
  const border = style === undefined ? null : gridBorder(style);
  return border === null ? null : borders.of(border);
}

function sheetData(sheet: Sheet, id: string): Record<string, unknown> {
  const places = sheet.cells.map(({ at }) => placeOf(at));
  const sizes = cellSizes(sheet);
  return {
    id,
    name: sheet.name,
    colNumber: Math.max(LEAST_COLUMNS, sheet.columns.length, ...places.map(({ column }) => column)),
    rowNumber: Math.max(...places.map(({ row }) => row)) + SPARE_ROWS,
    cells: Object.fromEntries(
      sheet.cells.flatMap((cell) => (contentOf(cell) === "" ? [] : [[cell.at, contentOf(cell)]])),
    ),
    cols: Object.fromEntries(sheet.columns.map((_, index) => [index, { size: sizes.width(index + 1) }])),
    rows: Object.fromEntries(sheet.tallRows.map(({ row }) => [row - 1, { size: sizes.height(row) }])),
    panes: { xSplit: sheet.frozen.columns, ySplit: sheet.frozen.rows },
    conditionalFormats: sheet.flags.map(({ range, containsText, style }, index) => ({
      id: `${id}-flag${index + 1}`,
      ranges: [range],
      rule: { type: "CellIsRule", operator: "containsText", values: [containsText], style: gridStyle(style) },
    })),
    dataValidationRules: sheet.lists.map(({ range, choices, strict }, index) => ({
      id: `${id}-list${index + 1}`,
      ranges: [range],
      isBlocking: strict,
      criterion: { type: "isValueInList", values: choices, displayStyle: "arrow" },
    })),
    figures: (sheet.charts ?? []).map((chart, index) => chartFigure(chart, `${id}-chart${index + 1}`, sizes)),
  };
}

function cellSizes(sheet: Sheet): CellSizes {
  const lines = new Map(sheet.tallRows.map((tall) => [tall.row, tall.lines]));
  return {
    width: (column) => {
      const characters = sheet.columns[column - 1];
      return characters === undefined ? COLUMN : Math.round(characters * CHARACTER);
    },
    height: (row) => Math.max(ROW, (lines.get(row) ?? 0) * LINE + 6),
  };
}

/** What a person would type to get this cell; a text that could be taken for something else is marked as text. */
export function contentOf(cell: SheetCell): string {
  if ("formula" in cell) return cell.formula;
  if (cell.value === null) return "";
  return typeof cell.value === "string" ? textContent(cell.value) : String(cell.value).toUpperCase();
}

/** Text that does not begin with a letter could be taken for a formula, a number or a date, and so could a truth value. */
export const textContent = (value: string): string =>
  /^\p{L}/u.test(value) && !/^(true|false)$/i.test(value) ? value : `'${value}`;
