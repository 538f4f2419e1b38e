import { NoAnswerError } from "../../errors";
import { changed, type System } from "../derivative/changed";
import { changeBy, gradientOf } from "../derivative/gradient";
import { linearise, type Straight } from "../derivative/linearise";
import { putBy } from "../derivative/put";
import { type Solution, solveNetwork } from "../solve/solveNetwork";
import type { Linear } from "../../numeric/withPriors";
import { answerOf, ownChange, type Reading, said, type Spot } from "./reading";
import { inputsThere, type Unknown } from "./unknowns";

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

interface SolvedSet {
  readonly system: System;
  readonly solution: Solution;
  readonly straight: () => Straight; // worked out when it is first asked for
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
      sets.has(set) ? solvedSet(told, model.unknowns, logarithms, near?.sets[set]?.solution) : null,
    ),
  };
}

function solvedSet(
  told: System,
  unknowns: readonly Unknown[],
  logarithms: Float64Array,
  near: Solution | undefined,
): SolvedSet {
  const there = inputsThere(unknowns, told.network);
  const inputs = there.map(({ input }) => input);
  const system = changed(told, inputs, there.map(({ place }) => logarithms[place]!)); // prettier-ignore
  const solution = solveNetwork(system.network, system.curve, system.surroundings, near);
  if (solution.status !== "converged") throw new NoAnswerError("no convergence with the inputs as they are read");
  let straight: Straight | null = null;
  return { system, solution, straight: () => (straight ??= linearise(system, solution)) };
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
export function slopesOf({ unknowns }: Model, state: State, spots: readonly (Spot | Reading)[]): Float64Array[] {
  const rows = spots.map(() => new Float64Array(unknowns.length));
  state.sets.forEach((found, set) => {
    const here = spots.flatMap((spot, index) => (spot.set === set ? [{ spot, row: rows[index]! }] : []));
    if (found === null || here.length === 0) return;
    const { system, solution } = found;
    const straight = found.straight();
    const answers = here.map(({ spot, row }) => ({
      ...{ spot, row, value: said(system, solution, spot) },
      gradient: gradientOf(straight, answerOf(system, solution, spot)),
    }));
    for (const { place, input } of inputsThere(unknowns, system.network)) {
      const put = putBy(straight, input);
      for (const { spot, row, value, gradient } of answers)
        row[place] = changeBy(straight, gradient, put) / value + ownChange(spot, input);
    }
  });
  spots.forEach((spot, index) => {
    if ("meter" in spot && spot.meter >= 0) rows[index]![spot.meter] = 1;
  });
  return rows;
}

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
