import { BRANCH, lossFamilies } from "../../reference/lossFamilies";
import type { LossFamily } from "../../reference/schema";
import { DomainError, requireWithin, shown } from "../errors";
import { LARGEST_COEFFICIENT } from "../largest";
import { plain, unknownName } from "../naming/findNamed";
import { lossCoefficient } from "./lossCoefficient";
import { likelySlip } from "./entrySlips";
import { itemAt } from "../../reference/itemAt";

/** One entry of a list of fittings: so many of a family, or so many times a bare coefficient. */
export interface FittingItem {
  readonly family: LossFamily | null;
  readonly coefficient: number | null; // set where a bare K was given
  readonly shape: number | null; // a diameter is in [m]
  readonly angle: number | null; // [degrees]
  readonly count: number;
  readonly plain: boolean; // a branch whose K goes by its angle alone, wherever it stands
}

/** What says behind a branch that its K goes by its angle alone. */
export const PLAIN = "plain";

const TURN = "turn"; // how the tables of elbows call their angle
const LEAST_TURN = 5; // degrees: whoever writes "elbow 1.5 2" means two elbows
const MOST_ALIKE = 1000; // fittings of a kind in one run
const MOST_ITEMS = 200; // entries in one list

/**
 * Reads a list of fittings: `elbow 1.5 x2; branch 30; 0.4`.
 *
 * Entries are separated by semicolons. An entry is a name, then its numbers, then how many of them (`x2`); or a bare
 * coefficient K. Of two numbers the first is the shape (r/D, ratio, diameter) and the second the angle in degrees; a
 * single number is the shape where the fitting has one, else the angle. A fitting that goes by diameter takes the
 * duct's own, so that its single number is the angle; a diameter of its own carries its unit: `elbow stamped 100 mm 45`.
 * Behind a branch `plain` says that its K goes by angle alone where runs join. A turn of an elbow below 5 degrees is
 * refused: how many there are was meant.
 *
 * @param argument the name that a sentence uses for this text
 * @param text the list
 * @param inch [m] length of one plain diameter unit: 0.0254 (in) or 0.001 (mm)
 * @param kind "hood" admits hood entries only, "any" fittings and hoods
 * @returns the entries in their order; none of a blank text
 * @throws DomainError for an unknown name (with the nearest ones) or a number too many
 * @source house grammar
 */
export function parseFittingList(
  argument: string,
  text: string,
  inch: number,
  kind: "hood" | "any",
): readonly FittingItem[] {
  const parsed = parsedAs[kind].get(inch) ?? new Map<string, readonly FittingItem[]>();
  const before = parsed.get(text);
  if (before !== undefined) return before;
  const items = parseEntries(argument, text, inch, kind);
  if (parsed.size >= MOST_PARSED) parsed.clear();
  parsed.set(text, items);
  parsedAs[kind].set(inch, parsed);
  return items;
}

type Parsed = Map<string, readonly FittingItem[]>;

/**
 * A sheet says the same few lists in many cells, and says them all again with every recalculation. A refusal is not kept.
 * By kind, unit and text: to join these into one key for each cell would take as long as what is computed of it.
 */
const parsedAs = { hood: new Map<number, Parsed>(), any: new Map<number, Parsed>() };
const MOST_PARSED = 500; // of a kind, in a unit

function parseEntries(argument: string, text: string, inch: number, kind: "hood" | "any"): FittingItem[] {
  const entries = text
    .split(/[;\n]/)
    .map(tidy)
    .filter((entry) => entry !== "");
  if (entries.length > MOST_ITEMS) throw new DomainError(argument, text, `at most ${MOST_ITEMS} entries`);
  return entries.map((entry) => parseOrTell(argument, entry, inch, kind));
}

function parseOrTell(argument: string, entry: string, inch: number, kind: "hood" | "any"): FittingItem {
  try {
    return parseEntry(argument, entry, inch, kind);
  } catch (error) {
    const slip = kind === "hood" ? null : likelySlip(entry, (text) => canBeParsed(text, inch, kind));
    throw slip === null ? error : new DomainError(argument, entry, slip);
  }
}

function canBeParsed(entry: string, inch: number, kind: "hood" | "any"): boolean {
  try {
    parseEntry("", entry, inch, kind);
    return true;
  } catch {
    return false;
  }
}

/**
 * A coefficient that was given as a number, not by a fitting's name.
 *
 * @returns an entry of no family
 * @source house
 */
export function bareCoefficient(argument: string, coefficient: number, count: number): FittingItem {
  requireWithin(argument, coefficient, { atLeast: 0, atMost: LARGEST_COEFFICIENT }, "");
  return { family: null, coefficient, shape: null, angle: null, count, plain: false };
}

/**
 * Sum of the coefficients of a list in a duct of this diameter [m] (null where none is known).
 *
 * @returns [-] K of all of them together
 * @source points
 */
export const listCoefficient = (items: readonly FittingItem[], diameter: number | null): number =>
  items.reduce((sum, item) => sum + item.count * itemCoefficient(item, diameter), 0);

function itemCoefficient(item: FittingItem, diameter: number | null): number {
  if (item.family === null) return item.coefficient ?? 0;
  const own = item.family.shape?.quantity === "diameter" ? diameter : null;
  return lossCoefficient(item.family, item.shape ?? own, item.angle);
}

const tidy = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

const NUMBER = /^-?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/; // a decimal comma is read as a point

function parseEntry(argument: string, entry: string, inch: number, kind: "hood" | "any"): FittingItem {
  const { words, count } = takeCount(argument, entry);
  const bare = words.length === 1 ? readNumber(itemAt(words, 0)) : null;
  if (bare !== null) return bareCoefficient(argument, bare, count);
  const { family, rest } = takeName(argument, words, kind);
  const plain = family.key === BRANCH && rest.includes(PLAIN);
  const numbers = plain ? rest.filter((word) => word !== PLAIN) : rest;
  return { family, coefficient: null, ...takeNumbers(argument, family, numbers, inch), count, plain };
}

const COUNTED = /^(.+?)\s*[x×]\s?(\d+(?:[.,]\d+)?)$/;

function takeCount(argument: string, entry: string): { words: string[]; count: number } {
  const match = COUNTED.exec(entry);
  const body = match?.[1] ?? entry;
  const count = readNumber(match?.[2] ?? "1")!;
  if (count % 1 !== 0) throw new DomainError(`${argument}: the count of ${shown(body)}`, count, "a whole number");
  requireWithin(`${argument}: the count of ${shown(body)}`, count, { atLeast: 1, atMost: MOST_ALIKE }, "");
  return { words: wordsOf(body), count };
}

const wordsOf = (body: string): string[] =>
  body
    .replace(/(\d)\s*(?:°|deg\b|degrees\b)/g, "$1")
    .replace(/(\d)\s+(in|mm)\b/g, "$1$2")
    .split(" ");

function readNumber(word: string): number | null {
  return NUMBER.test(word) ? Number(word.replace(",", ".")) : null;
}

interface TakenName {
  readonly family: LossFamily;
  readonly rest: string[];
}

/** The longest run of leading words that is a family's name. */
function findName(words: readonly string[], kind: "hood" | "any"): TakenName | null {
  for (let length = Math.min(words.length, MOST_WORDS); length > 0; length--) {
    const family = familiesByName.get(plain(words.slice(0, length).join(" ")));
    if (family !== undefined && (kind === "any" || family.kind === kind)) return { family, rest: words.slice(length) };
  }
  return null;
}

/**
 * Whether an entry, in small letters and single blanks, begins with a family's name; any other is refused or has
 * no family. To ask first spares looking for the names nearest to it, which takes a hundred times as long.
 *
 * @returns no more than that: its numbers may be refused
 * @source house
 */
export const beginsWithName = (entry: string, kind: "hood" | "any"): boolean =>
  findName(wordsOf(COUNTED.exec(entry)?.[1] ?? entry), kind) !== null;

function takeName(argument: string, words: readonly string[], kind: "hood" | "any"): TakenName {
  const found = findName(words, kind);
  if (found !== null) return found;
  const candidates = kind === "hood" ? lossFamilies.filter((family) => family.kind === "hood") : lossFamilies;
  const name = words.filter((word) => readNumber(word) === null).join(" ");
  const what = kind === "hood" ? "a hood entry's name or its K" : "a fitting's name or its K";
  throw new DomainError(argument, words.join(" "), unknownName(argument, candidates, name, what).requirement);
}

const familiesByName: ReadonlyMap<string, LossFamily> = new Map(
  lossFamilies.flatMap((family) => [family.key, ...family.aliases].map((name) => [plain(name), family] as const)),
);

const MOST_WORDS = Math.max(...[...familiesByName.keys()].map((name) => name.split(" ").length));

function takeNumbers(
  argument: string,
  family: LossFamily,
  words: readonly string[],
  inch: number,
): { shape: number | null; angle: number | null } {
  const numbers: number[] = [];
  let diameter: number | null = null;
  for (const word of words) {
    const sized = /^(.+?)(in|mm)$/.exec(word);
    const value = readNumber(sized?.[1] ?? word);
    if (value === null) throw new DomainError(argument, words.join(" "), `only numbers after "${family.key}"`);
    if (sized === null) numbers.push(value);
    else if (diameter !== null)
      throw new DomainError(argument, words.join(" "), `one diameter only after "${family.key}"`);
    else diameter = value * (sized[2] === "mm" ? 0.001 : 0.0254);
  }
  const byDiameter = family.shape?.quantity === "diameter";
  if (diameter !== null && !byDiameter)
    throw new DomainError(argument, words.join(" "), `without a unit after "${family.key}"`);
  const places: ("shape" | "angle")[] = [];
  if (family.shape !== null && diameter === null && (!byDiameter || numbers.length > 1 || family.angle === null))
    places.push("shape");
  if (family.angle !== null) places.push("angle");
  if (numbers.length > places.length) {
    const most =
      places.length === 0
        ? "no number"
        : places.length === 1
          ? `one number (${itemAt(places, 0)})`
          : "two numbers (shape, angle)";
    throw new DomainError(argument, numbers.join(" "), `${most} after "${family.key}"`);
  }
  const of = (place: "shape" | "angle"): number | null => numbers[places.indexOf(place)] ?? null;
  const [shape, angle] = [of("shape"), of("angle")];
  if (family.angle?.name === TURN && angle !== null && angle > 0 && angle < LEAST_TURN)
    throw new DomainError(argument, numbers.join(" "), `a turn of at least ${LEAST_TURN} degrees after "${family.key}" ("x2" says two of them)`); // prettier-ignore
  return { shape: diameter ?? (shape !== null && byDiameter ? shape * inch : shape), angle };
}
