import { singleCoefficient } from "../../core/fittings/singleCoefficient";
import { unitOf } from "../../reference/quantities";
import { DEGREES, SHARP } from "../../reference/zeroWords";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { LOSS_COEFFICIENT, VELOCITY_PRESSURE } from "../letters";
import { beside, FITTINGS, signature } from "../signature";

export const takes = signature(
  { fitting: FITTINGS, shape: beside("ratio", SHARP), angle: beside("angle", DEGREES) },
  "ratio",
);

/**
 * Loss coefficient K of a fitting or hood entry, a pure number (no unit): loss = K x velocity pressure.
 * @customfunction LOSSCOEFFICIENT
 * @param fitting Name from the tables "fittings" or "hoods", or a list such as "elbow 1.5 x2; branch 30"
 * @param [shape] r/D, diameter (in; SI: mm) or area ratio, as the table says; the usual one when left out, "sharp" for 0
 * @param [angle] Angle in degrees; the usual one when left out, "0°" for 0
 * @param [units] "IP" (default) or "SI": the unit of a shape that is a diameter
 * @returns coefficient
 */
export function losscoefficient(
  fitting: unknown[][],
  shape?: unknown[][],
  angle?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [fitting, shape, angle, units], ({ fitting, shape, angle }, system) =>
    singleCoefficient(fitting, shape, angle, unitOf("diameter", system).factor),
  );
}

export const guide: Guide = {
  maths: "K from a printed table, straight lines between its points",
  source: "smacna4th",
  basis: "read",
  limits:
    "Refuses what lies outside its table. A branch has K by its angle alone here, whatever flows; JUNCTIONLOSS takes the airflows and sizes. Books differ, and a K does not show how it is known: the view Tables and REFERENCE say it, Check names those from memory.",
  also: ["K factor", "elbow", "bend", "wye", "branch", "transition"],
  example: { asks: "K of an elbow bent to 1.5 diameters", args: ["elbow", "1.5"] },
};

export const formula: Formula = {
  tex: ["\\Delta p = K\\,p_v, \\qquad K = K_1 + (K_2 - K_1)\\frac{x - x_1}{x_2 - x_1}"],
  letters: {
    K: LOSS_COEFFICIENT,
    p_v: VELOCITY_PRESSURE,
    x: "shape or angle, between the printed points 1 and 2; outside them it is refused",
  },
};
