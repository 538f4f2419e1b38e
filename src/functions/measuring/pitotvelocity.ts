import { velocityFromPressure } from "../../core/air/velocityPressure";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, SPEED, VELOCITY_PRESSURE } from "../letters";
import { DENSITY, PRESSURE, signature } from "../signature";

export const takes = signature({ pressure: PRESSURE, density: DENSITY }, "velocity");

/**
 * Velocity that has a velocity pressure, as a Pitot tube reads it, in fpm (SI: m/s).
 * @customfunction PITOTVELOCITY
 * @param pressure Velocity pressure, in.w.g. (SI: Pa), at least 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns velocity
 */
export function pitotvelocity(pressure: unknown[][], density?: unknown[][], units?: unknown[][]): unknown[][] {
  return answerOf(takes, [pressure, density, units], ({ pressure, density }) =>
    velocityFromPressure(pressure, density),
  );
}

export const guide: Guide = {
  maths: "v = √(2 pv / ρ)",
  source: "ductLectureSlides",
  basis: "read",
  limits: "Below about 600 fpm the pressure is too small to read, a figure from memory.",
  cautions: ["power off", "fan inlet guard", "ladders"],
  also: ["pitot tube", "manometer"],
  example: { asks: "Velocity where the tube reads 1 in.w.g.", args: ["1"] },
};

export const formula: Formula = {
  tex: ["V = \\sqrt{2p_v/\\rho}"],
  letters: { V: SPEED, p_v: VELOCITY_PRESSURE, "\\rho": AIR },
};
