import { velocityPressure } from "../../core/air/velocityPressure";
import { requireWithin } from "../../core/errors";
import { coefficientInAir } from "../../core/fittings/slowAir";
import { reynoldsNumber } from "../../core/friction/reynoldsNumber";
import { meanVelocity, sectionArea } from "../../core/section/section";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, LOSS_COEFFICIENT, SPEED } from "../letters";
import { AIRFLOW, DENSITY, DIAMETER, FITTINGS, FROM_ZERO, optional, signature } from "../signature";

const COUNT = optional("ratio", FROM_ZERO, 1, "none");

export const takes = signature(
  { airflow: AIRFLOW, diameter: DIAMETER, fitting: FITTINGS, count: COUNT, density: DENSITY },
  "pressure",
);

/**
 * Loss of fittings in a round duct, in in.w.g. (SI: Pa).
 * @customfunction FITTINGLOSS
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter of the fitting's own duct, in (SI: mm), above 0
 * @param fitting A name, a K, or a list such as "elbow 1.5 x2; branch 30"
 * @param [count] How many of them, at least 0; 1 when left out, a 0 or blank cell is none
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function fittingloss(
  airflow: unknown[][],
  diameter: unknown[][],
  fitting: unknown[][],
  count?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [airflow, diameter, fitting, count, density, units],
    ({ airflow, diameter, fitting, count, density }) => {
      requireWithin("count", count, COUNT.limits, "");
      const pressure = velocityPressure(meanVelocity(airflow, sectionArea(diameter, null)), density);
      return count * coefficientInAir(fitting, diameter, reynoldsNumber(airflow, diameter, density)) * pressure;
    },
  );
}

export const guide: Guide = {
  maths: "Δp = K ρ v² / 2, summed over the list",
  source: "ashrae2009si",
  basis: "read",
  limits:
    "Two fittings close together lose more or less than their sum; none of our tables says how much. A branch loses by its angle alone here; JUNCTIONLOSS takes the airflows and sizes. A mitre loses up to 1.4 times its K in slow air (Reynolds number below 140,000), which is counted in.",
  also: ["pressure drop", "pressure loss", "static pressure loss", "elbow", "bend", "wye", "branch"],
  example: { asks: "Two elbows with 400 cfm in 4 in", args: ["400", "4", "elbow 1.5 x2"] },
};

export const formula: Formula = {
  tex: ["\\Delta p = n \\sum K \\cdot \\tfrac12\\rho V^2"],
  letters: { n: "count [-]", K: LOSS_COEFFICIENT, "\\rho": AIR, V: SPEED },
};
