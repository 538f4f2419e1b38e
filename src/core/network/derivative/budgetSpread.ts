import { DomainError, NoAnswerError } from "../../errors";
import { fanCurve } from "../../fan/fanCurve";
import { designPass, type Surroundings } from "../designPass";
import type { Network } from "../network";
import { changing } from "./changed";
import { halfRange, normalDeviates } from "./draws";
import { type Input, inputsOf } from "./inputs";

/** So many that half of the range of the middle 95 % is told to some 3 % of a pressure, and 9 % of an airflow that one leak decides. */
const DRAWS = 800;

/** The design pass asks no fan, and inputs are changed on one. */
const NO_FAN = fanCurve([
  { airflow: 0, pressure: 1 },
  { airflow: 1, pressure: 0 },
]);

/** What hoods ask of a fan. */
interface Asked {
  readonly airflow: number; // [m3/s]
  readonly staticPressure: number; // [Pa]
}

/** How far what hoods ask of a fan may be off. */
export interface BudgetSpread {
  readonly airflow: number; // [m3/s] half of the range that holds 19 of 20
  readonly pressure: number; // [Pa]
  readonly largest: Input | null; // what does most to the pressure; null where nothing does
  readonly share: number; // [-] its part of the variance of the pressure
}

/**
 * How far the airflow and the static pressure of a design pass may be off, by what its inputs may be off.
 *
 * Where two paths ask for nearly the same, which of them governs changes with the inputs, and the answer does not go straight with them: so it
 * is computed with drawn inputs. What does most is told by one deviation of each input up and down.
 *
 * @param network the tree
 * @param surroundings as designPass takes them
 * @param deviationOf [-] standard deviation of the logarithm of an input's factor
 * @returns half ranges, and what makes most of the pressure's
 * @throws NoAnswerError where most of the drawn systems have no budget
 * @source jcgm101 propagation of distributions; jcgm100 5.1.2 for the shares
 */
export function budgetSpread(
  network: Network,
  surroundings: Surroundings,
  deviationOf: (input: Input) => number,
): BudgetSpread {
  const isEnd = (run: number): boolean =>
    network.runs[run]!.side === "suction" && network.joining[run]!.length === 0 && network.runs[run]!.gate !== "shut";
  const inputs = inputsOf(network, isEnd).filter((input) => !input.kind.startsWith("fan") && deviationOf(input) > 0);
  const off = changing({ network, curve: NO_FAN, surroundings }, inputs);
  const asked = (logarithms: ArrayLike<number>): Asked => {
    const other = off(logarithms);
    const { airflow, staticPressure } = designPass(other.network, other.surroundings);
    return { airflow, staticPressure };
  };
  const normal = normalDeviates();
  const draws = Array.from({ length: inputs.length === 0 ? 1 : DRAWS }).flatMap(() => {
    try {
      return [asked(inputs.map((input) => deviationOf(input) * normal()))];
    } catch (error) {
      if (error instanceof DomainError) return []; // a leak as large as its duct
      throw error;
    }
  });
  if (draws.length < DRAWS / 2 && inputs.length > 0)
    throw new NoAnswerError(
      "with such errors most of these systems could not be: a leak would be as large as its duct",
    );
  const parts = inputs.map((input, place) => {
    const moved = (by: number): number =>
      asked(inputs.map((_, other) => (other === place ? by * deviationOf(input) : 0))).staticPressure;
    return { input, part: ((moved(1) - moved(-1)) / 2) ** 2 };
  });
  const all = parts.reduce((sum, { part }) => sum + part, 0);
  const most = parts.reduce<(typeof parts)[number] | null>((a, b) => (b.part > (a?.part ?? 0) ? b : a), null);
  return {
    airflow: halfRange(draws.map((one) => one.airflow)),
    pressure: halfRange(draws.map((one) => one.staticPressure)),
    largest: most?.input ?? null,
    share: most === null ? 0 : most.part / all,
  };
}
