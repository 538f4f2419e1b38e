import type { Unknown } from "../../core/network/calibration/unknowns";
import type { Calibration } from "./calibration";

/** The factor of an input: of a run, where it is a run's own, and of a leak in a state of its gate. 1 where readings tell nothing. */
export type FactorOf = (kind: Unknown["kind"], run?: number, gate?: Unknown["gate"]) => number;

export function factorsOf({ model, judged }: Calibration): FactorOf {
  const keyOf = (kind: string, run: number, gate: string | null): string => `${kind} ${run} ${gate ?? ""}`;
  const factors = new Map(
    model.unknowns.map(({ kind, run, gate }, place) => [
      keyOf(kind, run, gate),
      Math.exp(judged.fit.state.logarithms[place]!),
    ]),
  );
  return (kind, run = -1, gate = null) => factors.get(keyOf(kind, run, gate)) ?? 1;
}
