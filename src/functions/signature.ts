import { DENSITY_LIMITS, STANDARD_DENSITY } from "../core/air/constants";
import type { Limits } from "../core/errors";
import type { FittingItem } from "../core/fittings/fittingList";
import type { Beside } from "../core/fittings/singleCoefficient";
import { DUCT_SIZE } from "../core/section/section";
import type { Quantity } from "../reference/quantities";
import type { GateConditionRow } from "../reference/schema";

/**
 * What a function takes, as data: the cells read by it, a copy's plain formulas check by it, and tests draw their inputs
 * by it. Names and their order are released: people's sheets hold them, so they never change.
 */
export interface Signature<T extends Takes> {
  readonly takes: T; // in the order of the arguments
  readonly gives: Quantity;
  readonly units: boolean; // whether the argument after these is the unit system
}

export type Takes = Readonly<Record<string, Rule>>;

export type Rule = NeededNumber | OptionalNumber<number | null> | BesideRule | WordRule<string> | NamedRule<Named>;

interface OfEveryRule {
  readonly needed: boolean; // an item of a range is blank where all its needed cells are
  readonly quantity: Quantity | null; // the unit that sentences use
}

/** A number that must be there. */
export interface NeededNumber extends OfEveryRule {
  readonly kind: "number";
  readonly needed: true;
  readonly quantity: Quantity;
  readonly limits: Limits; // SI, as the core holds it to them
}

/** A number that may be left out. */
export interface OptionalNumber<Usual extends number | null> extends OfEveryRule {
  readonly kind: "number";
  readonly needed: false;
  readonly quantity: Quantity;
  readonly limits: Limits;
  readonly usual: Usual; // SI, what stands for it when it is left out; null where nothing does
  readonly zero: Zero;
}

/**
 * What a cell stands for that is given and is blank or 0. Some hosts send a blank as 0, so a number never hangs on which of the
 * two it is.
 * - "usual": what stands where nothing is given, since 0 cannot be meant or is just that;
 * - "none": 0, a blank too;
 * - words: neither, since 0 would be another answer than the usual one; the cell is refused, and one of the words says 0.
 */
export type Zero = "usual" | "none" | readonly string[];

/** A fitting's shape or angle beside its name: what a 0 would mean hangs on the fitting. */
export interface BesideRule extends OfEveryRule {
  readonly kind: "beside";
  readonly needed: false;
  readonly words: readonly string[]; // for 0
}

/** One of a few words; the first when it is left out. */
export interface WordRule<Word extends string> extends OfEveryRule {
  readonly kind: "word";
  readonly needed: false;
  readonly words: readonly Word[];
}

/** What is read from a name, or from a number in place of the name. */
export interface NamedRule<Kind extends Named> extends OfEveryRule {
  readonly kind: Kind;
}

type Named = keyof NamedValues;

/** A leakage class as it is printed: C_L (cfm per 100 ft² at 1 in.w.g.), or the European L/(s m²) per Pa^0.65. */
export interface LeakageClass {
  readonly isEuropean: boolean;
  readonly value: number;
}

/** What the core gets for each kind of name. */
interface NamedValues {
  readonly material: number; // roughness [m]; a number is the roughness, and the usual material stands where it is left out
  readonly fittings: readonly FittingItem[]; // a fitting, a hood entry, a list of them, or a bare K
  readonly "hood entry": readonly FittingItem[]; // the same, hood entries only
  readonly "gate condition": GateConditionRow;
  readonly "leakage class": LeakageClass;
  readonly "unit name": string;
}

export type ValueOf<One> =
  One extends OptionalNumber<infer Usual>
    ? number | Usual
    : One extends NeededNumber
      ? number
      : One extends BesideRule
        ? Beside
        : One extends WordRule<infer Word>
          ? Word
          : One extends NamedRule<infer Kind>
            ? NamedValues[Kind]
            : never;

/** The values of one cell of an answer, in SI, by the names of the arguments. */
export type Values<T extends Takes> = { readonly [Name in keyof T]: ValueOf<T[Name]> };

/** A function whose last argument is the unit system. */
export const signature = <const T extends Takes>(takes: T, gives: Quantity): Signature<T> => ({
  takes,
  gives,
  units: true,
});

/** A function that knows no units: it answers in the units of its arguments. */
export const withoutUnits = <const T extends Takes>(takes: T): Signature<T> => ({
  takes,
  gives: "ratio",
  units: false,
});

export const needed = (quantity: Quantity, limits: Limits): NeededNumber => ({
  kind: "number",
  needed: true,
  quantity,
  limits,
});

/** @param usual in SI */
export const optional = <Usual extends number | null>(
  quantity: Quantity,
  limits: Limits,
  usual: Usual,
  zero: Zero = "usual",
): OptionalNumber<Usual> => ({ kind: "number", needed: false, quantity, limits, usual, zero });

export const word = <Word extends string>(...words: readonly Word[]): WordRule<Word> => ({
  kind: "word",
  needed: false,
  quantity: null,
  words,
});

export const beside = (quantity: Quantity, words: readonly string[]): BesideRule => ({
  kind: "beside",
  needed: false,
  quantity,
  words,
});

const named = <Kind extends Named>(kind: Kind): NamedRule<Kind> => ({ kind, needed: true, quantity: null });

// What many functions take.
export const FROM_ZERO: Limits = { atLeast: 0 };
export const ABOVE_ZERO: Limits = { above: 0 };
export const ANY_NUMBER: Limits = {};

export const AIRFLOW = needed("airflow", FROM_ZERO);
export const DIAMETER = needed("diameter", DUCT_SIZE);
export const HEIGHT = optional("diameter", DUCT_SIZE, null); // of a rectangle; none makes the duct round
export const VELOCITY = needed("velocity", FROM_ZERO);
export const PRESSURE = needed("pressure", FROM_ZERO);
export const DENSITY = optional("density", DENSITY_LIMITS, STANDARD_DENSITY);
export const MATERIAL: NamedRule<"material"> = { kind: "material", needed: false, quantity: "diameter" };
export const FITTINGS = named("fittings");
export const HOOD_ENTRY = named("hood entry");
export const GATE_CONDITION = named("gate condition");
export const LEAKAGE_CLASS = named("leakage class");
export const UNIT_NAME = named("unit name");
