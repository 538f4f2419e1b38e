import { itemAt } from "../../../reference/itemAt";
import { cholesky, solveTriangle } from "../../numeric/cholesky";
import { dot } from "../../numeric/dot";
import { covariance, seen, spreadTriangle } from "../../numeric/withPriors";
import { linearOf, type Model, priorsOf, slopesOf, spreadOfReading, type State } from "./model";
import { type Fit, type Held, mostPlausible, offOf, ROUGHLY } from "./mostPlausible";
import type { Reading } from "./reading";

/** Readings that share one factor by which they fit no plausible system. */
export interface Slip {
  readonly kind: "reading" | "place" | "meter";
  readonly readings: readonly Reading[];
  readonly factor: number; // [-] what was read over what all others say
  readonly deviation: number; // [-] of its logarithm
  readonly misfit: number; // [-] the logarithm in its own deviation
  readonly instead: readonly Reading[]; // others that may be off in place of these; set aside too
}

/** What readings say once those that fit nothing are set aside. */
export interface Judged {
  readonly fit: Fit;
  readonly slips: readonly Slip[];
}

/** Beyond so many of its own deviations a reading fits no plausible system: one in a thousand does by chance. */
export const LIMIT = 3.3;

/** Beyond this nothing is fitted to it first, since a fit that bends towards it tells less than the table does. */
const GROSS = 6;

/** So much more in the sum of squares, and the other explanation is the worse one. */
const CLEARLY_WORSE = 4;

/**
 * Fits readings, and sets aside what fits no plausible system: one reading, those of one place or those of one meter at a time, the
 * worst first, until the rest agrees; at the end what was set aside is held against the rest once more.
 *
 * @param model the systems and what is unknown of them
 * @param readings all of them
 * @param asTold as mostPlausible takes it
 * @returns the fit of those that agree, and the others
 * @throws NoAnswerError as mostPlausible
 * @source house iterative data snooping, after Baarda
 */
export function judge(model: Model, readings: readonly Reading[], asTold: State): Judged {
  const most = Math.max(1, Math.floor(readings.length / 2));
  const without = (slips: readonly Out[]): readonly Reading[] => {
    const out = new Set(slips.flatMap((slip) => [...slip.readings, ...slip.instead]));
    return readings.filter((one) => !out.has(one));
  };
  const fitOf = (slips: readonly Out[], near: State, settled?: number): Fit =>
    mostPlausible(model, without(slips), asTold, near, settled);
  const slips: Out[] = [];
  const held = heldAt(readings, asTold);
  for (let found = worstOf(model, held(readings), GROSS); found !== null && slips.length < most;) {
    slips.push(found);
    found = worstOf(model, held(without(slips)), GROSS);
  }
  let fit = fitOf(slips, asTold, ROUGHLY);
  for (let found = worstOf(model, fit, LIMIT); found !== null && slips.length < most;) {
    slips.push(found);
    fit = fitOf(slips, fit.state, ROUGHLY);
    found = worstOf(model, fit, LIMIT);
  }
  fit = fitOf(slips, fit.state);
  const still = slips.filter((slip) => Math.abs(commonFactor(model, fit, slip.readings).misfit) >= LIMIT);
  if (still.length < slips.length) fit = fitOf(still, fit.state);
  return { fit, slips: still.map((slip) => ({ ...slip, ...commonFactor(model, fit, slip.readings) })) };
}

type Out = Pick<Slip, "kind" | "readings" | "instead">;

/** Readings against the table as told. */
function heldAt(readings: readonly Reading[], state: State): (kept: readonly Reading[]) => Held {
  const slopes = slopesOf(state, readings);
  return (kept) => ({
    ...{ state, readings: kept },
    slopes: kept.map((one) => itemAt(slopes, readings.indexOf(one))),
    off: kept.map((one) => offOf(state, one)),
  });
}

/** The group that explains most of the disagreement when it is left out; null where nothing is out of line by so much. */
function worstOf(model: Model, held: Held, limit: number): Out | null {
  if (held.readings.length === 0) return null;
  const straight = withoutEach(model, held);
  const found = groupsOf(held.readings)
    .map(({ kind, group }) => ({ kind, readings: group, explains: straight(group).misfit ** 2 }))
    .sort((a, b) => b.explains - a.explains);
  const [best] = found;
  if (best === undefined || best.explains < limit ** 2) return null;
  const other = found.find(
    ({ readings, explains }) =>
      explains > Math.max(best.explains - CLEARLY_WORSE, limit ** 2) &&
      !readings.some((one) => best.readings.includes(one)),
  );
  return { kind: best.kind, readings: best.readings, instead: other?.readings ?? [] };
}

/**
 * How far readings lie from what all others say, if everything goes straight from here.
 *
 * @param model the systems and what is unknown of them
 * @param held all of them
 * @returns for a group, its misfit in its own deviation, and that deviation [-] of the logarithm
 * @source house block elimination of J D J' + R
 */
export function withoutEach(
  model: Model,
  { readings, slopes, off, state }: Held,
): (group: readonly Reading[]) => { readonly misfit: number; readonly deviation: number } {
  const triangle = spreadTriangle(linearOf(model, readings, slopes));
  const right = slopes.map((row, index) => itemAt(off, index) + dot(row, state.logarithms));
  return (group) => {
    const marks = readings.map((one) => (group.includes(one) ? 1 : 0));
    const weights = solveTriangle(triangle, marks);
    const information = dot(marks, weights);
    return { misfit: dot(weights, right) / Math.sqrt(information), deviation: 1 / Math.sqrt(information) };
  };
}

function groupsOf(readings: readonly Reading[]): { kind: Slip["kind"]; group: readonly Reading[] }[] {
  const byKey = (keyOf: (one: Reading) => number | null): (readonly Reading[])[] => {
    const groups = new Map<number, Reading[]>();
    for (const one of readings) {
      const key = keyOf(one);
      if (key !== null) groups.set(key, [...(groups.get(key) ?? []), one]);
    }
    return [...groups.values()].filter((group) => group.length > 1 && group.length < readings.length);
  };
  return [
    ...readings.map((one) => ({ kind: "reading" as const, group: [one] })),
    ...byKey(({ what, run }) => (what === "airflow" ? run : null)).map((group) => ({ kind: "place" as const, group })),
    ...byKey(({ meter }) => (meter < 0 ? null : meter)).map((group) => ({ kind: "meter" as const, group })),
  ];
}

interface CommonFactor {
  readonly factor: number;
  readonly deviation: number;
  readonly misfit: number;
}

/** The one factor by which readings are off against a fit that does not rest on them. */
function commonFactor(model: Model, rest: Fit, group: readonly Reading[]): CommonFactor {
  const priors = priorsOf(model);
  const answers = slopesOf(rest.state, group).map((slopes) => seen(rest.narrowed, slopes));
  const spread = cholesky(
    group.map((reading, index) =>
      group.map(
        (_, at) =>
          covariance(priors, answers[index]!, answers[at]!) + (at === index ? spreadOfReading(model, reading) ** 2 : 0),
      ),
    ),
  );
  const off = group.map((reading) => offOf(rest.state, reading));
  const weights = solveTriangle(spread, group.map(() => 1)); // prettier-ignore
  const information = weights.reduce((sum, one) => sum + one, 0);
  const logarithm = dot(weights, off) / information;
  return {
    factor: Math.exp(logarithm),
    deviation: 1 / Math.sqrt(information),
    misfit: logarithm * Math.sqrt(information),
  };
}
