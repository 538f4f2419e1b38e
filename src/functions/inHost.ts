import type { UnitSystem } from "../reference/quantities";
import { readUnits } from "./arguments";
import { type Answered, failureOf, NOT_FINITE, raise } from "./cellErrors";

/**
 * Runs a whole-table function in the call's units: its refusals become the host's errors, and its answer is never without
 * a value.
 */
export function inHost(units: unknown, compute: (system: UnitSystem) => Answered[][]): Answered[][] {
  let system: UnitSystem = "IP";
  let answer: Answered[][];
  try {
    system = readUnits(units);
    answer = compute(system);
  } catch (error) {
    return raise(failureOf(error, system, () => undefined));
  }
  if (answer.some((row) => row.some((cell) => typeof cell === "number" && !Number.isFinite(cell)))) {
    return raise(NOT_FINITE);
  }
  return answer;
}
