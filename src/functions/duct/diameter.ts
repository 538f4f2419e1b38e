import { diameterForVelocity } from "../../core/section/section";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { FLOW, SPEED, WIDTH } from "../letters";
import { ABOVE_ZERO, needed, signature } from "../signature";

export const takes = signature(
  { airflow: needed("airflow", ABOVE_ZERO), velocity: needed("velocity", ABOVE_ZERO) },
  "diameter",
);

/**
 * Exact round diameter that carries an airflow at a velocity, in inches (SI: mm). TRADESIZE gives the stock size.
 * @customfunction DIAMETER
 * @param airflow Airflow, cfm (SI: m³/h), above 0
 * @param velocity Wanted velocity, fpm (SI: m/s), above 0
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function diameter(airflow: unknown[][], velocity: unknown[][], units?: unknown[][]): unknown[][] {
  return answerOf(takes, [airflow, velocity, units], ({ airflow, velocity }) => diameterForVelocity(airflow, velocity));
}

export const guide: Guide = {
  maths: "d = √(4 Q / (π v))",
  source: "geometry",
  basis: "",
  limits: "An exact size that no shop sells: TRADESIZE takes it to a stock size.",
  also: ["duct size", "pipe size"],
  example: { asks: "Duct in which 400 cfm flows at 4000 fpm", args: ["400", "4000"] },
};

export const formula: Formula = {
  tex: ["D = \\sqrt{4Q/(\\pi V)}"],
  letters: { D: WIDTH, Q: FLOW, V: SPEED },
};
