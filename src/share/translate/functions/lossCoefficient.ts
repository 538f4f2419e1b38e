import { type FittingItem, parseFittingList } from "../../../core/fittings/fittingList";
import { plain } from "../../../core/naming/findNamed";
import { takes } from "../../../functions/losses/losscoefficient";
import { unitOf } from "../../../reference/quantities";
import type { LossFamily } from "../../../reference/schema";
import { quotedText } from "../../references";
import { type BuildCall, scalar } from "../answer";
import type { Element, Reader } from "../element";
import { entryK } from "../expressions/entryK";
import { familyK } from "../expressions/familyK";
import { isBlankOrZero, NO_ANSWER, num, plainName } from "../expressions/text";
import { unlessRefused } from "../tableBlocks/offeredEntries";
import { listK } from "./listK";

type Call = Pick<BuildCall, "system" | "context">;

/** A number beside the fitting's name, as it stands. */
const beside: Reader = (element) => ({ value: element?.text ?? "", checks: [] });

/**
 * K of a fitting. A name alone is looked up in the list of entries. Beside a shape or an angle the formula holds the printed
 * points of the fitting that is named now; under another name it gives #N/A unless shape and angle are blank.
 */
export const lossCoefficientOf = scalar(
  takes,
  (_, call) => {
    const { fitting } = call.elements;
    const [shape, angle] = [call.elements.shape, call.elements.angle].map((element) =>
      isLeftOut(element) ? null : element,
    ) as [Element | null, Element | null];
    const alone = aloneK(fitting, call);
    if (fitting === null || (shape === null && angle === null)) return { value: alone };
    const item = itemNow(fitting, call);
    const bare = [shape, angle].flatMap((element) => (element === null ? [] : [isBlankOrZero(element.text)]));
    const unlessBeside = `IF(AND(${bare.join(",")}),${alone},${NO_ANSWER})`;
    if (item?.family == null) return { value: unlessBeside };
    const one = besideK(item, item.family, shape, angle, call);
    const value = item.count === 1 ? one : `${num(item.count)}*${one}`;
    if (fitting.literal !== undefined) return { value };
    return {
      value: `IF(${plainName(fitting.text)}=${quotedText(plain(nameNow(fitting) ?? ""))},${value},${unlessBeside})`,
    };
  },
  { shape: beside, angle: beside },
);

/** K of a fitting with nothing beside it: one that is a single name now is looked up, a list or a bare K is read. */
function aloneK(fitting: Element | null, call: Call): string {
  const item = fitting === null || fitting.literal !== undefined ? null : itemNow(fitting, call);
  if (fitting === null || item?.family == null || item.count !== 1) return listK(fitting, null, call);
  return entryK(fitting.text, "fittings", call.system, call.context.tables).value;
}

const isLeftOut = (element: Element | null): boolean =>
  element === null || element.literal === 0 || element.literal === "";

function nameNow({ literal, shown }: Element): string | null {
  const text = literal ?? shown;
  return typeof text === "string" ? text : null;
}

/** The fitting that is named now, if it is one. */
function itemNow(element: Element, { system }: Call): FittingItem | null {
  const text = nameNow(element);
  if (text === null) return null;
  const items = unlessRefused(() => parseFittingList("fitting", text, unitOf("diameter", system).factor, "any"));
  return items.length === 1 ? items[0]! : null;
}

/** K with shape and angle from their cells; a blank one takes the number in the fitting's text, else the usual one. */
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
  const x = short(axisValue(shape, own.shape, family.shape));
  return familyK(family, x, short(axisValue(angle, own.angle, family.angle)), system, context.tables);
}

/**
 * The number on an axis: the cell's, else the one in the fitting's text, else the usual one. A number in the cell is wrong
 * beside one in the text, or where the fitting has no such axis, which counts as 0.
 */
function axisValue(
  element: Element | null,
  own: number | null,
  axis: { readonly usual: number | null } | null,
): string {
  const usual = own ?? axis?.usual ?? null;
  const otherwise = axis === null ? "0" : usual === null ? NO_ANSWER : num(usual);
  if (element === null) return otherwise;
  const taken = own !== null || axis === null;
  if (typeof element.literal === "number") return taken ? NO_ANSWER : element.text;
  return `IF(${isBlankOrZero(element.text)},${otherwise},${taken ? NO_ANSWER : element.text})`;
}
