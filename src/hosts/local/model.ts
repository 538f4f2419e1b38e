import { cellAddress, columnLetters, placeOf } from "../../sheets/address";
import { MOST_COLUMNS, MOST_ROWS } from "../../sheets/extent";
import { oldRule } from "../../sheets/oldRule";
import { rectangleOf } from "../../sheets/rectangle";
import type { PrintSetup, Sheet, SheetCell, Workbook } from "../../sheets/workbook";
import { chartFigure } from "./charts";
import { contentOf } from "./content";
import { withHeldNames } from "./heldNames";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { Fact, Kept, Paper } from "./keptPlugin";
import { gridBorder, gridStyle } from "./looks";
import { cellSizes } from "./sizes";

/** Version of the grid's data format; without it old migrations run over the data. */
const DATA_VERSION = "19.3.2";

/** An answer spills as far as it needs, but not past the sheet's edge: the longest answer over a template's forty runs fits. */
const SPARE_ROWS = 120;
const LEAST_COLUMNS = 104; // A to CZ

/** A table of the grid that looks as its cells do, with a filter in each header. */
const TABLE = {
  type: "static",
  config: {
    hasFilters: true,
    totalRow: false,
    firstColumn: false,
    lastColumn: false,
    numberOfHeaders: 1,
    bandedRows: false,
    bandedColumns: false,
    automaticAutofill: false,
    styleId: "None",
  },
} as const;

/** The part of the grid's data that we write. */
export interface GridData {
  readonly version: string;
  readonly sheets: readonly GridSheetData[];
  readonly styles: Readonly<Record<number, unknown>>;
  readonly borders: Readonly<Record<number, unknown>>;
  readonly formats: Readonly<Record<number, unknown>>;
  readonly namedRanges: Readonly<Record<string, string>>;
  readonly kept: Kept;
}

export interface GridSheetData extends ReturnType<typeof sheetData> {
  readonly styles: Readonly<Record<string, number>>;
  readonly borders: Readonly<Record<string, number>>;
  readonly formats: Readonly<Record<string, number>>;
}

/** Numbers the distinct values of a kind, as the grid's data refers to them. */
interface Numbering<Kind> {
  readonly of: (kind: Kind) => number | null;
  readonly all: Readonly<Record<number, unknown>>;
}

/** @param valueOf what the grid holds of such a kind; null for nothing */
function numbering<Kind>(valueOf: (kind: Kind) => unknown): Numbering<Kind> {
  const known = new Map<Kind, number | null>(); // so that a value is made and compared once, not for each of ten thousand cells
  const numbers = new Map<string, number>();
  const all: Record<number, unknown> = {};
  const numberOf = (value: unknown): number => {
    const content = JSON.stringify(value);
    const number = numbers.get(content) ?? numbers.size + 1;
    numbers.set(content, number);
    all[number] = value;
    return number;
  };
  const of = (kind: Kind): number | null => {
    let number = known.get(kind);
    if (number === undefined) {
      const value = valueOf(kind);
      number = value === null ? null : numberOf(value);
      known.set(kind, number);
    }
    return number;
  };
  return { of, all };
}

/** The number of what cells have of a kind, by their addresses; those that have none are left out. */
function numbersOf<Kind>(
  cells: readonly SheetCell[],
  kindOf: (cell: SheetCell) => Kind | undefined,
  { of }: Numbering<Kind>,
): Record<string, number> {
  const numbers: Record<string, number> = {};
  for (const cell of cells) {
    const kind = kindOf(cell);
    const number = kind === undefined ? null : of(kind);
    if (number !== null) numbers[cell.at] = number;
  }
  return numbers;
}

/**
 * A workbook as the data that the grid's model is built from.
 *
 * @param idOf the id of each sheet by its index, where they must differ from those of a grid that is there
 */
export function gridData(described: Workbook, idOf = (index: number): string => `sheet${index + 1}`): GridData {
  const workbook = withHeldNames(described);
  const styles = numbering(gridStyle);
  const borders = numbering(gridBorder);
  const formats = numbering((format: string) => format);
  const sheets = workbook.sheets.map((sheet, index) => ({
    ...sheetData(sheet, idOf(index)),
    styles: numbersOf(sheet.cells, ({ style }) => style, styles),
    borders: numbersOf(sheet.cells, ({ style }) => style, borders),
    formats: numbersOf(sheet.cells, ({ format }) => format, formats),
  }));
  return {
    version: DATA_VERSION,
    sheets,
    styles: styles.all,
    borders: borders.all,
    formats: formats.all,
    namedRanges: Object.fromEntries(workbook.names.map(({ name, sheet, at }) => [name, `${sheetPrefix(sheet)}${at}`])),
    kept: {
      title: workbook.name,
      facts: workbook.sheets.flatMap(factsOf),
      papers: Object.fromEntries(
        workbook.sheets.flatMap(({ print }, index) => (print === undefined ? [] : [[idOf(index), paperOf(print)]])),
      ),
      keys: Object.fromEntries(
        workbook.sheets.flatMap(({ key }, index) => (key === undefined ? [] : [[idOf(index), key]])),
      ),
    },
  };
}

const paperOf = ({ paper, landscape, pagesWide, pagesHigh, shared }: PrintSetup): Paper => ({
  paper,
  landscape,
  ...(shared === undefined ? {} : { scale: shared.scale }),
  ...(pagesWide === undefined ? {} : { pagesWide }),
  ...(pagesHigh === undefined ? {} : { pagesHigh }),
});

function factsOf({ name, cells, hints, tables, print }: Sheet): Fact[] {
  const on = (range: string): string => `${sheetPrefix(name)}${range}`;
  const { titleRows, titleColumns, area, shared } = print ?? {};
  return [
    ...cells.flatMap(({ at, note }): Fact[] =>
      note === undefined ? [] : [{ range: on(at), kind: "note", text: note }],
    ),
    ...(hints ?? []).map(({ range, text }): Fact => ({ range: on(range), kind: "hint", text })),
    ...(tables ?? []).map((table): Fact => ({ range: on(table.range), kind: "table name", text: table.name })),
    ...(titleRows === undefined
      ? []
      : [{ range: on(`${titleRows.first}:${titleRows.last}`), kind: "title rows" } as const]),
    ...(titleColumns === undefined
      ? []
      : [
          {
            range: on(`${columnLetters(titleColumns.first)}:${columnLetters(titleColumns.last)}`),
            kind: "title columns",
          } as const,
        ]),
    ...(area === undefined ? [] : [{ range: on(area), kind: "print area" } as const]),
    ...(shared?.rows ?? []).map((row): Fact => ({ range: on(`${row}:${row}`), kind: "page row" })),
    ...(shared?.columns ?? []).map((column): Fact => {
      const letters = columnLetters(column);
      return { range: on(`${letters}:${letters}`), kind: "page column" };
    }),
  ];
}

function sheetData(sheet: Sheet, id: string) {
  const places = sheet.cells.map(({ at }) => placeOf(at));
  const far = places.find(({ row, column }) => row > MOST_ROWS || column > MOST_COLUMNS);
  if (far !== undefined)
    throw new Error(
      `the sheet ${sheet.name} reaches to ${cellAddress(far.column, far.row)}, farther than a grid may here`,
    );
  const sizes = cellSizes(sheet);
  return {
    id,
    name: sheet.name,
    colNumber: Math.max(
      sheet.columns.length,
      places.reduce((last, { column }) => Math.max(last, column), LEAST_COLUMNS),
    ),
    rowNumber: places.reduce((last, { row }) => Math.max(last, row), 0) + SPARE_ROWS,
    cells: contentsOf(sheet.cells),
    cols: Object.fromEntries(sheet.columns.map((_, index) => [index, { size: sizes.width(index + 1) }])),
    rows: Object.fromEntries(sheet.tallRows.map(({ row }) => [row - 1, { size: sizes.height(row) }])),
    areGridLinesVisible: sheet.gridlines !== false,
    panes: { xSplit: sheet.frozen.columns, ySplit: sheet.frozen.rows },
    conditionalFormats: [...oldFormats(sheet, id), ...flagFormats(sheet, id)],
    dataValidationRules: sheet.lists.map(({ range, choices, strict }, index) => ({
      id: `${id}-list${index + 1}`,
      ranges: [range],
      isBlocking: strict,
      criterion: { type: "isValueInList", values: choices, displayStyle: "arrow" },
    })),
    tables: (sheet.tables ?? []).map(({ range }) => ({ range, ...TABLE })),
    figures: (sheet.charts ?? []).map((chart, index) => chartFigure(chart, `${id}-chart${index + 1}`, sizes)),
  };
}

function contentsOf(cells: readonly SheetCell[]): Record<string, string> {
  const contents: Record<string, string> = {};
  for (const cell of cells) {
    const content = contentOf(cell);
    if (content !== "") contents[cell.at] = content;
  }
  return contents;
}

const flagFormats = ({ flags }: Sheet, id: string) =>
  flags.map(({ range, containsText, style }, index) => ({
    id: `${id}-flag${index + 1}`,
    ranges: [range],
    rule: { type: "CellIsRule", operator: "containsText", values: [containsText], style: gridStyle(style) },
  }));

/** Of each range of an old mark a rule, before all flags. A rule of the grid has no number format, so its numbers do not say "old". */
const oldFormats = ({ oldMarks = [] }: Sheet, id: string) =>
  oldMarks
    .flatMap(({ ranges, state }) => ranges.map((range) => ({ state, range, ...rectangleOf(range) })))
    .map(({ state, range, left, top }, index) => ({
      id: `${id}-old${index + 1}`,
      ranges: [range],
      rule: {
        type: "CellIsRule",
        operator: "customFormula",
        values: [`=${oldRule(state, cellAddress(left, top))}`],
        style: { ...gridStyle("flag"), strikethrough: true },
      },
    }));
