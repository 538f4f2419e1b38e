import { filterMedia } from "./filterMedia";
import type { Quantity } from "./quantities";
import { wheelKinds } from "./wheelKinds";

/** A fact of a data sheet that CLAIM knows by name. */
export interface ClaimFact {
  readonly key: string;
  readonly aliases: readonly string[]; // as people head their rows
  readonly takes: Amount | Words | { readonly kind: "pair" } | { readonly kind: "text" };
}

/** A number, with wide limits [SI] that catch one typed in another unit; they judge nothing. */
export interface Amount {
  readonly kind: "amount";
  readonly quantity: Quantity;
  readonly low: number;
  readonly high: number;
  readonly unit?: string; // where the quantity has none
  readonly thinkable?: number; // up to here a number may be meant whose digits can be read in two ways; `high` where left out
  readonly several?: string; // what is to be typed where there are several of such things, which its name may tell
  readonly noRating?: readonly string[]; // words beside the number, in small letters, with which it is not the one that is asked for
}

/** One of a few words. */
export interface Words {
  readonly kind: "words";
  readonly words: readonly { readonly key: string; readonly aliases: readonly string[] }[];
}

const amount = (quantity: Quantity, low: number, high: number, more: Pick<Amount, "unit" | "thinkable" | "several" | "noRating"> = {}): Amount => ({ kind: "amount", quantity, low, high, ...more }); // prettier-ignore
const airflow = amount("airflow", 0.002, 20, { thinkable: 500 });
const pressure = amount("pressure", 25, 50_000, { thinkable: 240_000 });
const words = (list: Words["words"]): Words => ({ kind: "words", words: list });
const text = { kind: "text" } as const;

/** Two circles of half an area each. */
const several = "of two alike inlets 1.41 times the diameter of one";

/**
 * What a name says of a number that is one of several, in small letters, without spaces and with each bracket and comma as "(" and "×" as x:
 * "Inlet diameter (in, × 2)". A count stands first there, so that "(max 2.5)" and "(12 x 20)" are none.
 */
export const severalWords = ["(x2", "(x3", "(x4", "(2x", "(3x", "(4x", "each", "twin", "dual", "pair", "two", "three", "perbag", "percartridge", "perfilter"]; // prettier-ignore

/** What is written otherwise before those are looked for. */
export const severalSpelt = [[" ", ""], ["[", "("], [",", "("], ["×", "x"]] as const; // prettier-ignore

/** What such a number must be instead. */
export const ofAll = (amounts: string): string => `one number for all of them, since its name tells of several: ${amounts}`; // prettier-ignore

/** A motor's power beside one of these is what it gives for a moment, or what it takes in; a longer word comes before one that begins it. */
const noRating = ["peak", "maximum", "max", "developed", "input", "p1"];

const phases = [
  { key: "1", aliases: ["single", "one"] },
  { key: "3", aliases: ["three"] },
];

/** What hoses are: their walls are in the table of materials. */
const hoseKinds = [
  { key: "corrugated", aliases: ["flex"] },
  { key: "smooth", aliases: ["smooth bore"] },
];

/** In the order in which a data sheet gives them. The keys are for ever: people's sheets hold them. */
export const claimFacts = [
  {
    key: "airflow",
    aliases: ["air flow", "cfm", "max airflow"],
    takes: airflow,
  },
  {
    key: "free-air airflow",
    aliases: ["free air", "free delivery"],
    takes: airflow,
  },
  { key: "rated point", aliases: ["duty point"], takes: { kind: "pair" } },
  {
    key: "pressure",
    aliases: ["static pressure", "max pressure", "suction"],
    takes: pressure,
  },
  {
    key: "shut-off pressure",
    aliases: ["shutoff pressure", "sealed suction", "water lift"],
    takes: pressure,
  },
  {
    key: "motor power",
    aliases: ["motor", "power", "hp", "peak hp", "peak power", "peak horsepower", "input power", "power input"],
    takes: amount("power", 10, 100_000, { thinkable: 700_000, noRating }),
  },
  { key: "volts", aliases: ["voltage"], takes: amount("ratio", 10, 1000, { unit: "V" }) },
  { key: "amps", aliases: ["current"], takes: amount("ratio", 0.1, 500, { unit: "A" }) },
  { key: "phases", aliases: ["phase"], takes: words(phases) },
  { key: "efficiency", aliases: ["fan efficiency"], takes: amount("ratio", 0.05, 1.5, { unit: "%" }) },
  { key: "inlet diameter", aliases: ["inlet", "port"], takes: amount("diameter", 0.02, 1.5, { several }) },
  {
    key: "impeller diameter",
    aliases: ["impeller", "wheel diameter"],
    takes: amount("diameter", 0.05, 2),
  },
  { key: "wheel width", aliases: ["impeller width"], takes: amount("diameter", 0.005, 1) },
  {
    key: "wheel kind",
    aliases: ["wheel type", "impeller type", "blades"],
    takes: words(wheelKinds),
  },
  { key: "stages", aliases: [], takes: amount("ratio", 1, 12, { unit: "stages" }) },
  {
    key: "speed",
    aliases: ["rpm", "wheel speed"],
    takes: amount("ratio", 100, 60_000, { unit: "rpm", thinkable: 1e6 }),
  },
  {
    key: "filter area",
    aliases: ["media area"],
    takes: amount("area", 0.05, 1000, { thinkable: 10_000, several: "of several filters their areas added up" }),
  },
  {
    key: "filter medium",
    aliases: ["filter type", "filter kind"],
    takes: words(filterMedia),
  },
  { key: "filter rating", aliases: ["micron"], takes: text },
  { key: "hose diameter", aliases: ["hose"], takes: amount("diameter", 0.02, 0.6) },
  { key: "hose length", aliases: [], takes: amount("length", 0.1, 100) },
  { key: "hose kind", aliases: ["hose type"], takes: words(hoseKinds) },
  { key: "sound", aliases: ["noise", "sound level"], takes: text },
  { key: "noise distance", aliases: ["sound distance"], takes: amount("length", 0.1, 100) },
] as const satisfies readonly ClaimFact[];

export type ClaimFactKey = (typeof claimFacts)[number]["key"];
