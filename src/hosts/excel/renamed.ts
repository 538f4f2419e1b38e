import { freeNames } from "../../sheets/freeName";
import type { Sheet, Workbook } from "../../sheets/workbook";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { Stock } from "./stock";
import { valueAt } from "../../reference/itemAt";

/** The same workbook under names that are free beside what stands there already, in its formulas, too. */
export function renamed(workbook: Workbook, stock: Pick<Stock, "sheets" | "names">): Workbook {
  const sheets = freeNames(
    workbook.sheets.map(({ name }) => name),
    stock.sheets,
  );
  const tables = workbook.sheets.flatMap((sheet) => sheet.tables ?? []);
  const cells = [...workbook.names, ...tables].map(({ name }) => name);
  const names = freeNames(cells, stock.names, "_");
  const rename = (formula: string): string => renamedIn(formula, sheets, names);
  return {
    ...workbook,
    names: workbook.names.map(({ name, sheet, at }) => ({
      name: valueAt(names, name),
      sheet: valueAt(sheets, sheet),
      at,
    })),
    sheets: workbook.sheets.map((sheet): Sheet => ({
      ...sheet,
      name: valueAt(sheets, sheet.name),
      cells: sheet.cells.map((cell) => ("formula" in cell ? { ...cell, formula: rename(cell.formula) } : cell)),
      ...(sheet.tables === undefined
        ? {}
        : { tables: sheet.tables.map((table) => ({ ...table, name: valueAt(names, table.name) })) }),
    })),
  };
}

/** A text, a sheet before its exclamation mark, or a word that is no function. */
const PARTS = /"(?:[^"]|"")*"|'((?:[^']|'')+)'!|([A-Za-z_][\w.]*)!|([A-Za-z_\\][\w.\\]*)(?![\w.]*[!(])/g;

/** What a name of a cell does not follow: a word after it is the rest of a number or of an address. */
const BEFORE_NO_NAME = /[\w.$!]/;

function renamedIn(formula: string, sheets: ReadonlyMap<string, string>, names: ReadonlyMap<string, string>): string {
  const mayBeName = (at: number): boolean => !BEFORE_NO_NAME.test(formula.charAt(at - 1));
  return formula.replace(
    PARTS,
    (all, inQuotes: string | undefined, plain: string | undefined, word: string | undefined, at: number) => {
      const sheet = plain ?? inQuotes?.replaceAll("''", "'");
      const newSheet = sheet === undefined ? undefined : sheets.get(sheet);
      if (newSheet !== undefined) return sheetPrefix(newSheet);
      return (word === undefined || !mayBeName(at) ? undefined : names.get(word)) ?? all;
    },
  );
}
