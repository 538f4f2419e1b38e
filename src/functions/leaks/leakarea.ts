import { COEFFICIENT_LIMITS, DISCHARGE_COEFFICIENT, leakArea } from "../../core/leaks/openingLeak";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, DISCHARGE, FLOW, OPENING, SUCTION } from "../letters";
import { ABOVE_ZERO, AIRFLOW, DENSITY, needed, optional, signature } from "../signature";

export const takes = signature(
  {
    airflow: AIRFLOW,
    suction: needed("pressure", ABOVE_ZERO),
    coefficient: optional("ratio", COEFFICIENT_LIMITS, DISCHARGE_COEFFICIENT),
    density: DENSITY,
  },
  "openArea",
);

/**
 * Effective leakage area of a measured leak: the opening that would pass it, in in² (SI: mm²).
 * @customfunction LEAKAREA
 * @param airflow Measured leak, cfm (SI: m³/h), at least 0
 * @param suction Static suction there while measuring, in.w.g. (SI: Pa), above 0
 * @param [coefficient] Discharge coefficient, above 0 to 1; 0.6 when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns area
 */
export function leakarea(
  airflow: unknown[][],
  suction: unknown[][],
  coefficient?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [airflow, suction, coefficient, density, units],
    ({ airflow, suction, coefficient, density }) => leakArea(airflow, suction, coefficient, density),
  );
}

export const guide: Guide = {
  maths: "A = Q / (C √(2 p / ρ))",
  source: "commonPractice",
  basis: "common practice",
  limits: "Read the suction while you measure, at the leak.",
  cautions: ["power off", "vane over a slot", "tape and card"],
  also: ["air leak", "leakage"],
  example: { asks: "The opening that passes 28.9 cfm at 3 in.w.g.", args: ["28.9", "3"] },
};

export const formula: Formula = {
  tex: ["A = \\frac{Q}{C_d}\\sqrt{\\rho/(2S)}"],
  letters: { A: OPENING, C_d: DISCHARGE, Q: FLOW, S: SUCTION, "\\rho": AIR },
};
