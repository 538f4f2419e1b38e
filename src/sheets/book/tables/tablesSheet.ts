import { TABLES_DATE } from "../../../reference";
import { cellAddress } from "../../address";
import { text } from "../../cells";
import type { Sheet, SheetCell, SheetTable, TallRow } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { cautionLine } from "../parts/cautionLine";
import { printing } from "../parts/printing";
import { type ArrangedTable, arrangedTables } from "./arranged";
import { itemAt } from "../../../reference/itemAt";

const WIDTHS = [27, 34, 38, 15]; // of the columns that all tables share
const VALUE = 11.5; // characters of a column of values
const CAPTIONS = 4; // row of what the shared columns hold
const INDEX = 7; // row of the header of the list of tables
const FIT = 0.9; // words break before the end of a line

interface Placed extends ArrangedTable {
  readonly header: number; // its row
}

/** The reference tables as plain cells, one under the other: they stay readable where nothing computes. */
export const tablesSheet: SheetOf<null> = (frame): Sheet => {
  const placed = place(arrangedTables());
  const widest = Math.max(...placed.map(({ headers }) => headers.length));
  return {
    name: frame.sheet("tables"),
    columns: [...WIDTHS, ...new Array<number>(widest - WIDTHS.length).fill(VALUE)],
    tallRows: placed.flatMap(tallRows),
    frozen: { rows: CAPTIONS, columns: 1 },
    cells: [...head(frame, placed), ...placed.flatMap(tableCells)],
    lists: [],
    flags: [],
    tables: placed.map((table) => tableOf(frame, table)),
    print: { ...printing(frame, "landscape"), area: `A1:F${afterList(placed)}` },
  };
};

/** The last row of what is said of the list of tables. */
const afterList = ({ length }: readonly Placed[]): number => INDEX + length + 2;

function place(tables: readonly ArrangedTable[]): Placed[] {
  let next = INDEX + tables.length + 4;
  return tables.map((table) => {
    const header = next;
    next += table.rows.length + 4; // a blank row, the title, and a blank row for the eye
    return { ...table, header };
  });
}

function head(frame: Frame, placed: readonly Placed[]): SheetCell[] {
  return [
    text("A1", frame.sheet("tables"), "title"),
    text("B1", `Values with their sources, in both unit systems. As of ${TABLES_DATE}.`),
    text(
      "B2",
      "A row that is marked weak is from memory, an estimate, or was not read: measure, or look it up, before you rely on it.",
    ),
    cautionLine(
      frame,
      "B3",
      "Nothing that grinds metal on a duct that carries wood dust. Plastic pipe charges itself.",
    ),
    ...[
      "Key, as functions take it",
      "What it is",
      "Note [short name of the source, place in it]",
      "How it was read",
      "Values",
    ].map((words, index) => text(cellAddress(index + 1, CAPTIONS), words, "header")),
    text(`A${INDEX - 1}`, "Tables below", "section"),
    text(`A${INDEX}`, "Table", "header"),
    text(`B${INDEX}`, "What it holds", "header"),
    text(`C${INDEX}`, "Where", "header"),
    ...placed.flatMap(({ name, title, header, rows }, index) => [
      text(`A${INDEX + 1 + index}`, name, "label"),
      text(`B${INDEX + 1 + index}`, title),
      text(`C${INDEX + 1 + index}`, `row ${header}, ${rows.length} rows`),
    ]),
    text(`B${afterList(placed) - 1}`, "The short names of the sources are spelt out in the last table.", "note"),
    text(
      `B${afterList(placed)}`,
      "On paper comes this list only, for all tables fill forty pages: select a table and print the selection.",
      "note",
    ),
  ];
}

function tableCells({ name, title, header, headers, rows }: Placed): SheetCell[] {
  const isNumber = headers.map((_, column) => rows.some((row) => typeof row[column] === "number"));
  return [
    text(`A${header - 1}`, name, "section"),
    text(`B${header - 1}`, title, "section"),
    ...headers.map((words, column) =>
      text(cellAddress(column + 1, header), words, itemAt(isNumber, column) ? "numberHeader" : "header"),
    ),
    ...rows.flatMap((row, down) =>
      row.flatMap((value, column): SheetCell[] =>
        value === "" ? [] : [{ at: cellAddress(column + 1, header + 1 + down), value, style: "paragraph" }],
      ),
    ),
  ];
}

function tallRows({ header, headers, rows }: Placed): TallRow[] {
  const lines = (words: string, column: number): number => Math.ceil(words.length / ((WIDTHS[column] ?? VALUE) * FIT));
  const most = (row: readonly (string | number)[]): number =>
    Math.max(...row.map((cell, at) => lines(String(cell), at)));
  return [headers, ...rows].flatMap((row, down) => (most(row) > 1 ? [{ row: header + down, lines: most(row) }] : []));
}

/** The sheet's own name is unlike any other, so a table's name that begins with it is too. */
function tableOf(frame: Frame, { name, header, headers, rows }: Placed): SheetTable {
  const word = (words: string): string => words.replace(/[^A-Za-z0-9]+/g, "_");
  return {
    name: `ref_${word(frame.sheet("tables"))}_${word(name)}`,
    range: `A${header}:${cellAddress(headers.length, header + rows.length)}`,
  };
}
