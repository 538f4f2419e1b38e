import { writeXlsx } from "hucre/xlsx";
import type { Calculated } from "../../sheets/calculated";
import { keyName } from "../../sheets/sheetKeys";
import type { CellName, Sheet } from "../../sheets/workbook";
import { rangeText } from "../../sheets/rangeRef";
import { readRectangle } from "../../sheets/rectangle";
import { requireFitsFile } from "./write/fitsFile";
import { finished } from "./write/finish";
import { listsSheet, writtenLists } from "./write/lists";
import { stepLinks } from "../../sheets/stepLinks";
import { USUAL_SIZE } from "../../sheets/styles";
import { FONT } from "./write/look";
import { printNames } from "./write/print";
import { fileSheet } from "./write/sheet";
import { toFileText } from "./xlsxText";

export interface WriteOptions {
  readonly title: string; // said in the file's properties and above every printed page
  /**
   * For plain formulas: whoever opens the file computes them all. They have no values in it, since LibreOffice keeps the numbers of a
   * file by a maker that it doesn't know, but not the texts; after a change it went on with old numbers behind a text. A file
   * without any it computes as a whole.
   */
  readonly recalculate?: boolean;
}

/** A name; one of whole columns or rows has no place in a description. */
function fileName({ name, sheet, at }: CellName) {
  const area = readRectangle(at);
  return area === null ? [] : [{ name, range: rangeText({ sheet, ...area }) }];
}

/** Which sheet of a budget it is; over many cells, so that the name outlives a deleted row. */
const keyNames = ({ key, name }: Sheet) =>
  key === undefined
    ? []
    : [{ name: keyName(key), range: rangeText({ sheet: name, top: 1, left: 1, bottom: 200, right: 26 }) }];

/**
 * A workbook as an .xlsx file. Formulas of ours stand in Excel's stored form with the values that they show, so that a
 * program without our functions shows the numbers. It names no author, no place and no time.
 */
export async function writeBook(book: Calculated, { title, recalculate = false }: WriteOptions): Promise<Uint8Array> {
  requireFitsFile(book);
  const { workbook, shown } = book;
  const lists = listsSheet(workbook);
  const sheets = workbook.sheets.map((sheet, place) =>
    fileSheet(sheet, shown, lists, { title, recalculate }, stepLinks(workbook, place)),
  );
  const bytes = await writeXlsx({
    sheets: [...sheets, ...writtenLists(lists)],
    properties: { title: toFileText(title) },
    namedRanges: [
      ...workbook.sheets.flatMap(printNames),
      ...workbook.names.flatMap(fileName),
      ...workbook.sheets.flatMap(keyNames),
    ],
    defaultFont: { name: FONT, size: USUAL_SIZE },
  });
  return finished(bytes, recalculate);
}
