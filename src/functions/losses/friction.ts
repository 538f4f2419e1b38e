import { frictionPerLength } from "../../core/friction/frictionLoss";
import { answerOf } from "../answer";
import { COLEBROOK, LAMINAR } from "../formulas";
import type { Formula, Guide } from "../guide";
import { FRICTION_LETTERS } from "../letters";
import { AIRFLOW, DENSITY, DIAMETER, MATERIAL, signature } from "../signature";

export const takes = signature(
  { airflow: AIRFLOW, diameter: DIAMETER, material: MATERIAL, density: DENSITY },
  "lossPerLength",
);

/**
 * Friction of a straight round duct, in in.w.g. per 100 ft (SI: Pa per m), by Colebrook-White.
 * @customfunction FRICTION
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param [material] Name from the table "materials", or roughness in (SI: mm), or "smooth"; galvanised steel when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns loss per length
 */
export function friction(
  airflow: unknown[][],
  diameter: unknown[][],
  material?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [airflow, diameter, material, density, units], ({ airflow, diameter, material, density }) =>
    frictionPerLength(airflow, diameter, material, density),
  );
}

export const guide: Guide = {
  maths: "Δp / L = f ρ v² / (2 d), with f by Colebrook and White",
  source: "colebrook1939",
  basis: "second-hand",
  limits: "Straight round duct, clean: a wall that dust has coated is rougher than its row.",
  cautions: ["plastic static"],
  also: ["pressure drop", "pressure loss", "static pressure loss", "hose", "pipe"],
  example: { asks: "Friction of 400 cfm in 4 in galvanised duct", args: ["400", "4"] },
};

export const formula: Formula = {
  tex: [
    "\\frac{\\Delta p}{L} = \\frac{f}{D}\\,\\tfrac12\\rho V^2, \\qquad \\mathrm{Re} = \\frac{\\rho V D}{\\mu}",
    LAMINAR,
    COLEBROOK,
  ],
  letters: FRICTION_LETTERS,
};
