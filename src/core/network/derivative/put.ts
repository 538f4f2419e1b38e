import type { Input } from "./inputs";
import { atJunctions, touchedBySize } from "./junctionChanges";
import type { Straight } from "./linearise";
import type { LossChanges } from "./lossChanges";

/** What a factor puts into the equations while nothing flows otherwise. */
export interface Put {
  readonly where: readonly number[] | null; // the suction runs into whose equations it puts something; null: all of them
  readonly loss: (run: number) => number; // [Pa] of a suction run
  readonly atJunction: (run: number) => number; // [Pa] of a run where it joins another
  readonly ends: (run: number) => number; // logarithm of an open end's resistance
  readonly openings: (run: number) => number; // logarithm of a leak's area over its duct's
  readonly perVelocity: (run: number) => number; // logarithm of r, p_v = r Q^2
  readonly fan: number; // [Pa] of the fan's pressure
  readonly afterFan: number; // [Pa] of the losses after it
}

const NONE = (): number => 0;

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

/** A fan's factor puts nothing into any run; a diameter changes what others lose at its junctions. */
function whereOf(straight: Straight, { kind, run }: Input): Put["where"] {
  if (kind === "fan pressure" || kind === "fan speed") return [];
  if (run < 0) return null;
  return kind === "diameter" ? touchedBySize(straight, run) : [run];
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
  const { discharge } = system.network;
  const isAfter = run >= 0 && discharge.includes(run);
  const none: Put = {
    where: whereOf(straight, input),
    loss: NONE,
    ends: NONE,
    openings: NONE,
    perVelocity: NONE,
    atJunction: atJunctions(straight, input),
    fan: 0,
    afterFan: 0,
  };
  const ofAll = (key: keyof LossChanges): Pick<Put, "loss" | "afterFan"> => ({
    loss: (index) => losses[index]![key],
    afterFan: discharge.reduce((sum, index) => sum + (losses[index]?.[key] ?? 0), 0),
  });
  const ofOne = (key: keyof LossChanges): Pick<Put, "loss" | "afterFan"> => ({
    loss: (index) => (index === run ? losses[index]![key] : 0),
    afterFan: isAfter ? (losses[run]?.[key] ?? 0) : 0,
  });
  const only = (value: number) => (index: number) => (index === run ? value : 0);
  switch (kind) {
    case "fan pressure":
      return { ...none, fan: curve.pressure };
    case "fan speed": // p = s^2 f(Q / s)
      return { ...none, fan: 2 * curve.pressure - solution.fanAirflow * curve.slope };
    case "pipe":
      return { ...none, ...ofAll("byPipe") };
    case "hose":
      return { ...none, ...ofAll("byHose") };
    case "density":
      return { ...none, ...ofAll("byDensity"), perVelocity: () => 1, fan: curve.pressure };
    case "fittings":
      return { ...none, ...ofOne("byFittings") };
    case "junction":
      return none; // all of it is among the losses at junctions
    case "device":
      return { ...none, ...ofOne("byDevice") };
    case "entry":
      return { ...none, ends: only(1) };
    case "leak":
      return { ...none, openings: only(1) };
    case "diameter":
      return { ...none, ...ofOne("byDiameter"), perVelocity: only(-4), openings: only(-2) };
  }
}
