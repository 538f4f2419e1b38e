import { reynoldsNumber } from "../../core/friction/reynoldsNumber";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, FLOW, SPEED, WIDTH } from "../letters";
import { AIRFLOW, DENSITY, DIAMETER, signature } from "../signature";

export const takes = signature({ airflow: AIRFLOW, diameter: DIAMETER, density: DENSITY }, "ratio");

/**
 * Reynolds number of the air in a round duct, a pure number (no unit): below 2000 in layers, from 4000 on turbulent.
 * @customfunction REYNOLDS
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI": of the arguments
 * @returns Reynolds number
 */
export function reynolds(
  airflow: unknown[][],
  diameter: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [airflow, diameter, density, units], ({ airflow, diameter, density }) =>
    reynoldsNumber(airflow, diameter, density),
  );
}

export const guide: Guide = {
  maths: "Re = ρ v d / µ, µ = 1.819e-5 Pa s",
  source: "ashrae2009si",
  basis: "from memory",
  limits:
    "The viscosity is that of air at 70 °F, held constant as everywhere here. Between 2000 and 4000 the flow may be of either kind.",
  also: ["turbulence"],
  example: { asks: "Reynolds number of 400 cfm in a 4 in duct", args: ["400", "4"] },
};

export const formula: Formula = {
  tex: ["\\mathrm{Re} = \\frac{\\rho V D}{\\mu} = \\frac{4\\rho Q}{\\pi D \\mu}"],
  letters: {
    "\\rho": AIR,
    V: SPEED,
    D: WIDTH,
    Q: FLOW,
    "\\mu": "viscosity of air, 1.819e-5 Pa s",
  },
};
