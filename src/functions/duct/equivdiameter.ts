import { equivalentDiameter } from "../../core/section/section";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { DIAMETER, signature } from "../signature";

export const takes = signature({ width: DIAMETER, height: DIAMETER }, "diameter");

/**
 * Round diameter with the same friction as a rectangular duct, in inches (SI: mm). Velocity takes the true area.
 * @customfunction EQUIVDIAMETER
 * @param width Inside width, in (SI: mm), above 0
 * @param height Inside height, in (SI: mm), above 0
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function equivdiameter(width: unknown[][], height: unknown[][], units?: unknown[][]): unknown[][] {
  return answerOf(takes, [width, height, units], ({ width, height }) => equivalentDiameter(width, height));
}

export const guide: Guide = {
  maths: "de = 1.30 (w h)^0.625 / (w + h)^0.25, the sides and de in one unit",
  source: "ashrae2009si",
  basis: "from memory",
  limits: "Equal friction at equal airflow. For the velocity take the true area.",
  also: ["rectangular duct", "square duct"],
  example: { asks: "Round duct with the friction of 12 by 8 in", args: ["12", "8"] },
};

export const formula: Formula = {
  tex: ["D_e = 1.30\\,\\frac{(WH)^{0.625}}{(W+H)^{0.25}}"],
  letters: { D_e: "equivalent round diameter [m]", W: "width [m]", H: "height [m]" },
};
