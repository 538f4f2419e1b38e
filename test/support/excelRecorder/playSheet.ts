import type { Played } from "./object";
import { addressIn, areaOn, usedArea } from "./places";
import { misuse, Refusal } from "./refuse";
import { type Area, type BookState, LAST_COLUMN, LAST_ROW, newSheet, type SheetState } from "./state";

const whole = (sheet: SheetState): Area => ({ sheet, column: 1, row: 1, columns: LAST_COLUMN, rows: LAST_ROW });

/** What Excel lets a sheet be called. */
function checkSheetName(book: BookState, name: string): void {
  const isForbidden = name === "" || name.length > 31 || /[\\/?*[\]:]/.test(name) || /^'|'$/.test(name);
  if (isForbidden || name.toLowerCase() === "history") throw misuse(`no name for a sheet: ${name}`);
  if (book.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) {
    throw new Refusal("ItemAlreadyExists", `there is a sheet ${name} already`);
  }
}

function refuseLocked(book: BookState): void {
  if (book.isLocked) throw new Refusal("AccessDenied", "the structure of the workbook is protected");
}

export const playSheets = (book: BookState): Record<string, Played> => ({
  WorksheetCollection: {
    items: () => book.sheets,
    calls: {
      add: (_, name: string) => {
        refuseLocked(book);
        checkSheetName(book, name);
        return newSheet(book, name);
      },
      getItem: (_, key: string) => sheetOf(book, key),
      getItemOrNullObject: (_, key: string) => sheetOf(book, key),
    },
  },
  Worksheet: {
    reads: {
      id: ({ id }) => id,
      name: ({ name }) => name,
      visibility: ({ visibility }) => visibility,
      showGridlines: ({ hasGridlines }) => hasGridlines,
    },
    writes: {
      visibility: (sheet, value) => (sheet.visibility = value),
      showGridlines: (sheet, value) => (sheet.hasGridlines = value),
    },
    parts: {
      protection: (sheet) => sheet,
      freezePanes: (sheet) => sheet,
      tables: (sheet) => sheet,
      charts: (sheet) => sheet,
      pageLayout: (sheet) => sheet,
      horizontalPageBreaks: (sheet) => ({ sheet, along: "rows" }),
      verticalPageBreaks: (sheet) => ({ sheet, along: "columns" }),
      customProperties: (sheet) => sheet,
    },
    calls: {
      getRange: (sheet: SheetState, address?: string) =>
        address === undefined ? whole(sheet) : areaOn(sheet, address),
      getUsedRangeOrNullObject: (sheet: SheetState, valuesOnly = false) => usedArea(whole(sheet), valuesOnly),
      activate: (sheet: SheetState) => {
        if (sheet.visibility !== "Visible") throw new Refusal("InvalidOperation", "a hidden sheet cannot be shown");
        book.selection = { sheet, areas: ["A1"] };
      },
      delete: (sheet: SheetState) => {
        refuseLocked(book);
        if (sheet.visibility === "VeryHidden")
          throw new Refusal("InvalidOperation", "a very hidden sheet cannot be deleted");
        book.sheets = book.sheets.filter((other) => other !== sheet);
        if (!book.sheets.some(({ visibility }) => visibility === "Visible"))
          throw new Refusal("InvalidOperation", "the last sheet");
        sheet.isDeleted = true;
        for (const name of book.names) if (name.formula.startsWith(`=${quotedAlways(sheet)}`)) name.formula = "=#REF!";
      },
    },
  },
  WorksheetProtection: { reads: { protected: ({ isProtected }) => isProtected } },
  WorksheetCustomPropertyCollection: {
    calls: {
      add: ({ marks }: SheetState, key: string, value: string) => (marks.set(key, value), { value }),
      getItemOrNullObject: ({ marks }: SheetState, key: string) => (marks.has(key) ? { value: marks.get(key) } : null),
    },
  },
  WorksheetCustomProperty: { reads: { value: ({ value }) => value } },
  WorksheetFreezePanes: {
    calls: {
      freezeAt: (sheet, range) => (sheet.frozen = range),
      freezeRows: (sheet, count) => (sheet.frozen = `1:${count}`),
      freezeColumns: (sheet, count) => (sheet.frozen = addressIn({ ...whole(sheet), columns: count })),
      getLocationOrNullObject: (sheet) => (sheet.frozen === null ? null : areaOn(sheet, sheet.frozen)),
    },
  },
});

const quotedAlways = ({ name }: SheetState): string => `'${name.replaceAll("'", "''")}'!`;

const sheetOf = (book: BookState, key: string): SheetState | null =>
  book.sheets.find(({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase()) ?? null;
