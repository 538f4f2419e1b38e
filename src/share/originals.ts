import { tokenize } from "@borgar/fx";
import { placeOf, cellAddress } from "../sheets/address";
import type { Extent } from "../sheets/calculated";
import { formula, text } from "../sheets/cells";
import type { Sheet, SheetCell } from "../sheets/workbook";
import { cellText } from "../sheets/rangeRef";
import { reachesOutside } from "./outside";
import { onAnySheet } from "./formula/ranges";
import { itemAt } from "../reference/itemAt";

/** What a copy records of a formula so that the live one can come back. */
export interface Original {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string; // "" where the copy added a cell of its own
  readonly written: Extent; // the cells that the copy filled in its place
  readonly said?: Said; // of a text that is not so in a copy
}

/** A text or a note before and after; or a cell's name, which the copy gave to a cell of its own. */
export interface Said {
  readonly part: "text" | "note" | "name";
  readonly was: string;
  readonly became: string;
}

/** In the first cell of the sheet: what it is, and by which rules it was written. */
export const ORIGINALS_MARK = "Original formulas, as of copy format 1";

const FIRST = 5;
export const COLUMNS = { formula: 1, rows: 2, columns: 3, anchor: 4, references: 5 } as const;
const ADDED = 3; // the row that names the sheets of the copy

/**
 * A sheet that remembers every formula of ours. Where it stood, and each range that it names, are kept as a reference of a plain
 * formula: so a spreadsheet program moves them along when rows are added or a sheet gets another name.
 */
export function originalsSheet(originals: readonly Original[], added: readonly string[], name: string): Sheet {
  const cells: SheetCell[] = [
    text("A1", ORIGINALS_MARK, "title"),
    text(
      "A2",
      "Whoever has the add-in turns this copy back into a live budget with these. Change nothing here.",
      "note",
    ),
    text(`A${ADDED}`, "sheets of this copy", "note"),
    ...added.map((sheet, index) => formula(cellAddress(index + 2, ADDED), `=ROWS(${cellText(sheet, 1, 1)})`)),
    ...["formula", "rows", "columns", "where", "its ranges"].map((words, column) =>
      text(cellAddress(column + 1, FIRST - 1), words, "header"),
    ),
  ];
  originals.forEach((original, index) => cells.push(...originalCells(original, FIRST + index)));
  return {
    name,
    columns: [70, 8, 8, 8, 8],
    tallRows: [],
    frozen: { rows: FIRST - 1, columns: 0 },
    cells,
    lists: [],
    flags: [],
  };
}

function originalCells({ sheet, at, formula: code, written, said }: Original, row: number): SheetCell[] {
  const { column, row: there } = placeOf(at);
  if (said !== undefined)
    return [
      text(cellAddress(COLUMNS.formula, row), said.was),
      text(cellAddress(COLUMNS.rows, row), said.part),
      formula(cellAddress(COLUMNS.anchor, row), `=ROWS(${cellText(sheet, column, there)})`),
      text(cellAddress(COLUMNS.references, row), said.became),
    ];
  return [
    text(cellAddress(COLUMNS.formula, row), code),
    { at: cellAddress(COLUMNS.rows, row), value: written.rows },
    { at: cellAddress(COLUMNS.columns, row), value: written.columns },
    formula(cellAddress(COLUMNS.anchor, row), `=ROWS(${cellText(sheet, column, there)})`),
    ...namedBy(code).map((range, index) =>
      formula(cellAddress(COLUMNS.references + index, row), `=ROWS(${onAnySheet(range, sheet)})`),
    ),
  ];
}

/** A formula that reaches outside is recorded as a text alone: a reference to another workbook would make the copy ask for it. */
const namedBy = (code: string): string[] => (reachesOutside(code) === null ? rangesInCode(code) : []);

/** The ranges that a formula names, in their order. */
export const rangesInCode = (code: string): string[] =>
  tokenize(code).flatMap(({ type, value }) => (type === "range" || type === "range_beam" ? [value] : []));

/** A formula with other ranges in their place, as many as it names. */
export function withRanges(code: string, ranges: readonly string[]): string {
  let next = 0;
  return tokenize(code)
    .map(({ type, value }) => (type === "range" || type === "range_beam" ? itemAt(ranges, next++) : value))
    .join("");
}
