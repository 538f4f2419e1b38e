import { NoAnswerError } from "../../errors";
import { changing, type System } from "../derivative/changed";
import { changeBy, effectOf, gradientOf } from "../derivative/gradient";
import { linearise } from "../derivative/linearise";
import { putBy } from "../derivative/put";
import { type Solution, solveNetwork } from "../solve/solveNetwork";
import type { Linear } from "../../numeric/withPriors";
import { answerOf, ownChange, type Reading, said, type Spot } from "./reading";
import { type InputThere, inputsThere, type Unknown } from "./unknowns";

/** A system with its gates in each state in which somebody read, and what is unknown of it. */
export interface Model {
  readonly systems: readonly System[]; // one for each set of open gates
  readonly unknowns: readonly Unknown[];
  readonly wander: number; // [-] how far what flows strays from any such model, at each reading by itself
}

/** What flows in each set of open gates with the unknowns at some values; a set that nobody asked for is left out. */
export interface State {
  readonly logarithms: Float64Array; // of the unknowns' factors
  readonly sets: readonly (SolvedSet | null)[];
}

interface SolvedSet extends Solved {
  readonly ready: ReadySet;
  readonly slopes: (spot: Spot) => Float64Array; // over the unknowns, the meters' left at 0; each is worked out once
}

interface Solved {
  readonly system: System;
  readonly solution: Solution;
}

/** What a set keeps from one state to the next. */
interface ReadySet {
  readonly there: readonly InputThere[];
  readonly off: (logarithms: readonly number[]) => System;
}

/**
 * Solves a model's sets of open gates with factors on its unknowns.
 *
 * @param model the systems and what is unknown of them
 * @param logarithms [-] of the factors
 * @param sets which sets of open gates are wanted
 * @param near the model at other factors, from which it is found sooner
 * @returns what flows
 * @throws NoAnswerError where a set has no answer
 * @source house
 */
export function stateAt(model: Model, logarithms: Float64Array, sets: ReadonlySet<number>, near?: State): State {
  return {
    logarithms,
    sets: model.systems.map((told, set) =>
      sets.has(set) ? solvedSet(told, model.unknowns, logarithms, near?.sets[set] ?? null) : null,
    ),
  };
}

function solvedSet(
  told: System,
  unknowns: readonly Unknown[],
  logarithms: Float64Array,
  near: SolvedSet | null,
): SolvedSet {
  const ready = near?.ready ?? readySet(told, unknowns);
  const system = ready.off(ready.there.map(({ place }) => logarithms[place]!));
  const solution = solveNetwork(system.network, system.curve, system.surroundings, near?.solution);
  if (solution.status !== "converged") throw new NoAnswerError("no convergence with the inputs as they are read");
  return { system, solution, ready, slopes: slopesAt({ system, solution }, ready.there, unknowns.length) };
}

function readySet(told: System, unknowns: readonly Unknown[]): ReadySet {
  const there = inputsThere(unknowns, told.network);
  return { there, off: changing(told, there.map(({ input }) => input)) }; // prettier-ignore
}

/** A velocity changes as its airflow does, by their logarithms, and both stand under one key. */
function slopesAt({ system, solution }: Solved, there: readonly InputThere[], count: number): SolvedSet["slopes"] {
  const known = new Map<string, Float64Array>();
  let atState: ReturnType<typeof straightened> | null = null;
  const straightened = () => {
    const straight = linearise(system, solution);
    const effects = there.map(({ place, input }) => {
      return { place, input, effect: effectOf(straight, putBy(straight, input)) };
    });
    return { straight, effects };
  };
  return (spot) => {
    const key = `${spot.what === "velocity" ? "airflow" : spot.what} ${spot.run}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const { straight, effects } = (atState ??= straightened());
    const value = said(system, solution, spot);
    const gradient = gradientOf(straight, answerOf(system, solution, spot));
    const row = new Float64Array(count);
    for (const { place, input, effect } of effects)
      row[place] = changeBy(gradient, effect) / value + ownChange(spot, input);
    known.set(key, row);
    return row;
  };
}

/**
 * Which sets of a state were solved.
 *
 * @returns their numbers
 * @source house
 */
export const setsIn = ({ sets }: State): ReadonlySet<number> =>
  new Set([...sets.keys()].filter((set) => sets[set] !== null));

const setOf = (state: State, set: number): NonNullable<State["sets"][number]> => {
  const found = state.sets[set];
  if (found == null) throw new Error(`set ${set} of open gates was not solved`);
  return found;
};

/**
 * What a state says of a spot.
 *
 * @returns [m3/s, m/s or Pa]
 * @source house
 */
export function saidBy(state: State, spot: Spot): number {
  const { system, solution } = setOf(state, spot.set);
  return said(system, solution, spot);
}

/**
 * How the logarithm of what a state says of spots changes with each unknown.
 *
 * @returns a row of slopes for each spot, over the unknowns
 * @source house
 */
export const slopesOf = (state: State, spots: readonly (Spot | Reading)[]): Float64Array[] =>
  spots.map((spot) => {
    const row = setOf(state, spot.set).slopes(spot);
    if (!("meter" in spot) || spot.meter < 0) return row;
    const withMeter = row.slice();
    withMeter[spot.meter] = 1;
    return withMeter;
  });

/**
 * Standard deviation of a reading around the model, each for itself.
 *
 * @returns [-] of its logarithm
 * @source house
 */
export const spreadOfReading = ({ wander }: Model, { deviation }: Pick<Reading, "deviation">): number =>
  Math.hypot(deviation, wander);

/**
 * Readings as if they went straight with the unknowns.
 *
 * @param model what is unknown and how sure it is beforehand
 * @param readings what was read
 * @param slopes as slopesOf finds them at a state
 * @returns what the linear step takes
 * @source house
 */
export const linearOf = (model: Model, readings: readonly Reading[], slopes: readonly Float64Array[]): Linear => ({
  priors: priorsOf(model),
  spreads: readings.map((reading) => spreadOfReading(model, reading)),
  slopes,
});

/**
 * How far off each unknown may be before anyone read anything.
 *
 * @returns [-] standard deviations of the logarithms
 * @source house
 */
export const priorsOf = ({ unknowns }: Model): number[] => unknowns.map(({ deviation }) => deviation);
