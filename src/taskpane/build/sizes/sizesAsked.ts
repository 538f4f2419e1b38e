import { chosenFormula } from "../../../share/chosenSystem";
import { type OurCall, type Piece, formulaTree } from "../../../share/formula/tree";
import { cellAddress } from "../../../sheets/address";
import {
  ASKED,
  FASTEST_ROW,
  KEEP_ROW,
  LISTS_COLUMNS,
  LISTS_FIRST,
  LISTS_LAST,
  MARGIN_ROW,
  PIPES_ANSWER,
  PIPES_TITLE,
  TOGETHER_ANSWER,
  WATCHED,
  WATCHED_FIRST,
  WATCHED_LAST,
} from "../../../sheets/book/sizes/sizesLayout";
import { ENTERED } from "../../../sheets/book/layout";
import type { CellBlock } from "../../../hosts/host";
import type { Calculated } from "../../../sheets/calculated";
import type { SheetCell } from "../../../sheets/workbook";
import { readRange, type RangeRef } from "../../../sheets/rangeRef";
import type { Cell, Matrix } from "../../functions/callFunction";
import { cellsOfBook } from "../../functions/cellsOfBook";
import { OLD_NUMBERS } from "../../hostUse/words";
import { cell } from "../asRead";

/** What the sheet Sizes asks: the arguments of SIZES, and what else its answer goes with. */
export interface SizesAsked {
  readonly sheet: string;
  readonly args: readonly Matrix[];
  readonly usual: boolean; // no set is typed, so the usual ones are searched for
  readonly runs: RangeRef; // where the runs table stands
  readonly watched: readonly string[]; // what the search rests on, row by row
}

/** Texts by which it is known that nobody has moved rows or columns of the sheet. */
const LANDMARKS: Readonly<Record<string, string>> = {
  [`A${ASKED}`]: "What is asked",
  [`A${PIPES_TITLE}`]: "Which pipe to buy",
  [`${WATCHED.now}${PIPES_ANSWER.header}`]: "As it is",
  [`A${TOGETHER_ANSWER.header - 2}`]: "Which machines can run together",
};

/** The cells of those texts, on the sheet of what is to be written. */
export const landmarks = (blocks: readonly CellBlock[]): CellBlock[] =>
  blocks.slice(0, 1).flatMap(({ sheet }) => Object.keys(LANDMARKS).map((at) => cell(sheet, at)));

/** Reads the sheet Sizes of a book; where it cannot, a sentence says why. */
export function sizesAsked(book: Calculated): SizesAsked | { readonly why: string } {
  if (book.settings?.includes("calculates when asked")) return { why: OLD_NUMBERS };
  const sheet = book.workbook.sheets.find(({ key }) => key === "sizes");
  if (sheet === undefined) return { why: "There is no sheet Sizes in this workbook: add it above first." };
  const { name } = sheet;
  const value = (at: string): Cell => {
    const found = book.shown.get(name)?.get(at)?.value ?? null;
    return typeof found === "object" ? (found?.error ?? null) : found;
  };
  const moved = { why: `Rows or columns of the sheet ${name} were moved, so what it asks cannot be found: undo that, or add the sheet anew.` }; // prettier-ignore
  if (Object.entries(LANDMARKS).some(([at, words]) => value(at) !== words)) return moved;
  // the call of TOGETHER says where ducts, fan, density and units stand, however their sheets are called by now
  const live = sheet.cells.find(({ at }) => at === `A${TOGETHER_ANSWER.header}`);
  if (live === undefined || !("formula" in live)) return moved;
  const { formula, isCalibrated } = chosenFormula(book, name, live.formula);
  if (isCalibrated)
    return { why: `The sheets show the system as calibrated, and sizes are searched for the ducts as typed: choose "${ENTERED}" on the sheet Flow first. In a cell SIZES takes CALIBRATEDRUNS.` }; // prettier-ignore
  const call = together(formulaTree(formula));
  if (call === undefined) return moved;
  const references = call.args.map((pieces) =>
    pieces
      .map((piece) => ("value" in piece ? piece.value : ""))
      .join("")
      .trim(),
  );
  const [runs, curve, , density, units] = references.map((reference) => cellsOfBook(book, reference));
  const place = readRange(references[0] ?? "", name);
  if (runs == null || curve == null || density == null || units == null || place === null) return moved;
  const list = (...letters: string[]): Matrix =>
    Array.from({ length: LISTS_LAST - LISTS_FIRST + 1 }, (_, index) =>
      letters.map((letter) => value(`${letter}${LISTS_FIRST + index}`)),
    );
  const { open, searched, stock, price } = LISTS_COLUMNS;
  const other = notAsAsked(list(open), list(searched), sheet.cells);
  if (other !== null)
    return { why: `${other} of the sheet ${name} is not what is asked: "Searched for" is filled by formulas. Undo what was typed, pasted or moved there, or copy a cell of that column from above or below into it. Sets of gates are typed under "Open together".` }; // prettier-ignore
  const sets = list(searched).filter(([set]) => set !== null && set !== "");
  return {
    sheet: name,
    args: [
      runs,
      curve,
      sets.length > 0 ? sets : [[null]], // then it takes what is usual
      list(stock, price),
      [[value(`B${MARGIN_ROW}`)]],
      [[value(`B${KEEP_ROW}`)]],
      density,
      units,
      [[value(`B${FASTEST_ROW}`)]],
    ],
    usual: sets.length === 0,
    runs: place,
    watched: Array.from({ length: WATCHED_LAST - WATCHED_FIRST + 1 }, (_, index) =>
      String(value(cellAddress(WATCHED_COLUMN, WATCHED_FIRST + index)) ?? ""),
    ),
  };
}

/** The first cell of "Searched for" over whose formula something was typed, or that has another set than is typed beside it. */
function notAsAsked(open: Matrix, searched: Matrix, cells: readonly SheetCell[]): string | null {
  const said = (of: Matrix, index: number): string => String(of[index]![0] ?? "").toUpperCase(); // TRUE is one of those
  const isAnyTyped = open.some(([set]) => set !== null);
  const computed = new Set(cells.flatMap((cell) => ("formula" in cell ? [cell.at] : [])));
  const at = (index: number): string => `${LISTS_COLUMNS.searched}${LISTS_FIRST + index}`;
  const wrong = open.findIndex(
    (_, index) => !computed.has(at(index)) || (isAnyTyped && said(open, index) !== said(searched, index)),
  );
  return wrong < 0 ? null : at(wrong);
}

const WATCHED_COLUMN = WATCHED.now.charCodeAt(0) - 64;

const together = (pieces: readonly Piece[]): OurCall | undefined =>
  pieces.find((piece): piece is OurCall => piece.type === "our call" && (piece as OurCall).name === "TOGETHER");
