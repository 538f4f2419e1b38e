import { listCoefficient } from "../../core/fittings/fittingList";
import { hoodSuction } from "../../core/hoods/hood";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, ENTRY_COEFFICIENT, SPEED } from "../letters";
import { AIRFLOW, DENSITY, DIAMETER, HOOD_ENTRY, signature } from "../signature";

export const takes = signature(
  { airflow: AIRFLOW, diameter: DIAMETER, entry: HOOD_ENTRY, density: DENSITY },
  "pressure",
);

/**
 * Static suction in the duct behind a hood or an open end, in in.w.g. (SI: Pa).
 * @customfunction HOODSUCTION
 * @param airflow Airflow into the hood, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter of the duct behind it, in (SI: mm), above 0
 * @param entry Hood entry: a name from the table "hoods", or its K
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function hoodsuction(
  airflow: unknown[][],
  diameter: unknown[][],
  entry: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [airflow, diameter, entry, density, units], ({ airflow, diameter, entry, density }) =>
    hoodSuction(airflow, diameter, listCoefficient(entry, diameter), density),
  );
}

export const guide: Guide = {
  maths: "ps = (1 + K) ρ v² / 2",
  source: "certificationExam",
  basis: "read",
  limits: "Says what the duct behind the hood feels, not whether the hood catches the dust.",
  cautions: ["capture"],
  also: ["static pressure", "hood static pressure", "machine port"],
  example: { asks: "Suction behind a hood with K 0.6 at 4005 fpm (349.5 cfm) in 4 in", args: ["349.5", "4", "0.6"] },
};

export const formula: Formula = {
  tex: ["S_h = (1 + K_h)\\,\\tfrac12\\rho V^2"],
  letters: { S_h: "static suction behind the hood [Pa]", K_h: ENTRY_COEFFICIENT, "\\rho": AIR, V: SPEED },
};
