import { gateOpening } from "../../core/leaks/gateOpening";
import { DISCHARGE_COEFFICIENT, openingLeak } from "../../core/leaks/openingLeak";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, DISCHARGE, FLOW, OPENING, SUCTION, WIDTH } from "../letters";
import { DENSITY, DIAMETER, GATE_CONDITION, PRESSURE, signature } from "../signature";

export const takes = signature(
  { condition: GATE_CONDITION, diameter: DIAMETER, suction: PRESSURE, density: DENSITY },
  "airflow",
);

/**
 * ESTIMATE of a slide gate's leak in a named condition, in cfm (SI: m³/h); no measurement is published, so measure yours.
 * @customfunction GATELEAK
 * @param condition Name from the table "gates", such as "open bare slot"
 * @param diameter Gate diameter, in (SI: mm), above 0
 * @param suction Static suction in the duct there, in.w.g. (SI: Pa), at least 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function gateleak(
  condition: unknown[][],
  diameter: unknown[][],
  suction: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [condition, diameter, suction, density, units], ({ condition, diameter, suction, density }) =>
    openingLeak(gateOpening(condition, diameter), suction, DISCHARGE_COEFFICIENT, density),
  );
}

export const guide: Guide = {
  maths: "LEAK through the gap of that condition, gap × length",
  source: "commonPractice",
  basis: "common practice",
  limits: "An estimate: no measurement of slide gates was found published. Measure yours.",
  cautions: ["power off", "tape and card"],
  also: ["blast gate", "air leak", "leakage"],
  example: { asks: "An open 6 in gate whose blade slot is bare, at 2 in.w.g.", args: ["open bare slot", "6", "2"] },
};

export const formula: Formula = {
  tex: ["Q = C_d A\\sqrt{2S/\\rho}, \\qquad A = g \\cdot (\\ell/D) \\cdot D"],
  letters: {
    Q: FLOW,
    A: OPENING,
    C_d: DISCHARGE,
    S: SUCTION,
    "\\rho": AIR,
    g: "width of the gap [m], from the table",
    "\\ell/D": "length of the gap in diameters, from the table",
    D: WIDTH,
  },
};
