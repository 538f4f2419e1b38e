import { requireWithin } from "../../core/errors";
import { sectionArea } from "../../core/section/section";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { FLOW, SECTION, SPEED } from "../letters";
import { DIAMETER, HEIGHT, signature, VELOCITY } from "../signature";

export const takes = signature({ velocity: VELOCITY, diameter: DIAMETER, height: HEIGHT }, "airflow");

/**
 * Airflow that a mean velocity carries through a duct, in cfm (SI: m³/h).
 * @customfunction AIRFLOW
 * @param velocity Mean velocity, fpm (SI: m/s), at least 0
 * @param diameter Inside diameter, or width of a rectangle, in (SI: mm), above 0
 * @param [height] Height of a rectangular duct, in (SI: mm); leave out for a round one
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function airflow(
  velocity: unknown[][],
  diameter: unknown[][],
  height?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [velocity, diameter, height, units], ({ velocity, diameter, height }) => {
    requireWithin("velocity", velocity, VELOCITY.limits, "m/s");
    return velocity * sectionArea(diameter, height);
  });
}

export const guide: Guide = {
  maths: "Q = v A",
  source: "geometry",
  basis: "",
  limits: "Takes a mean velocity. One reading in the middle is too high: use TRAVERSE.",
  also: ["cfm", "air volume", "volume flow"],
  example: { asks: "Airflow of 4000 fpm in a 4 in duct", args: ["4000", "4"] },
};

export const formula: Formula = {
  tex: ["Q = V A"],
  letters: { Q: FLOW, V: SPEED, A: SECTION },
};
