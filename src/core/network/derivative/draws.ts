import { DomainError, NoAnswerError } from "../../errors";
import { sectionArea } from "../../section/section";
import { type Solution, solveNetwork } from "../solve/solveNetwork";
import { changing, type System } from "./changed";
import type { Direction } from "./direction";
import type { Input } from "./inputs";

/** So many draws that the ends of the middle 95 % are told to about a tenth of their distance. */
export const DRAWS = 400;

/** The middle of the draws that is kept: 19 of 20. */
const OUTSIDE = 0.025;

/**
 * A system solved again and again, each time with all its inputs drawn anew: for answers that do not go straight with their
 * inputs. The draws are the same for the same inputs, so an answer never changes by itself.
 *
 * @param system as the table and the curve say
 * @param solution what flows in it, from which each draw is found sooner
 * @param inputs what may be off
 * @param deviations [-] of the logarithms of their factors
 * @returns what flows in those draws that have an answer, as a direction tells its change; the fan's curve may not reach for the others
 * @source jcgm101 propagation of distributions
 */
export function drawn(
  system: System,
  solution: Solution,
  inputs: readonly Input[],
  deviations: readonly number[],
): Direction[] {
  const normal = normalDeviates();
  const off = changing(system, inputs);
  return Array.from({ length: DRAWS }).flatMap(() => {
    const other = off(deviations.map((deviation) => deviation * normal()));
    try {
      const flow = solveNetwork(other.network, other.curve, other.surroundings, solution);
      return flow.status === "converged" ? [answersOf(other, flow)] : [];
    } catch (error) {
      if (error instanceof NoAnswerError || error instanceof DomainError) return [];
      throw error;
    }
  });
}

/** The answers alone: the runs of hundreds of draws would fill the memory. */
function answersOf({ network, surroundings }: System, solution: Solution): Direction {
  const { airflow, leak, suction, fanAirflow, fanPressure } = solution;
  const velocity = airflow.map((flow, run) => {
    const { side, diameter } = network.runs[run]!;
    return (side === "discharge" ? fanAirflow : flow) / sectionArea(diameter, null);
  });
  const staticSuction = suction.map((total, run) => total + 0.5 * surroundings.density * velocity[run]! ** 2);
  return { airflow, leak, staticSuction, velocity, fanAirflow, fanPressure };
}

/**
 * Half of the range that holds the middle 19 of 20 values.
 *
 * @param values at least 20
 * @returns in the unit of the values
 * @source jcgm101 probabilistically symmetric coverage interval
 */
export function halfRange(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    const above = Math.min(below + 1, sorted.length - 1);
    return sorted[below]! + (place - below) * (sorted[above]! - sorted[below]!);
  };
  return (at(1 - OUTSIDE) - at(OUTSIDE)) / 2;
}

/** The first deviates of the row are kept, since every answer begins with them; so many that they take 2 MB. */
const MOST_KEPT = 2 ** 18;
const kept: number[] = [];
let lastState = 20_261; // of the congruence, behind those

/**
 * Normal deviates, always the same row of them: a linear congruence by Park and Miller, and Box and Muller's pairs.
 *
 * @returns [-] the next one with each call
 * @source house
 */
export function normalDeviates(): () => number {
  let [count, state] = [0, 0];
  const uniform = (): number => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  return () => {
    if (count < kept.length) return kept[count++]!;
    if (count++ === kept.length) state = lastState; // here the kept ones end
    const deviate = Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    if (kept.length < MOST_KEPT) {
      kept.push(deviate);
      lastState = state;
    }
    return deviate;
  };
}
