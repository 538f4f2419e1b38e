import { requireWithin } from "../../core/errors";
import { frictionPerLength } from "../../core/friction/frictionLoss";
import { LONGEST_RUN } from "../../core/largest";
import { answerOf } from "../answer";
import { COLEBROOK, LAMINAR } from "../formulas";
import type { Formula, Guide } from "../guide";
import { FRICTION_LETTERS } from "../letters";
import { AIRFLOW, DENSITY, DIAMETER, MATERIAL, needed, signature } from "../signature";

const LENGTH = needed("length", { atLeast: 0, atMost: LONGEST_RUN });

export const takes = signature(
  { airflow: AIRFLOW, diameter: DIAMETER, length: LENGTH, material: MATERIAL, density: DENSITY },
  "pressure",
);

/**
 * Friction of a straight run of round duct, in in.w.g. (SI: Pa).
 * @customfunction RUNLOSS
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param length Length, ft (SI: m), 0 to 10,000 ft
 * @param [material] Name from the table "materials", or roughness in (SI: mm), or "smooth"; galvanised steel when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function runloss(
  airflow: unknown[][],
  diameter: unknown[][],
  length: unknown[][],
  material?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [airflow, diameter, length, material, density, units],
    ({ airflow, diameter, length, material, density }) => {
      requireWithin("length", length, LENGTH.limits, "m");
      return length * frictionPerLength(airflow, diameter, material, density);
    },
  );
}

export const guide: Guide = {
  maths: "FRICTION × length",
  source: "ashrae2009si",
  basis: "from memory",
  limits: "Without fittings; those are FITTINGLOSS.",
  cautions: ["plastic static"],
  also: ["pressure drop", "pressure loss", "static pressure loss", "hose", "pipe"],
  example: { asks: "The same over 25 ft", args: ["400", "4", "25"] },
};

export const formula: Formula = {
  tex: ["\\Delta p = L\\,\\frac{f}{D}\\,\\tfrac12\\rho V^2", LAMINAR, COLEBROOK],
  letters: FRICTION_LETTERS,
};
