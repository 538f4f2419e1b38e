import { fanPressure } from "../../core/fan/fanCurve";
import { answerOf } from "../answer";
import { exampleCurve } from "../exampleTables";
import { readCurve } from "../fanTable/readCurve";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { FAN_CURVE } from "../letters";
import { AIRFLOW, signature } from "../signature";

/** Of what stands behind the curve. */
export const takes = signature({ airflow: AIRFLOW }, "pressure");

/**
 * Fan static pressure at an airflow, read from the fan's curve, in in.w.g. (SI: Pa).
 * @customfunction FANPRESSURE
 * @param curve Two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa); a heading row is allowed
 * @param airflow Airflow, cfm (SI: m³/h), within the curve
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function fanpressure(curve: unknown[][], airflow: unknown[][], units?: unknown[][]): unknown[][] {
  return inHost(units, (system) => {
    const fan = readCurve(curve, system);
    return answerOf(takes, [airflow, units], ({ airflow }) => fanPressure(fan, airflow));
  });
}

export const guide: Guide = {
  maths: "A smooth line through the points of the curve that never overshoots them",
  source: "fritschCarlson1980",
  basis: "from memory",
  limits: "Only within the curve. A maker's curve is for standard air and a straight inlet.",
  cautions: ["wheel over-speed", "flue draught"],
  also: ["static pressure", "fan curve", "blower"],
  example: { asks: "An invented straight curve, at 500 cfm", args: [exampleCurve, "500"] },
};

export const formula: Formula = {
  tex: [
    "p(Q) = h_{00}(t)\\,p_i + h_{10}(t)\\,h\\,d_i + h_{01}(t)\\,p_{i+1} + h_{11}(t)\\,h\\,d_{i+1}, \\qquad t = \\frac{Q - Q_i}{h}",
  ],
  letters: {
    "p(Q)": FAN_CURVE,
    p_i: "printed pressure at the airflow Q_i",
    h: "distance to the next printed airflow",
    d_i: "slope there, chosen so that the curve never overshoots (Fritsch and Carlson's monotone cubic)",
    "h_{00}": "and its fellows: the four cubic Hermite basis polynomials",
  },
};
