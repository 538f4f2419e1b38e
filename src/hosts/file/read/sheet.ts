import type { ShownCell } from "../../../sheets/calculated";
import type { Sheet, SheetCell, SheetTable, TallRow } from "../../../sheets/workbook";
import { FileRefusal, TOO_LARGE } from "../fileRefusal";
import { placeOf } from "../../../sheets/address";
import { readRectangle, rectangleText } from "../../../sheets/rectangle";
import { charactersOf, linesOf, USUAL_WIDTH } from "../sizes";
import { fromFileText } from "../xlsxText";
import { cellReader, type Count } from "./cells";
import { chartsOf } from "./charts";
import { notesOf, withNotes } from "./notes";
import { checkRelations, type Package } from "./package";
import { printOf } from "./print";
import { flagsOf, hintsOf, listsOf, oldMarksOf, type TextsIn } from "./rules";
import type { Styles } from "./styles";
import { child, childrenOf, down, isOn, numberOf, type XmlNode } from "./xml";

/** What a sheet's own part says, before the sheets that it refers to are known. */
export interface ReadSheet {
  readonly name: string;
  readonly shown: ReadonlyMap<string, ShownCell>;
  readonly sheet: (textsIn: TextsIn, printed: ReadonlyMap<string, string>) => Sheet;
}

const LAST_COLUMN = 16384;
const MOST_WIDTHS = 10 * LAST_COLUMN; // said in one sheet; programs say each column's once
const MOST_ALIKE = 200; // one width for more columns than this is said of the empty rest of a sheet

export function readSheet(
  file: Package,
  part: string,
  name: string,
  texts: readonly string[],
  styles: Styles,
  count: Count,
): ReadSheet {
  const reader = cellReader(texts, styles, count);
  const tallRows: TallRow[] = [];
  const root = file.xml(part, {
    c: reader.take,
    row: (row) => tallRows.push(...tallRow(row)),
  });
  const { cells, shown } = reader.done();
  const referring = [...root.children, ...childrenOf(child(root, "tableParts"), "tablePart")];
  checkRelations(
    referring.filter(({ name: element }) => ["drawing", "legacyDrawing", "tablePart"].includes(element)),
    file.relations(part),
  );
  const all = withNotes(cells, notesOf(file, part));
  const hints = hintsOf(root, count);
  const oldMarks = oldMarksOf(root, count);
  const charts = chartsOf(file, part, name);
  const tables = tablesOf(file, part);
  return {
    name,
    shown,
    sheet: (textsIn, printed) => {
      const print = printOf(root, printed);
      return {
        name,
        columns: widths(root, lastColumn(all)),
        tallRows,
        frozen: frozenOf(root),
        ...(hasGridlines(root) ? {} : { gridlines: false as const }),
        cells: all,
        lists: listsOf(root, name, textsIn, count),
        flags: flagsOf(root, styles, count),
        ...(hints.length === 0 ? {} : { hints }),
        ...(oldMarks.length === 0 ? {} : { oldMarks }),
        ...(charts.length === 0 ? {} : { charts }),
        ...(tables.length === 0 ? {} : { tables }),
        ...(print === undefined ? {} : { print }),
      };
    },
  };
}

/** A row that somebody made higher than a line. */
function tallRow({ attributes }: XmlNode): TallRow[] {
  const [row, height] = [numberOf(attributes.r), numberOf(attributes.ht)];
  if (row === undefined || height === undefined || !isOn(attributes.customHeight)) return [];
  const lines = linesOf(height);
  return lines > 1 ? [{ row, lines }] : [];
}

const lastColumn = (cells: readonly SheetCell[]): number =>
  cells.reduce((last, { at }) => Math.max(last, placeOf(at).column), 0);

function widths(root: XmlNode, used: number): number[] {
  const columns: number[] = [];
  let said = 0;
  for (const { attributes } of childrenOf(child(root, "cols"), "col")) {
    const [from, to, width] = ["min", "max", "width"].map((key) => numberOf(attributes[key]));
    if (from === undefined || to === undefined || width === undefined || from < 1) continue;
    const last = Math.min(to, to - from > MOST_ALIKE ? used : LAST_COLUMN);
    said += Math.max(0, last - from);
    if (said > MOST_WIDTHS) throw new FileRefusal(TOO_LARGE);
    for (let column = from; column <= last; column++) columns[column - 1] = charactersOf(width);
  }
  const { defaultColWidth } = child(root, "sheetFormatPr")?.attributes ?? {};
  const others = numberOf(defaultColWidth); // programs leave out the columns that have it
  const usual = others === undefined ? USUAL_WIDTH : charactersOf(others);
  return Array.from(columns, (width: number | undefined) => width ?? usual);
}

function frozenOf(root: XmlNode): Sheet["frozen"] {
  const { state, xSplit, ySplit } = down(root, "sheetViews", "sheetView", "pane")?.attributes ?? {};
  const isFrozen = state === "frozen" || state === "frozenSplit";
  return isFrozen ? { rows: numberOf(ySplit) ?? 0, columns: numberOf(xSplit) ?? 0 } : { rows: 0, columns: 0 };
}

const hasGridlines = (root: XmlNode): boolean => {
  const { showGridLines } = down(root, "sheetViews", "sheetView")?.attributes ?? {};
  return showGridLines === undefined || isOn(showGridLines);
};

const tablesOf = (file: Package, part: string): SheetTable[] =>
  file.relations(part).flatMap((relation) => {
    const node = relation.kind === "table" ? file.xml(relation.part) : undefined;
    const { displayName, name, ref } = node?.attributes ?? {};
    const range = readRectangle(ref ?? "");
    const word = displayName ?? name;
    return range === null || word === undefined ? [] : [{ name: fromFileText(word), range: rectangleText(range) }];
  });
