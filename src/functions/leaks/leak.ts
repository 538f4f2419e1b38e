import { COEFFICIENT_LIMITS, DISCHARGE_COEFFICIENT, openingLeak } from "../../core/leaks/openingLeak";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, DISCHARGE, FLOW, OPENING, SUCTION } from "../letters";
import { DENSITY, FROM_ZERO, needed, optional, PRESSURE, signature } from "../signature";

export const takes = signature(
  {
    area: needed("openArea", FROM_ZERO),
    suction: PRESSURE,
    coefficient: optional("ratio", COEFFICIENT_LIMITS, DISCHARGE_COEFFICIENT),
    density: DENSITY,
  },
  "airflow",
);

/**
 * Airflow through an opening under a suction, in cfm (SI: m³/h).
 * @customfunction LEAK
 * @param area Open area, in² (SI: mm²), at least 0
 * @param suction Static suction in the duct, in.w.g. (SI: Pa), at least 0
 * @param [coefficient] Discharge coefficient, above 0 to 1; 0.6 when left out (crack, sharp-edged hole)
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function leak(
  area: unknown[][],
  suction: unknown[][],
  coefficient?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [area, suction, coefficient, density, units], ({ area, suction, coefficient, density }) =>
    openingLeak(area, suction, coefficient, density),
  );
}

export const guide: Guide = {
  maths: "Q = C A √(2 p / ρ), C = 0.6 unless given",
  source: "commonPractice",
  basis: "common practice",
  limits:
    "0.6 is a sharp-edged orifice plate's (ISO 5167-2: 0.60); that a crack has it too is common practice, no source. Its area is hard to know: LEAKAREA takes a measured leak.",
  cautions: ["power off", "tape and card"],
  also: ["air leak", "slot", "hole"],
  example: { asks: "A hole of 1 in² at 3 in.w.g.", args: ["1", "3"] },
};

export const formula: Formula = {
  tex: ["Q = C_d A\\sqrt{2S/\\rho}"],
  letters: { Q: FLOW, A: OPENING, C_d: DISCHARGE, S: SUCTION, "\\rho": AIR },
};
