import { DomainError, NoAnswerError } from "../../errors";
import { dot } from "../../numeric/dot";
import { narrowedBy, straightFit } from "../../numeric/withPriors";
import { linearOf, type Model, saidBy, slopesOf, spreadOfReading, type State, stateAt } from "./model";
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
const SETTLED = 1e-8; // relative fall of the sum of squares

/**
 * The most plausible values of what is unknown, by what was read and by what one knew before (maximum a posteriori).
 *
 *     minimise  sum ((ln read - ln model - ln meter) / s)^2 + sum (x / sd)^2,   s^2 = reading^2 + wander^2
 *
 * Gauss and Newton's steps with the exact derivative, each halved until the sum falls.
 *
 * @param model the systems and what is unknown of them
 * @param readings the readings that count
 * @param sets the sets of open gates to be solved, those of the readings among them
 * @returns the fit
 * @throws NoAnswerError where the table as told has no answer
 * @source jcgm100 5.1, 5.2 for the propagation; house for the rest
 */
export function mostPlausible(model: Model, readings: readonly Reading[], sets: ReadonlySet<number>): Fit {
  let now = evaluate(model, readings, new Float64Array(model.unknowns.length), sets);
  let atEnd = false;
  for (let step = 0; step < MOST_STEPS; step++) {
    const slopes = slopesOf(model, now.state, readings);
    const read = slopes.map((row, index) => now.off[index]! + dot(row, now.state.logarithms));
    const target = straightFit(linearOf(model, readings, slopes), read); // where everything would go straight from here
    const { next, left } = descend(model, readings, now, target, sets);
    atEnd = left;
    if (next === null) break;
    const fell = now.cost - next.cost;
    now = next;
    if (fell <= SETTLED * (1 + now.cost)) break;
  }
  const slopes = slopesOf(model, now.state, readings);
  return { ...now, atEnd, readings, slopes, narrowed: narrowedBy(linearOf(model, readings, slopes)) };
}

type Evaluated = Pick<Fit, "state" | "cost"> & { readonly off: Float64Array };

function evaluate(
  model: Model,
  readings: readonly Reading[],
  logarithms: Float64Array,
  sets: ReadonlySet<number>,
): Evaluated {
  const state = stateAt(model, logarithms, sets);
  const off = Float64Array.from(readings, (reading) => offOf(state, reading));
  let cost = 0;
  readings.forEach((reading, index) => (cost += (off[index]! / spreadOfReading(model, reading)) ** 2));
  model.unknowns.forEach(({ deviation }, place) => (cost += (logarithms[place]! / deviation) ** 2));
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
  sets: ReadonlySet<number>,
): { readonly next: Evaluated | null; readonly left: boolean } {
  const { logarithms } = now.state;
  let [share, left] = [1, false];
  for (let halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
    const there = logarithms.map((from, place) => from + share * (target[place]! - from));
    try {
      const next = evaluate(model, readings, there, sets);
      if (next.cost < now.cost) return { next, left };
    } catch (error) {
      if (!(error instanceof NoAnswerError || error instanceof DomainError)) throw error;
      left = true;
    }
  }
  return { next: null, left };
}
