import { LEAK_EXPONENT_LIMITS, leakAtSuction } from "../../core/leaks/openingLeak";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { ABOVE_ZERO, FROM_ZERO, needed, optional, withoutUnits } from "../signature";

export const takes = withoutUnits({
  airflow: needed("ratio", FROM_ZERO),
  suction: needed("ratio", ABOVE_ZERO),
  newsuction: needed("ratio", FROM_ZERO),
  exponent: optional("ratio", LEAK_EXPONENT_LIMITS, 0.5),
});

/**
 * A measured leak at another suction, in the airflow's own unit (cfm or m³/h).
 * @customfunction LEAKAT
 * @param airflow Measured leak, any unit, at least 0
 * @param suction Suction while measuring, any unit, above 0
 * @param newsuction The other suction, in the same unit, at least 0
 * @param [exponent] 0.5 for an opening (default), 0.65 for seams; 0.5 to 1
 * @returns airflow
 */
export function leakat(
  airflow: unknown[][],
  suction: unknown[][],
  newsuction: unknown[][],
  exponent?: unknown[][],
): unknown[][] {
  return answerOf(takes, [airflow, suction, newsuction, exponent], ({ airflow, suction, newsuction, exponent }) =>
    leakAtSuction(airflow, suction, newsuction, exponent),
  );
}

export const guide: Guide = {
  maths: "Q₂ = Q₁ (p₂ / p₁)ⁿ, n = 0.5 for an opening, 0.65 for seams",
  source: "smacna1985",
  basis: "second-hand",
  limits: "Holds while the opening stays the same: suction can open a flap or close a blade.",
  cautions: ["power off", "tape and card"],
  also: ["air leak", "leakage"],
  example: { asks: "30 cfm at 2 in.w.g., now at 4 in.w.g.", args: ["30", "2", "4"] },
};

export const formula: Formula = {
  tex: ["Q_2 = Q_1\\left(\\frac{S_2}{S_1}\\right)^n"],
  letters: {
    Q_1: "leak as measured",
    S_1: "suction while measuring",
    S_2: "the other suction",
    n: "0.5 for an opening, 0.65 for seams",
  },
};
