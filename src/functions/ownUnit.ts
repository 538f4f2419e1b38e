import { DomainError } from "../core/errors";
import { type Quantity, type UnitSystem, unitOf } from "../reference/quantities";
import { factorOfTyped, isUnitOfAnother, plainUnit } from "../reference/typedUnit";
import type { Cell } from "./cells";

/** Headers that were found in order, with what was asked of them: the same few come with every table, and taking one apart takes long. */
const inOrder = new Set<string>();
const MOST_REMEMBERED = 500;

/**
 * Refuses a header that tells another unit than that in which its numbers are read, in brackets or not, alone or among words: `Diameter (mm)` or
 * `Diameter (inside, mm)` in a call whose units are IP, which they are where nobody said "SI", or one of another quantity: `Leak (cfm)`. What is
 * no unit says nothing, nor does one behind a number: `Suction (at 3 m)`.
 *
 * @throws DomainError that names the unit, and the other units where they would do
 */
export function requireOwnUnit(argument: string, header: Cell, quantity: Quantity | null, system: UnitSystem): void {
  if (typeof header !== "string" || quantity === null) return;
  const asked = `${system} ${quantity} ${header}`;
  if (inOrder.has(asked)) return;
  const { label, factor } = unitOf(quantity, system);
  const told = header.split(/[()[\]]/).flatMap((text) =>
    unitsAmong(text, (unit) => {
      const own = factorOfTyped(unit, quantity, label);
      return own === undefined && (UNREAD.test(unit) || isUnitOfAnother(unit, quantity)) ? null : own;
    }),
  );
  const others = told.filter((one) => one !== factor);
  if (others.length === 0) {
    if (inOrder.size === MOST_REMEMBERED) inOrder.clear();
    inOrder.add(asked);
    return;
  }
  const other = system === "IP" ? "SI" : "IP";
  const wayOut = others.includes(unitOf(quantity, other).factor) ? `, unless its units are "${other}"` : "";
  throw new DomainError(`a header of ${argument}`, header, `with (${label}) or no unit in this call${wayOut}`);
}

const MOST_WORDS = 5; // inches of water gauge, cubic feet per minute

type Factor = number | null; // null of a unit in which no such number is read

/** What the units among the words of a text are worth, the longest first. */
function unitsAmong(text: string, factorOf: (unit: string) => Factor | undefined): Factor[] {
  const words = text.split(/[\s,;:]+/);
  const found: Factor[] = [];
  for (let at = 0; at < words.length; at++) {
    if (at > 0 && /\d$/.test(words[at - 1]!)) continue;
    for (let end = at + MOST_WORDS; end > at; end--) {
      const unit = inShort(words.slice(at, end).join(""));
      const factor = factorOf(unit);
      if (factor === undefined || (unit === "in" && words.length > 1 && !(factor && end >= words.length))) continue; // in the wall
      found.push(factor);
      at = end - 1;
    }
  }
  return found;
}

/** Units that people write out, as they are written in short. */
const IN_SHORT: readonly (readonly [RegExp, string])[] = [
  [/\^/g, ""],
  [/^yards?$/, "yd"],
  [/millimet(er|re)s?/, "mm"],
  [/centimet(er|re)s?/, "cm"],
  [/^(zoll|[”″]|'')$/, "in"],
  [/^(inaq|iwg)$/, "inwg"],
  [/^sq(uare)?(in|mm)(ch(es)?)?$/, "$22"], // in2, mm2
  [/^n\/m2$/, "pa"],
  [/(cubic|cu)(feet|foot|ft)/, "ft3"],
  [/cubicmet(er|re)s?|cbm|^cum(?=\/)/, "m3"],
  [/^cmm$/, "m3/min"],
  [/^(dm3|lit(er|re)s?)(?=\/|per)/, "l"],
  [/(per|\/)(hour|hr|std|h)$/, "/h"],
  [/(per|\/)(minute|min|mn)$/, "/min"],
  [/(per|\/)(second|sec|s)$/, "/s"],
];

const inShort = (text: string): string =>
  IN_SHORT.reduce((said, [full, short]) => said.replace(full, short), plainUnit(text));

/** Units in which nothing here is read, and that a header may tell: of mercury, in metres of water, of a mass, a second or a day. */
const UNREAD =
  /^((in|inches|mm|cm|")(of)?(hg|mercury)|torr|(cm|m|ft)(of)?(h2o|w[cgs]|water)|mm(ce|ca)|dapa|mpa|k[gp]f?\/[cm]?m2|ozf?\/(in2|sqin)|osi|cf[hs]|kcfm|ft3\/[hs]|m3\/d(ay)?|m?l\/h|ml\/s|gpm|gal\/min|kg\/[hs]|g\/s|lb\/(min|h)|[mn]m3\/h|k?m3|ft3|dm|km|µm|mils?)$/;
