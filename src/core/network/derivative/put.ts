import type { Input, InputKind } from "./inputs";
import { type JunctionChanges, junctionChanges } from "./junctionChanges";
import type { Straight } from "./linearise";
import type { LossChanges } from "./lossChanges";

/** What a factor puts into the equations while nothing flows otherwise. */
export interface Put extends JunctionChanges {
  readonly where: readonly number[] | null; // the suction runs into whose equations it puts something; null: all of them
  readonly loss: (run: number) => number; // [Pa] of a suction run
  readonly ends: (run: number) => number; // logarithm of an open end's resistance
  readonly openings: (run: number) => number; // logarithm of a leak's area over its duct's
  readonly perVelocity: (run: number) => number; // logarithm of r, p_v = r Q^2
  readonly fan: number; // [Pa] of the fan's pressure
  readonly afterFan: number; // [Pa] of the losses after it
}

/**
 * What comes in at an open end at a fixed suction, P = R S^2.
 *
 * @returns [m3/s] by the factor's logarithm
 * @source house
 */
export const endPut = ({ solution }: Straight, index: number, { ends, perVelocity }: Put): number =>
  (-(solution.airflow[index]! - solution.leak[index]!) / 2) * (ends(index) + perVelocity(index));

/**
 * What leaks at a fixed state, L^2 = g^2 (P / r + Q^2).
 *
 * @returns [m3/s] by the factor's logarithm
 * @source house
 */
export function leakPut({ solution, perVelocity }: Straight, index: number, put: Put): number {
  const [q, l, p] = [solution.airflow[index]!, solution.leak[index]!, solution.suction[index]!];
  if (l === 0) return 0;
  return l * put.openings(index) - ((l / 2) * p * put.perVelocity(index)) / (p + perVelocity[index]! * q * q);
}

/**
 * What an input's small change puts into the equations.
 *
 * @param straight the solved network made straight
 * @param input the factor
 * @returns by the factor's logarithm
 * @source house
 */
export function putBy(straight: Straight, input: Input): Put {
  const { kind, run } = input;
  const { system, losses, curve, solution } = straight;
  const isIts = (index: number): boolean => run < 0 || index === run;
  const own = (value: number) => (index: number) => (isIts(index) ? value : 0);
  const key = LOSSES[kind];
  const lossOf = (index: number): number => (key !== undefined && isIts(index) ? (losses[index]?.[key] ?? 0) : 0);
  const { atJunction, pushes } = junctionChanges(straight, input);
  const isSize = kind === "diameter";
  return {
    where: kind.startsWith("fan") ? [] : run < 0 ? null : [...new Set([run, ...atJunction.keys()])],
    loss: lossOf,
    atJunction,
    pushes,
    ends: own(kind === "entry" ? 1 : 0),
    openings: own(kind === "leak" ? 1 : isSize ? -2 : 0),
    perVelocity: own(kind === "density" ? 1 : isSize ? -4 : 0),
    fan:
      kind === "fan speed" // p = s^2 f(Q / s)
        ? 2 * curve.pressure - solution.fanAirflow * curve.slope
        : kind === "fan pressure" || kind === "density"
          ? curve.pressure
          : 0,
    afterFan: system.network.discharge.reduce((sum, index) => sum + lossOf(index), 0),
  };
}

/** Which of a run's losses a factor changes. */
const LOSSES: Partial<Record<InputKind, keyof LossChanges>> = {
  pipe: "byPipe",
  hose: "byHose",
  density: "byDensity",
  fittings: "byFittings",
  device: "byDevice",
  diameter: "byDiameter",
};
