import { velocityPressure } from "../../core/air/velocityPressure";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, SPEED, VELOCITY_PRESSURE } from "../letters";
import { DENSITY, signature, VELOCITY } from "../signature";

export const takes = signature({ velocity: VELOCITY, density: DENSITY }, "pressure");

/**
 * Velocity pressure of moving air, in in.w.g. (SI: Pa).
 * @customfunction VELOCITYPRESSURE
 * @param velocity Velocity, fpm (SI: m/s), at least 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function velocitypressure(velocity: unknown[][], density?: unknown[][], units?: unknown[][]): unknown[][] {
  return answerOf(takes, [velocity, density, units], ({ velocity, density }) => velocityPressure(velocity, density));
}

export const guide: Guide = {
  maths: "pv = ρ v² / 2",
  source: "ductLectureSlides",
  basis: "read",
  limits: "Follows the density: at 5000 ft it is a sixth less.",
  also: ["dynamic pressure"],
  example: { asks: "Velocity pressure at 4005 fpm", args: ["4005"] },
};

export const formula: Formula = {
  tex: ["p_v = \\tfrac12\\rho V^2"],
  letters: { p_v: VELOCITY_PRESSURE, "\\rho": AIR, V: SPEED },
};
