import { constantOfClass, constantOfEuropeanClass, seamLeak } from "../../core/leaks/seamLeak";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { FROM_ZERO, LEAKAGE_CLASS, needed, PRESSURE, signature } from "../signature";

export const takes = signature(
  { class: LEAKAGE_CLASS, surface: needed("area", FROM_ZERO), pressure: PRESSURE },
  "airflow",
);

/**
 * Leak of a duct's seams and joints by leakage class, in cfm (SI: m³/h).
 * @customfunction SEAMLEAK
 * @param classOfDuct Class number (cfm per 100 ft² at 1 in.w.g.), or an EN letter A to D
 * @param surface Surface of the duct wall, ft² (SI: m²), at least 0
 * @param pressure Static suction or pressure, in.w.g. (SI: Pa), at least 0
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function seamleak(
  classOfDuct: unknown[][],
  surface: unknown[][],
  pressure: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [classOfDuct, surface, pressure, units], ({ class: read, surface, pressure }) =>
    seamLeak((read.isEuropean ? constantOfEuropeanClass : constantOfClass)(read.value), surface, pressure),
  );
}

export const guide: Guide = {
  maths: "Q = class × surface × p^0.65",
  source: "smacna1985",
  basis: "second-hand",
  limits: "For whole ducts built to a class; a home-made joint has none.",
  also: ["duct leakage", "leakage class"],
  example: { asks: "100 ft² of class 6 duct at 2 in.w.g.", args: ["6", "100", "2"] },
};

export const formula: Formula = {
  tex: [
    "Q = C_L\\,\\frac{A_s}{100}\\,p^{0.65} \\quad\\text{(cfm, ft}^2\\text{, in.w.g.)}",
    "Q = c\\,A_s\\,p^{0.65} \\quad\\text{(L/s, m}^2\\text{, Pa)}",
  ],
  letters: {
    C_L: "leakage class",
    c: "coefficient of the EN letter",
    A_s: "surface of the duct",
    p: "pressure or suction in it",
  },
};
