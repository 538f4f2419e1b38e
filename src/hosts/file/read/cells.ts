import type { ShownError, Extent, ShownCell } from "../../../sheets/calculated";
import type { CellValue, SheetCell } from "../../../sheets/workbook";
import { FileRefusal, TOO_LARGE } from "../fileRefusal";
import { cellAddress, type Place, readPlace } from "../../../sheets/address";
import { columnsOf, isOneCell, readRectangle, rowsOf } from "../../../sheets/rectangle";
import { fromStored } from "../storedFormula";
import { fromFileText } from "../xlsxText";
import { type SharedFormula, sharedFormula } from "./sharedFormula";
import { richText } from "./sharedStrings";
import { styleOf } from "./styleName";
import type { Styles } from "./styles";
import { child, isOn, numberOf, type XmlNode } from "./xml";

interface ReadCells {
  readonly cells: SheetCell[];
  readonly shown: Map<string, ShownCell>;
}

/** Reads the cells of one sheet as they come by. */
export interface CellReader {
  readonly take: (node: XmlNode, row: XmlNode) => void;
  readonly done: () => ReadCells;
}

const MOST_CELLS = 1e6; // of a workbook
const LONGEST_FORMULA = 65_536; // characters; Excel takes an eighth of that
const MOST_MOVED = 3e7; // characters of formulas that stand in one cell for many; a copy of the example has 4e6

const ERRORS = ["#VALUE!", "#N/A", "#NAME?", "#NUM!", "#DIV/0!", "#REF!", "#NULL!", "#SPILL!"] as const;

/** Counts what a whole workbook has, and refuses one with more than any budget. */
export interface Count {
  readonly cell: () => void;
  readonly moved: (characters: number) => void;
}

export function counter(): Count {
  let [cells, moved] = [0, 0];
  return {
    cell: () => {
      if (++cells > MOST_CELLS) throw new FileRefusal("This file has more than a million cells, so it is not opened.");
    },
    moved: (characters) => {
      if ((moved += characters) > MOST_MOVED) throw new FileRefusal(TOO_LARGE);
    },
  };
}

export function cellReader(texts: readonly string[], styles: Styles, count: Count): CellReader {
  const cells: SheetCell[] = [];
  const shown = new Map<string, ShownCell>();
  const shared = new Map<string, SharedFormula>();
  const filled = new Set<string>();
  const place = placeReader();

  const take = (node: XmlNode, row: XmlNode): void => {
    if (row.name !== "row") return;
    count.cell();
    const here = place(node, row);
    const at = cellAddress(here.column, here.row);
    const value = readValue(node, texts);
    const { look, format } = styles.ofCell(numberOf(node.attributes.s) ?? 0);
    const written = child(node, "f");
    const formula = written === undefined ? undefined : readFormula(written, at, shared, count);
    const fills = formula === undefined ? undefined : extentOf(written!, here);
    if (fills !== undefined) filledBy(here, fills, count).forEach((one) => filled.add(one));
    if (value !== null || fills !== undefined) shown.set(at, { value, ...(fills === undefined ? {} : { fills }) });
    const own = filled.has(at) && formula === undefined ? null : value; // what a formula fills is nobody's input
    const style = look === undefined ? {} : { style: styleOf(look, isError(own) ? null : own, formula !== undefined) };
    const dress = { at, ...style, ...(format === undefined ? {} : { format }) };
    if (formula !== undefined) cells.push({ ...dress, formula });
    else if (own === null) {
      if (Object.keys(dress).length > 1) cells.push({ ...dress, value: null });
    } else if (isError(own)) cells.push({ ...dress, formula: `=${own.error}` });
    else cells.push({ ...dress, value: own });
  };
  return { take, done: () => ({ cells, shown }) };
}

/** A cell says where it stands, or follows the one before it, as its row may follow the row before. */
function placeReader(): (node: XmlNode, row: XmlNode) => Place {
  let current: XmlNode | undefined;
  let [rowNumber, column] = [0, 0];
  return (node, row) => {
    if (row !== current) {
      rowNumber = numberOf(row.attributes.r) ?? rowNumber + 1;
      column = 0;
      current = row;
    }
    const here = readPlace(node.attributes.r ?? cellAddress(column + 1, rowNumber));
    if (here === null) throw new FileRefusal("This file has a cell that lies outside its sheet.");
    column = here.column;
    return here;
  };
}

const isError = (value: CellValue | ShownError): value is ShownError => typeof value === "object" && value !== null;

function readValue(node: XmlNode, texts: readonly string[]): CellValue | ShownError {
  const kind = node.attributes.t ?? "n";
  if (kind === "inlineStr") return richText(child(node, "is"));
  const written = child(node, "v");
  if (written === undefined) return null;
  if (kind === "str") return fromFileText(written.text);
  if (kind === "s") return textAt(texts, written.text);
  if (kind === "b") return isOn(written.text.trim());
  if (kind === "e") return { error: ERRORS.find((name) => name === written.text.trim()) ?? "#VALUE!" };
  if (kind === "d") return serialOf(written.text);
  return numberOf(written.text) ?? (written.text.trim() === "" ? null : written.text);
}

function textAt(texts: readonly string[], number: string): string {
  const text = texts[Number(number)];
  if (text === undefined) throw new FileRefusal("This file refers to a text that it does not have.");
  return text;
}

/** A date as days since the end of 1899, which is how sheets count them. */
function serialOf(date: string): CellValue {
  const time = Date.parse(date.includes("T") ? `${date.replace(/Z$/, "")}Z` : date);
  return Number.isNaN(time) ? date : time / 864e5 + 25569;
}

/** undefined where the element holds no formula of this cell's own, as in a table of what-ifs. */
function readFormula(node: XmlNode, at: string, shared: Map<string, SharedFormula>, count: Count): string | undefined {
  const { t: kind, si: number } = node.attributes;
  if (kind === "dataTable") return undefined;
  if (node.text.length > LONGEST_FORMULA) throw new FileRefusal("This file has a formula that is far too long.");
  const own = node.text.trim() === "" ? undefined : fromStored(fromFileText(node.text.trim()));
  if (kind !== "shared" || number === undefined) return own;
  if (own !== undefined) {
    shared.set(number, sharedFormula(own, at));
    return own;
  }
  const said = shared.get(number);
  if (said === undefined)
    throw new FileRefusal("This file has a formula that refers to another which it does not have.");
  count.moved(said.characters);
  return said.at(at);
}

function extentOf(node: XmlNode, here: Place): Extent | undefined {
  const filled = node.attributes.t === "array" ? readRectangle(node.attributes.ref ?? "") : null;
  if (filled === null || filled.top !== here.row || filled.left !== here.column) return undefined;
  return isOneCell(filled) ? undefined : { rows: rowsOf(filled), columns: columnsOf(filled) };
}

/** The cells beside its own that a formula fills; they count like any other. */
function filledBy({ row, column }: Place, { rows, columns }: Extent, count: Count): string[] {
  const places: string[] = [];
  for (let down = 0; down < rows; down++)
    for (let across = 0; across < columns; across++) {
      count.cell();
      if (down + across > 0) places.push(cellAddress(column + across, row + down));
    }
  return places;
}
