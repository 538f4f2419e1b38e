import { type FittingItem, parseFittingList } from "../../../core/fittings/fittingList";
import { plain } from "../../../core/naming/findNamed";
import { takes } from "../../../functions/losses/losscoefficient";
import { unitOf } from "../../../reference/quantities";
import type { LossFamily } from "../../../reference/schema";
import { DEGREES, SHARP } from "../../../reference/zeroWords";
import { quotedText } from "../../references";
import { type BuildCall, scalar } from "../arrayRule";
import type { Element } from "../element";
import { entryK } from "../expressions/entryK";
import { familyK } from "../expressions/familyK";
import { both, isBlankOrZero, isOneOf, NO_ANSWER, num, plainName } from "../expressions/text";
import { unlessRefused } from "../tableBlocks/offeredEntries";
import { listK } from "./listK";

type Call = Pick<BuildCall, "system" | "context">;

/**
 * K of a fitting. A name alone is looked up in the list of entries. Beside a shape or an angle the formula holds the printed
 * points of the fitting that is named now, and reads a list or a number; under another name it gives #N/A.
 */
export const lossCoefficientOf = scalar(takes, (_, call) => {
  const { fitting, shape, angle } = call.elements;
  if (fitting === null) return NO_ANSWER;
  if (shape === null && angle === null) return aloneK(fitting, call);
  const blank = both([shape, angle].flatMap((element) => (element === null ? [] : [isNothing(element)])));
  const unlessBeside = (k: string): string => `IF(${blank},${k},${NO_ANSWER})`;
  const item = itemNow(fitting, call);
  const single = item === null ? null : itemBeside(item, shape, angle, call);
  const one = single ?? unlessBeside(listK(fitting, null, call));
  if (fitting.literal !== undefined) return one;
  const other = `IF(${isListOrNumber(fitting.text)},${unlessBeside(listK(fitting, null, call))},${NO_ANSWER})`;
  if (item === null) return other;
  return `IF(${plainName(fitting.text)}=${quotedText(plain(nameNow(fitting) ?? ""))},${one},${other})`;
});

/** What has no shape and no angle of its own that a blank beside it could mean. */
const isListOrNumber = (cell: string): string =>
  `IF(ISNUMBER(${cell}),TRUE,IFERROR(FIND(";",TRIM(${cell}))<LEN(TRIM(${cell})),FALSE))`;

/** K of a single fitting with the numbers beside it; null for a bare K, which has none. */
function itemBeside(item: FittingItem, shape: Element | null, angle: Element | null, call: Call): string | null {
  if (item.family === null) return null;
  const one = besideK(item, item.family, shape, angle, call);
  return item.count === 1 ? one : `${num(item.count)}*${one}`;
}

/** K of a fitting with nothing beside it: one that is a single name now is looked up, a list or a bare K is read. */
function aloneK(fitting: Element, call: Call): string {
  const item = fitting.literal !== undefined ? null : itemNow(fitting, call);
  if (item?.family == null || item.count !== 1) return listK(fitting, null, call);
  return entryK(fitting.text, "fittings", call.system, call.context.tables).value;
}

/** Whether what stands beside the fitting is blank or 0. */
function isNothing({ text, literal }: Element): string {
  if (literal === undefined) return isBlankOrZero(text);
  return literal === 0 || literal === "" ? "TRUE" : "FALSE";
}

function nameNow({ literal, shown }: Element): string | null {
  const text = literal ?? shown;
  return typeof text === "string" ? text : null;
}

/** The fitting that is named now, if it is one. */
function itemNow(element: Element, { system }: Call): FittingItem | null {
  const text = nameNow(element);
  if (text === null) return null;
  const items = unlessRefused(() => [...parseFittingList("fitting", text, unitOf("diameter", system).factor, "any")]);
  return items.length === 1 ? items[0]! : null;
}

/** K with shape and angle from their cells; one that is left out takes the number in the fitting's text, else the usual one. */
function besideK(
  item: FittingItem,
  family: LossFamily,
  shape: Element | null,
  angle: Element | null,
  call: Call,
): string {
  const { system, context } = call;
  const factor = family.shape?.quantity === "diameter" ? unitOf("diameter", system).factor : 1;
  const own = { shape: item.shape === null ? null : item.shape / factor, angle: item.angle };
  const short = (text: string): string => (text.length > 24 ? context.workings.cell(text, context.sheet) : text);
  const x = short(axisValue(shape, own.shape, family.shape, SHARP));
  return familyK(family, x, short(axisValue(angle, own.angle, family.angle, DEGREES)), system, context.tables);
}

/**
 * The number on an axis: the cell's, else the one in the fitting's text, else the usual one. A number in the cell is wrong
 * beside one in the text, or where the fitting has no such axis, which counts as 0; a blank or a 0 is wrong where it has one.
 */
function axisValue(
  element: Element | null,
  own: number | null,
  axis: { readonly usual: number | null } | null,
  words: readonly string[],
): string {
  const usual = own ?? axis?.usual ?? null;
  const otherwise = axis === null ? "0" : usual === null ? NO_ANSWER : num(usual);
  if (element === null) return otherwise;
  const { text, literal } = element;
  const blank = isNothing(element);
  if (own !== null || axis === null) return `IF(${blank},${otherwise},${NO_ANSWER})`;
  if (typeof literal === "number") return literal === 0 ? NO_ANSWER : text;
  const word =
    typeof literal === "string" ? String(words.includes(plain(literal))).toUpperCase() : isOneOf(text, words);
  return `IF(ISNUMBER(${text}),IF(${text}=0,${NO_ANSWER},${text}),IF(${word},0,${NO_ANSWER}))`;
}
