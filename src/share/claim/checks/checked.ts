import { ROUNDING } from "../../../core/claims/grade";
import { type ClaimFactKey } from "../../../reference/claimFacts";
import { type WheelKind, wheelKinds } from "../../../reference/wheelKinds";
import { num } from "../../translate/expressions/text";
import { type FactPlace, factRow } from "../claimNames";
import { literal, oneOf } from "../say";
import type { Steps } from "../steps";

/** The facts that were read, as the checks take them: a number that is not given is 0, a word an empty text. */
export interface GivenFacts {
  readonly has: (key: ClaimFactKey) => string; // a condition
  readonly isUnrated: (key: ClaimFactKey) => string; // a condition, too: no rating
  readonly of: (key: ClaimFactKey) => string;
  readonly shown: (key: ClaimFactKey, column: "sign" | "raw") => string;
  readonly rated: { readonly airflow: string; readonly pressure: string };
}

export function givenFacts(facts: FactPlace): GivenFacts {
  return {
    has: (key) => `${facts.cell("has", factRow(key))}=1`,
    isUnrated: (key) => `${facts.cell("has", factRow(key))}=2`,
    of: (key) => facts.cell("value", factRow(key)),
    shown: (key, column) => facts.cell(column, factRow(key)),
    rated: {
      airflow: facts.cell("firstSI", factRow("rated point")),
      pressure: facts.cell("secondSI", factRow("rated point")),
    },
  };
}

/** One line of the answer, each part a formula; it is shown where `applies` is 1. */
export interface Line {
  readonly applies: string; // a cell
  readonly check: string;
  readonly claimed: string;
  readonly allowed: string;
  readonly unit: string;
  readonly verdict: string; // a cell
  readonly why: string;
  readonly source: string;
  readonly asks: readonly string[]; // at most two
}

/** Lines of checks; their steps go onto the list. */
export type Check = (facts: GivenFacts, steps: Steps) => Line[];

/** Where each verdict begins, SI; a bound that is left out is never passed. */
interface Bounds {
  readonly unknownFrom?: string;
  readonly doubtedFrom?: string;
  readonly impossibleFrom?: string;
}

/** The core's `grade` as a formula. */
export function gradeOf(claimed: string, { unknownFrom, doubtedFrom, impossibleFrom }: Bounds): string {
  const passes = (bound: string): string => `${claimed}>(${bound})*${num(1 + ROUNDING)}`;
  const cases = (
    [
      [impossibleFrom, "impossible"],
      [doubtedFrom, "doubtful"],
      [unknownFrom, "cannot tell"],
    ] as const
  ).flatMap(([bound, verdict]) => (bound === undefined ? [] : [[passes(bound), literal(verdict)] as const]));
  return oneOf(cases, literal("holds"));
}

export const firstGiven = (facts: GivenFacts, ...keys: readonly ClaimFactKey[]): string =>
  keys.reduceRight(
    (rest, key) => (rest === "0" ? facts.of(key) : `IF(${facts.has(key)},${facts.of(key)},${rest})`),
    "0",
  );

export const flag = (condition: string): string => `IF(${condition},1,0)`;
export const either = (...conditions: readonly string[]): string => `OR(${conditions.join(",")})`;
export const all = (...conditions: readonly string[]): string => `AND(${conditions.join(",")})`;

/** What goes by the kind of wheel, undefined where it is not told. */
export const byWheel = (facts: GivenFacts, then: (kind: WheelKind | undefined) => string): string =>
  oneOf(
    wheelKinds.map((kind) => [`${facts.of("wheel kind")}="${kind.key}"`, then(kind)] as const),
    then(undefined),
  );

/** Nothing to ask where a number holds. */
export const unlessHolds = (verdict: string, ask: string): string => `IF(${verdict}="holds","",${ask})`;
