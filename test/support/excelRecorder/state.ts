/** What the recorder keeps of a workbook. */
export interface BookState {
  name: string;
  sheets: SheetState[];
  names: NameState[];
  isLocked: boolean;
  calculationMode: "Automatic" | "AutomaticExceptTables" | "Manual";
  usePrecisionAsDisplayed: boolean;
  iterates: boolean;
  countedBy: readonly [row: string, column: string] | null; // the letters of the style R1C1 in the language of Excel; null for A1
  selection: { sheet: SheetState; areas: string[] };
  made: number; // sheets ever made, for their ids
}

export interface NameState {
  name: string;
  formula: string;
  visible: boolean;
}

export interface SheetState {
  readonly id: string;
  name: string;
  visibility: string;
  isProtected: boolean;
  isDeleted: boolean;
  cells: Map<string, CellState>;
  widths: Map<number, number>; // points
  heights: Map<number, number>;
  frozen: string | null;
  hasGridlines: boolean;
  filteredRows: Set<number>; // that a filter hides
  deaf: Set<string>; // cells that take nothing without a word, as the covered ones of merged cells
  fixed: Set<string>; // cells that belong to an array formula of the old kind, which changes as a whole or not at all
  merged: string[]; // addresses
  flags: FlagState[];
  tables: { name: string; range: string; style: string; showBandedRows: boolean }[];
  charts: ChartState[];
  print: Record<string, unknown>;
  breaks: Record<BreaksState["along"], string[]>; // the addresses of the cells after them
  marks: Map<string, string>;
}

/** The breaks of a sheet's pages, one way. */
export interface BreaksState {
  readonly sheet: SheetState;
  readonly along: "rows" | "columns";
}

export interface CellState {
  value: string | number | boolean; // "" is blank
  formula: string | null;
  isError: boolean;
  format: string;
  look: Record<string, unknown>; // "font.color" and so on, "borders.EdgeTop.style"
  validation: Record<string, any>;
  anchor: string | null; // of the formula that fills it
}

interface FlagState {
  range: string;
  type: string;
  rule: unknown;
  format: Record<string, unknown>;
}

export interface ChartState {
  name: string;
  type: string;
  from: string;
  to: string;
  texts: Record<string, unknown>;
  series: Record<string, unknown>[];
}

/** A rectangle of a sheet; columns and rows count from 1. */
export interface Area {
  readonly sheet: SheetState;
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

export const LAST_ROW = 1048576;
export const LAST_COLUMN = 16384;

export function newSheet(book: BookState, name: string): SheetState {
  const sheet: SheetState = {
    id: `{sheet-${++book.made}}`,
    name,
    visibility: "Visible",
    isProtected: false,
    isDeleted: false,
    cells: new Map(),
    widths: new Map(),
    heights: new Map(),
    frozen: null,
    hasGridlines: true,
    filteredRows: new Set(),
    deaf: new Set(),
    fixed: new Set(),
    merged: [],
    flags: [],
    tables: [],
    charts: [],
    print: {},
    breaks: { rows: [], columns: [] },
    marks: new Map(),
  };
  book.sheets.push(sheet);
  return sheet;
}

export const newCell = (): CellState => ({
  value: "",
  formula: null,
  isError: false,
  format: "General",
  look: {},
  validation: {},
  anchor: null,
});
