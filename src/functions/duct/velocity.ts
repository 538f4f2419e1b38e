import { meanVelocity, sectionArea } from "../../core/section/section";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { FLOW, SECTION, SPEED } from "../letters";
import { AIRFLOW, DIAMETER, HEIGHT, signature } from "../signature";

export const takes = signature({ airflow: AIRFLOW, diameter: DIAMETER, height: HEIGHT }, "velocity");

/**
 * Mean velocity of an airflow in a duct, in fpm (SI: m/s).
 * @customfunction VELOCITY
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, or width of a rectangle, in (SI: mm), above 0
 * @param [height] Height of a rectangular duct, in (SI: mm); leave out for a round one
 * @param [units] "IP" (default) or "SI"
 * @returns velocity
 */
export function velocity(
  airflow: unknown[][],
  diameter: unknown[][],
  height?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [airflow, diameter, height, units], ({ airflow, diameter, height }) =>
    meanVelocity(airflow, sectionArea(diameter, height)),
  );
}

export const guide: Guide = {
  maths: "v = Q / A",
  source: "geometry",
  basis: "",
  limits: "The mean over the whole cross-section: in the middle of the duct the air is faster.",
  also: ["air speed", "fpm", "transport velocity"],
  example: { asks: "Velocity of 350 cfm in a 4 in duct", args: ["350", "4"] },
};

export const formula: Formula = {
  tex: ["V = \\frac{Q}{A}"],
  letters: { V: SPEED, Q: FLOW, A: SECTION },
};
