import { onAnySheet } from "../formula/ranges";
import { formulaTree, isNothing, type OurCall, type Piece, UnreadableFormula } from "../formula/tree";
import { type RangeRef, rangeText, readRange } from "../../sheets/rangeRef";
import type { ShownReader } from "./shownReader";
import { NotPlain, perCell, shapeOf } from "./perCell";
import { translators as ourTranslators } from "./translators";
import type { Argument, CallContext, ShownValue, Translation, Translator } from "./translation";
import { columnsOf, isOneCell, rowsOf } from "../../sheets/rectangle";
import { itemAt } from "../../reference/itemAt";

/** What a formula becomes. */
export type FormulaTranslation =
  | { readonly kind: "native" } // it calls nothing of ours: it stays as it is
  | { readonly kind: "cells"; readonly formulas: readonly (readonly string[])[]; readonly functions: readonly string[] }
  | { readonly kind: "fixed"; readonly function: string; readonly why: string }
  | { readonly kind: "unreadable"; readonly why: string };

export interface FormulaContext extends CallContext {
  readonly shown: ShownReader; // what the book's cells show now
  readonly translators?: ReadonlyMap<string, Translator>; // ours and others; ours alone when left out
}

/** A spreadsheet program refuses longer formulas. */
const LONGEST_FORMULA = 8192;

/** One of the calls in a formula stays as a value, so the whole formula does. */
class StaysFixed extends Error {
  constructor(
    readonly calls: string,
    readonly why: string,
  ) {
    super(why);
    this.name = "StaysFixed";
  }
}

/**
 * A formula (with its "=") without any call of ours, calls inside calls first. Where its answer fills several cells, there is
 * one formula for each of them; a call with such an answer inside a larger formula goes to the workings.
 */
export function translateFormula(formula: string, context: FormulaContext): FormulaTranslation {
  const used = new Set<string>();
  try {
    const pieces = formulaTree(formula).slice(1);
    const answer = translatePieces(pieces, context, used);
    if (used.size === 0) return { kind: "native" };
    const formulas = answer.map((row) => row.map((code) => `=${code}`));
    const tooLong = formulas.some((row) => row.some((code) => code.length > LONGEST_FORMULA));
    if (tooLong)
      return { kind: "fixed", function: itemAt([...used], 0), why: "as a plain formula it is too long for a cell" };
    return { kind: "cells", formulas, functions: [...used] };
  } catch (error) {
    if (error instanceof StaysFixed) return { kind: "fixed", function: error.calls, why: error.why };
    if (error instanceof NotPlain) return { kind: "fixed", function: [...used][0] ?? "", why: error.message };
    if (error instanceof UnreadableFormula) return { kind: "unreadable", why: error.message };
    throw error;
  }
}

function translatePieces(
  pieces: readonly Piece[],
  context: FormulaContext,
  used: Set<string>,
): readonly (readonly string[])[] {
  const solid = pieces.filter((piece) => piece.type !== "whitespace");
  const [only] = solid;
  if (solid.length === 1 && only!.type === "our call") return translateCall(only as OurCall, context, used);
  const text = plainText(pieces, context, used);
  if (used.size === 0) return [[text]];
  const shape = shapeOf(text, context.sheet);
  if (shape.rows === 1 && shape.columns === 1) return [[text]];
  return Array.from({ length: shape.rows }, (_, row) =>
    Array.from({ length: shape.columns }, (__, column) => perCell(text, context.sheet, row, column)),
  );
}

/** Pieces as text: each call of ours is its expression, or a range of the workings that holds its answer. */
function plainText(pieces: readonly Piece[], context: FormulaContext, used: Set<string>): string {
  return pieces
    .map((piece, at) => {
      if (piece.type === "our call") return callText(piece as OurCall, context, used);
      const token = piece as Exclude<Piece, OurCall>;
      const next = pieces[at + 1];
      const last = pieces[at - 1];
      if (token.type === "range" && isHash(next)) return spillText(token.value, context);
      if (isHash(token) && last?.type === "range") return "";
      return token.value;
    })
    .join("");
}

const isHash = (piece: Piece | undefined): boolean =>
  piece !== undefined && piece.type === "operator" && "value" in piece && piece.value === "#";

/** What B5# covers now, since no formula spills in a copy. */
function spillText(address: string, { sheet, shown }: FormulaContext): string {
  const range = readRange(address, sheet);
  const extent = range === null ? null : shown.extent(range);
  if (range === null || extent === null) return `${address}#`;
  const { top, left } = range;
  const all = { ...range, bottom: top + extent.rows - 1, right: left + extent.columns - 1 };
  return rangeText(all);
}

function callText(call: OurCall, context: FormulaContext, used: Set<string>): string {
  const cells = translateCall(call, context, used);
  if (cells.length === 1 && itemAt(cells, 0).length === 1) return `(${itemAt(itemAt(cells, 0), 0)})`;
  return rangeText(placed(cells, context));
}

const placed = (cells: readonly (readonly string[])[], { sheet, workings }: CallContext): RangeRef =>
  workings.place(cells.length, itemAt(cells, 0).length, () =>
    cells.map((row) => row.map((code) => onAnySheet(code, sheet))),
  );

function translateCall(call: OurCall, context: FormulaContext, used: Set<string>): readonly (readonly string[])[] {
  used.add(call.name);
  const translator = (context.translators ?? ourTranslators).get(call.name);
  if (translator === undefined) throw new StaysFixed(call.name, "there is no function of this name");
  const args = call.args.map((pieces) => (isNothing(pieces) ? null : argumentOf(call.name, pieces, context, used)));
  const translation: Translation = translator(args, context);
  if (translation.kind === "fixed") throw new StaysFixed(call.name, translation.why);
  return translation.formulas;
}

function argumentOf(name: string, pieces: readonly Piece[], context: FormulaContext, used: Set<string>): Argument {
  const inside = new Set<string>(); // a range without a call of ours in it is taken as it stands
  const cells = translatePieces(pieces, context, inside);
  inside.forEach((one) => used.add(one));
  if (cells.length > 1 || itemAt(cells, 0).length > 1)
    return rangeArgument(placed(cells, context), context, "computed");
  const text = itemAt(itemAt(cells, 0), 0).trim();
  const range = readRange(text, context.sheet) ?? context.shown.named(text);
  if (range !== null) {
    if (!isOneCell(range)) context.takesRange?.(range);
    return { ...rangeArgument(range, context, "shown"), text };
  }
  const literal = literalOf(text);
  if (literal !== null) return { text, value: [[literal.value]] };
  const shape = shapeOf(text, context.sheet);
  if (shape.rows === 1 && shape.columns === 1) return { text, value: [[null]], computed: true };
  if (/[A-Z]:\$?[A-Z]/.test(text)) throw new StaysFixed(name, "it takes whole columns");
  const each = Array.from({ length: shape.rows }, (_, row) =>
    Array.from({ length: shape.columns }, (__, column) => perCell(text, context.sheet, row, column)),
  );
  return rangeArgument(placed(each, context), context, "computed");
}

function rangeArgument(range: RangeRef, { shown }: FormulaContext, state: "shown" | "computed"): Argument {
  const value = Array.from({ length: rowsOf(range) }, (_, row) =>
    Array.from({ length: columnsOf(range) }, (__, column) =>
      shown.value(range.sheet, range.top + row, range.left + column),
    ),
  );
  const text = rangeText(range);
  const blankBelow = (column: number): number => shown.blankBelow(range.sheet, range.bottom, column);
  return state === "computed" ? { text, range, value, computed: true } : { text, range, value, blankBelow };
}

/** The value of a text that is a literal. */
function literalOf(text: string): { readonly value: ShownValue } | null {
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return { value: Number(text) };
  if (/^"(?:[^"]|"")*"$/.test(text)) return { value: text.slice(1, -1).replaceAll('""', '"') };
  return null;
}
