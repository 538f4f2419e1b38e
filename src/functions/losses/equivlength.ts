import { coefficientInAir } from "../../core/fittings/slowAir";
import { equivalentLength } from "../../core/friction/frictionLoss";
import { reynoldsNumber } from "../../core/friction/reynoldsNumber";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { FRICTION_FACTOR, LOSS_COEFFICIENT, VELOCITY_PRESSURE, WIDTH } from "../letters";
import { ABOVE_ZERO, DENSITY, DIAMETER, FITTINGS, MATERIAL, needed, signature } from "../signature";

export const takes = signature(
  {
    fitting: FITTINGS,
    airflow: needed("airflow", ABOVE_ZERO),
    diameter: DIAMETER,
    material: MATERIAL,
    density: DENSITY,
  },
  "length",
);

/**
 * Length of straight duct with the same loss as a fitting, in ft (SI: m).
 * @customfunction EQUIVLENGTH
 * @param fitting A name, a K, or a list such as "elbow 1.5 x2; branch 30"
 * @param airflow Airflow, cfm (SI: m³/h), above 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param [material] Name from the table "materials", or roughness in (SI: mm), or "smooth"; galvanised steel when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns length
 */
export function equivlength(
  fitting: unknown[][],
  airflow: unknown[][],
  diameter: unknown[][],
  material?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [fitting, airflow, diameter, material, density, units],
    ({ fitting, airflow, diameter, material, density }) => {
      const coefficient = coefficientInAir(fitting, diameter, reynoldsNumber(airflow, diameter, density));
      return equivalentLength(coefficient, airflow, diameter, material, density);
    },
  );
}

export const guide: Guide = {
  maths: "L = K d / f",
  source: "ashrae2009si",
  basis: "from memory",
  limits: "Holds for this airflow, size and wall only, so it is no constant of the fitting.",
  also: ["equivalent length", "elbow", "bend"],
  example: { asks: "Straight duct as costly as one such elbow", args: ["elbow 1.5", "400", "4"] },
};

export const formula: Formula = {
  tex: ["L_e = \\frac{K\\,p_v}{\\Delta p/L} = \\frac{K D}{f}"],
  letters: {
    L_e: "length of straight duct [m]",
    K: LOSS_COEFFICIENT,
    p_v: VELOCITY_PRESSURE,
    D: WIDTH,
    f: FRICTION_FACTOR,
  },
};
