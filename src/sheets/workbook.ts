import type { SheetKey } from "./sheetKeys";
import type { Look, StyleName } from "./styles";

/** A workbook as plain data: what stands in it, not how a host writes it. */
export interface Workbook {
  readonly name: string;
  readonly sheets: readonly Sheet[];
  readonly names: readonly CellName[];
}

export interface Sheet {
  readonly key?: SheetKey; // which sheet of a budget it is, whatever it is called; none for a user's own
  readonly name: string;
  readonly columns: readonly number[]; // widths from column A on, in characters of the default font
  readonly tallRows: readonly TallRow[];
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly gridlines?: false; // a host draws its lines between all cells, where it is not told
  readonly cells: readonly SheetCell[];
  readonly lists: readonly ChoiceList[];
  readonly flags: readonly Flag[];
  readonly hints?: readonly Hint[];
  readonly oldMarks?: readonly OldMark[];
  readonly charts?: readonly Chart[];
  readonly tables?: readonly SheetTable[];
  readonly print?: PrintSetup;
}

/** Cells that a host may treat as a table of its own, with a filter in its header. Its header cells are texts, all different. */
export interface SheetTable {
  readonly name: string; // one word, unlike any other name of the workbook
  readonly range: string; // header row included
}

/** Rows or columns from one to another, counted from 1. */
interface Lines {
  readonly first: number;
  readonly last: number;
}

/** How the sheet is printed: one page wide and as many high as it needs, where it is not told. */
export interface PrintSetup {
  readonly paper: "A4" | "Letter";
  readonly landscape: boolean;
  readonly shared?: SharedOut; // in place of pages that a program shares out itself
  readonly pagesWide?: number; // more than one
  readonly pagesHigh?: number; // drawn smaller where it would take more
  readonly titleRows?: Lines; // repeated on every page
  readonly titleColumns?: Lines;
  readonly area?: string;
}

/** A sheet shared out over pages by its maker. A program that fits sheets to pages by itself passes over such breaks. */
export interface SharedOut {
  readonly scale: number; // percent of its size on the screen
  readonly rows: readonly number[]; // with which a page begins, counted from 1
  readonly columns: readonly number[];
}

/** A chart over cells. Its lines share one range of x; a cell that is blank or no number breaks a line. */
export interface Chart {
  readonly kind: "line through points";
  readonly over: string; // the cells it covers: "C26:I38"
  readonly title: string;
  readonly x: Axis & { readonly range: string };
  readonly y: Axis & { readonly series: readonly Series[] };
}

interface Axis {
  readonly title: string; // with its unit
}

export interface Series {
  readonly name: string;
  readonly range: string; // as long as the range of x
  readonly ink: string; // hex
}

/** A row that is higher than one line of text. */
export interface TallRow {
  readonly row: number; // from 1
  readonly lines: number;
}

/** A name for one cell, the same in the whole workbook. */
export interface CellName {
  readonly name: string;
  readonly sheet: string;
  readonly at: string;
}

/**
 * One cell. A value is never read as a formula, whatever it begins with; null is a blank that has a style.
 * A formula may spill: the cells it fills are not listed.
 */
export type SheetCell = CellLook & ({ readonly value: CellValue } | { readonly formula: string });

export type CellValue = string | number | boolean | null;

export interface CellLook {
  readonly at: string; // "B4"
  readonly style?: StyleName | Look; // a look of its own only where a sheet was read from a file that others changed
  readonly format?: string; // number format in the spreadsheet's own code, such as "#,##0"
  readonly note?: string; // an explanation that belongs to this cell
}

/** A drop-down: words to choose from. A strict one refuses others; the rest only suggest. */
export interface ChoiceList {
  readonly range: string;
  readonly choices: readonly string[];
  readonly strict: boolean;
}

/** What to type, told while a cell of these is selected or typed in. */
export interface Hint {
  readonly range: string;
  readonly text: string;
}

/** A conditional format by the text that a cell shows, so that colour is never the only sign. */
export interface Flag {
  readonly range: string;
  readonly containsText: string;
  readonly style: StyleName;
}

/** Cells that are struck out, and whose numbers say that they are old, while a cell of the same sheet says CHANGED. */
export interface OldMark {
  readonly ranges: readonly string[];
  readonly state: string; // that cell: $H$2
}

export const CHANGED = "changed";
