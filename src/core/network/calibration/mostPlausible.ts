import { DomainError, NoAnswerError } from "../../errors";
import { dot } from "../../numeric/dot";
import { type Linear, narrowedBy, straightFit } from "../../numeric/withPriors";
import { linearOf, type Model, saidBy, setsIn, slopesOf, spreadOfReading, type State, stateAt } from "./model";
import type { Reading } from "./reading";

/** Readings at some values of what is unknown. */
export interface Held {
  readonly state: State;
  readonly readings: readonly Reading[];
  readonly slopes: readonly Float64Array[]; // of their logarithms by the unknowns
  readonly off: ArrayLike<number>; // [-] logarithm of each reading over what the model says
}

/** The most plausible inputs behind readings, which are those that it rests on. */
export interface Fit extends Held {
  readonly cost: number; // sum of squares, each in its own deviation
  readonly atEnd: boolean; // a better fit lies past the end of the fan's curve
  readonly narrowed: readonly Float64Array[]; // what the readings took away of the inputs' covariance
}

const MOST_STEPS = 40;
const MOST_HALVINGS = 12;
const SETTLED = 1e-14; // [-] of the sum of squares
/** Likewise, where the fit only tells which readings to set aside. */
export const ROUGHLY = 1e-7;
const ROUNDING = 1e-11; // likewise: a sum that grows by so little has not grown
const AT_END = 1e-8; // likewise: at the end of the fan's curve steps that gain so little lead nowhere

/**
 * The most plausible values of what is unknown, by what was read and by what one knew before (maximum a posteriori).
 *
 *     minimise  sum ((ln read - ln model - ln meter) / s)^2 + sum (x / sd)^2,   s^2 = reading^2 + wander^2
 *
 * Gauss and Newton's steps with the exact derivative, each halved until the sum falls.
 *
 * @param model the systems and what is unknown of them
 * @param readings the readings that count
 * @param asTold the systems as the table and the curve say, in the sets of open gates that are to be solved
 * @param near where to begin if that fits better
 * @param settled [-] of the sum of squares: a step that would take no more of it is not taken
 * @returns the fit
 * @throws NoAnswerError where the table as told has no answer
 * @source jcgm100 5.1, 5.2 for the propagation; house for the rest
 */
export function mostPlausible(
  model: Model,
  readings: readonly Reading[],
  asTold: State,
  near = asTold,
  settled = SETTLED,
): Fit {
  const starts = [asTold, near].map((state) => evaluated(model, readings, state));
  let now = starts[1]!.cost < starts[0]!.cost ? starts[1]! : starts[0]!;
  for (let step = 0, left = false; ; step++) {
    const slopes = slopesOf(now.state, readings);
    const linear = linearOf(model, readings, slopes);
    const read = slopes.map((row, index) => now.off[index]! + dot(row, now.state.logarithms));
    const target = straightFit(linear, read); // where everything would go straight from here
    const isThere = squaresOf(linear, now.state.logarithms, target) <= settled * (1 + now.cost);
    const tried = isThere || step === MOST_STEPS ? null : descend(model, readings, now, target);
    if (tried === null || tried.next === null) {
      const atEnd = tried === null ? left && !isThere : tried.left;
      return { ...now, atEnd, readings, slopes, narrowed: narrowedBy(linear) };
    }
    now = tried.next;
    left = tried.left;
  }
}

/** A step in the deviations of what it goes through: by how much it lowers the sum of squares, if all goes straight. */
function squaresOf({ priors, spreads, slopes }: Linear, from: Float64Array, to: Float64Array): number {
  const step = from.map((one, place) => to[place]! - one);
  let sum = 0;
  slopes.forEach((row, index) => (sum += (dot(row, step) / spreads[index]!) ** 2));
  step.forEach((one, place) => (sum += (one / priors[place]!) ** 2));
  return sum;
}

type Evaluated = Pick<Fit, "state" | "cost"> & { readonly off: Float64Array };

function evaluated(model: Model, readings: readonly Reading[], state: State): Evaluated {
  const off = Float64Array.from(readings, (reading) => offOf(state, reading));
  let cost = 0;
  readings.forEach((reading, index) => (cost += (off[index]! / spreadOfReading(model, reading)) ** 2));
  model.unknowns.forEach(({ deviation }, place) => (cost += (state.logarithms[place]! / deviation) ** 2));
  return { state, off, cost };
}

/**
 * How far a reading lies from what a state says of it, its meter's error taken off.
 *
 * @returns [-] logarithm
 * @source house
 */
export const offOf = (state: State, reading: Reading): number =>
  Math.log(reading.value / saidBy(state, reading)) - (reading.meter < 0 ? 0 : state.logarithms[reading.meter]!);

/** Goes towards the target until the sum falls; a step that leaves the fan's curve is halved too. */
function descend(
  model: Model,
  readings: readonly Reading[],
  now: Evaluated,
  target: Float64Array,
): { readonly next: Evaluated | null; readonly left: boolean } {
  const { logarithms } = now.state;
  let [share, left] = [1, false];
  for (let halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
    const there = logarithms.map((from, place) => from + share * (target[place]! - from));
    try {
      const next = evaluated(model, readings, stateAt(model, there, setsIn(now.state), now.state));
      const fell = now.cost - next.cost;
      if (fell > (left ? AT_END : -ROUNDING) * (1 + now.cost)) return { next, left };
    } catch (error) {
      if (!(error instanceof NoAnswerError || error instanceof DomainError)) throw error;
      left = true;
    }
  }
  return { next: null, left };
}
