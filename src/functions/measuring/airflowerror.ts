import { airflowError, PERCENT_LIMITS, READING_LIMITS } from "../../core/measuring/airflowError";
import { usualErrors } from "../../reference/usualErrors";
import { NONE } from "../../reference/zeroWords";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { SECTION, SPEED, WIDTH } from "../letters";
import { DIAMETER, FROM_ZERO, needed, optional, signature } from "../signature";

export const takes = signature(
  {
    velocity: needed("velocity", READING_LIMITS),
    diameter: DIAMETER,
    percent: optional("ratio", PERCENT_LIMITS, 100 * usualErrors.percent, NONE),
    floor: optional("velocity", FROM_ZERO, usualErrors.floor, NONE),
    diametererror: optional("diameter", FROM_ZERO, usualErrors.diameter, NONE),
  },
  "airflow",
);

/**
 * Plus or minus of an airflow from a velocity reading, in cfm (SI: m³/h): root sum of squares of its three errors.
 * @customfunction AIRFLOWERROR
 * @param velocity Velocity as read, fpm (SI: m/s), 0 to 11811 fpm
 * @param diameter Inside diameter as measured, in (SI: mm), above 0
 * @param [percent] Meter's ± percent of its reading, 3 for 3 %; 3 when left out (vane, from memory), "none" for none
 * @param [floor] Meter's ± whatever it reads, fpm (SI: m/s); 0.2 m/s when left out (vane, from memory), "none" for none
 * @param [diametererror] ± of the diameter, in (SI: mm); 1 mm when left out (common practice), "none" for none
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function airflowerror(
  velocity: unknown[][],
  diameter: unknown[][],
  percent?: unknown[][],
  floor?: unknown[][],
  diametererror?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [velocity, diameter, percent, floor, diametererror, units],
    ({ velocity, diameter, percent, floor, diametererror }) =>
      airflowError(velocity, diameter, percent, floor, diametererror),
  );
}

export const guide: Guide = {
  maths: "δQ = Q √((δv / v)² + (2 δd / d)²), δv² = (percent × v)² + floor²",
  source: "doebelinMeasurement",
  basis: "second-hand",
  limits: "Independent errors of the instrument and the tape. A badly chosen place is no part of it.",
  cautions: ["no measurement"],
  also: ["accuracy", "uncertainty", "anemometer"],
  example: { asks: "4000 fpm in 4 in, meter 3 % and no floor, tape exact", args: ["4000", "4", "3", "none", "none"] },
};

export const formula: Formula = {
  tex: ["\\delta Q = A\\sqrt{(aV/100)^2 + b^2 + (2V\\,\\delta D/D)^2}"],
  letters: {
    A: SECTION,
    a: "meter's ± percent of its reading",
    b: "meter's ± whatever it reads [m/s]",
    "\\delta D": "± of the diameter [m]",
    V: SPEED,
    D: WIDTH,
  },
};
