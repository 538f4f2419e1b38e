import type { Played } from "./object";
import { addressIn, areaOn, isFilled } from "./places";
import { misuse } from "./refuse";
import type { Area, BookState, SheetState } from "./state";

export const playTables = (book: BookState): Record<string, Played> => ({
  TableCollection: {
    items: (holder: SheetState | BookState) =>
      "sheets" in holder ? holder.sheets.flatMap(({ tables }) => tables) : holder.tables,
    calls: { add: (sheet: SheetState, area: Area, hasHeaders: boolean) => addTable(book, sheet, area, hasHeaders) },
  },
  Table: {
    reads: { name: ({ name }) => name },
    writes: {
      name: (table, value) => {
        if (!isFreeWord(book, value)) throw misuse(`no name for a table: ${value}`);
        table.name = value;
      },
      style: (table, value) => (table.style = value),
      showBandedRows: (table, value) => (table.showBandedRows = value),
    },
    calls: { getRange: ({ sheet, range }) => areaOn(sheet, range) },
  },
});

/** Names of cells and of tables share one set of words. */
export function isFreeWord(book: BookState, word: string): boolean {
  const words = [
    ...book.names.map(({ name }) => name),
    ...book.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)),
  ];
  const isWord = /^[\p{L}_\\][\p{L}\d_.\\]*$/u.test(word) && !/^[A-Za-z]{1,3}\d+$|^[RrCc]$/.test(word);
  return isWord && !words.some((other) => other.toLowerCase() === word.toLowerCase());
}

function addTable(book: BookState, sheet: SheetState, area: Area, hasHeaders: boolean): unknown {
  if (area.sheet !== sheet) throw misuse("a table's range lies on another sheet");
  const heads = Array.from({ length: area.columns }, (_, right) =>
    sheet.cells.get(addressIn({ ...area, rows: 1, columns: 1, column: area.column + right })),
  );
  const texts = heads.map((head) => (head?.formula === null ? head.value : null));
  if (
    !hasHeaders ||
    texts.some((text) => typeof text !== "string" || text === "") ||
    new Set(texts).size < texts.length
  ) {
    throw misuse("a table's headers are texts, all different");
  }
  const anchors = [...sheet.cells].filter(
    ([at, cell]) => (cell.anchor ?? null) !== null && isWithin(sheet, area, at) && isFilled(cell),
  );
  if (anchors.length > 0) throw misuse("a formula that fills several cells gives #SPILL! in a table");
  const count = book.sheets.reduce((sum, { tables }) => sum + tables.length, 0);
  const table = {
    sheet,
    name: `Table${count + 1}`,
    range: addressIn(area),
    style: "TableStyleMedium2",
    showBandedRows: true,
  };
  sheet.tables.push(table);
  return table;
}

function isWithin(sheet: SheetState, area: Area, at: string): boolean {
  const { column, row } = areaOn(sheet, at);
  return column >= area.column && column < area.column + area.columns && row >= area.row && row < area.row + area.rows;
}
