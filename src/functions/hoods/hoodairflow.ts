import { listCoefficient } from "../../core/fittings/fittingList";
import { hoodAirflow } from "../../core/hoods/hood";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, ENTRY_COEFFICIENT, FLOW } from "../letters";
import { DENSITY, DIAMETER, HOOD_ENTRY, PRESSURE, signature } from "../signature";

export const takes = signature(
  { suction: PRESSURE, diameter: DIAMETER, entry: HOOD_ENTRY, density: DENSITY },
  "airflow",
);

/**
 * Airflow into a hood from the static suction measured behind it, in cfm (SI: m³/h).
 * @customfunction HOODAIRFLOW
 * @param suction Static suction about three diameters behind the hood, in.w.g. (SI: Pa), at least 0
 * @param diameter Inside diameter of the duct there, in (SI: mm), above 0
 * @param entry Hood entry: a name from the table "hoods", or its K
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function hoodairflow(
  suction: unknown[][],
  diameter: unknown[][],
  entry: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [suction, diameter, entry, density, units], ({ suction, diameter, entry, density }) =>
    hoodAirflow(suction, diameter, listCoefficient(entry, diameter), density),
  );
}

export const guide: Guide = {
  maths: "Q = A √(2 ps / (ρ (1 + K)))",
  source: "certificationExam",
  basis: "read",
  limits:
    "Tap the static pressure about three diameters behind the hood, in a straight piece without leaks before it; the three are from memory.",
  cautions: ["power off", "fan inlet guard", "ladders"],
  also: ["static pressure", "static tap", "measure a hood"],
  example: { asks: "Airflow where such a hood reads 1.6 in.w.g.", args: ["1.6", "4", "0.6"] },
};

export const formula: Formula = {
  tex: ["Q = A\\,C_e\\sqrt{2S_h/\\rho}, \\qquad C_e = \\frac{1}{\\sqrt{1+K_h}}"],
  letters: {
    Q: FLOW,
    A: "cross-section of the duct [m²]",
    C_e: "coefficient of entry [-]",
    S_h: "static suction behind the hood [Pa]",
    K_h: ENTRY_COEFFICIENT,
    "\\rho": AIR,
  },
};
