import { DUCT_SIZE } from "../../core/section/section";
import { readChoice, readDensity, readWithin, singleCell } from "../arguments";
import { toMatrix } from "../cells";
import { exampleCurve, exampleThrottles } from "../exampleTables";
import { fanCurveTable } from "../fanTable/fanCurveTable";
import { readCurve } from "../fanTable/readCurve";
import { readThrottles } from "../fanTable/readThrottles";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { FAN_CURVE } from "../letters";

/**
 * Your fan's own curve with its ±, from readings at several throttles: cfm, in.w.g. (SI: m³/h, Pa) in standard air; for SOLVE.
 * @customfunction FANCURVE
 * @param readings Table with headers Velocity or Airflow, Suction, and After where the fan pushes; a row for each throttle
 * @param diameter Diameter of the duct in front of the fan in which it was read, in (SI: mm)
 * @param [curve] Printed curve, two columns: airflow and fan static pressure; what one knows beforehand
 * @param [reach] "read" (default): as far as was read; "printed": as far as the printed curve, which then says so
 * @param [density] Air density while it was read, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function fancurve(
  readings: unknown[][],
  diameter: unknown[][],
  curve?: unknown[][],
  reach?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return inHost(units, (system) => {
    const width = readWithin("diameter", singleCell("diameter", diameter), "diameter", DUCT_SIZE, system);
    const throttles = readThrottles(readings, width, readDensity(density, system), system);
    const printed = isFilled(curve) ? readCurve(curve, system) : null;
    return fanCurveTable(throttles, printed, readChoice("reach", singleCell("reach", reach), REACH), system);
  });
}

const REACH = ["read", "printed"] as const;

const isFilled = (curve: unknown): boolean =>
  toMatrix(curve).some((line) => line.some((cell) => cell !== null && cell !== 0 && typeof cell !== "string"));

export const guide: Guide = {
  maths: "p(Q) = f s² P(Q / s) + d(Q): the printed curve, its two factors and a smooth departure",
  source: "amca210",
  basis: "from memory",
  limits:
    "As good as its readings: in straight duct in front of the fan, all at one speed. Where a fan's curve has a hump and the printed one has none, its ± is too small: only about 5 in 6 true values lie within it. Without a printed curve it ends where the readings do.",
  cautions: ["power off", "fan inlet guard", "ladders"],
  also: ["fan test", "own fan curve", "real fan curve", "throttle"],
  example: {
    asks: "An invented fan read at three throttles, beside its straight printed curve",
    args: [exampleThrottles, "6", exampleCurve],
  },
};

export const formula: Formula = {
  tex: [
    "p(Q) = f s^2 P\\!\\left(\\frac{Q}{s}\\right) + d(Q)",
    "p = p_\\text{after} + p_\\text{suction} - \\frac{\\rho}{2} v^2, \\qquad u^2 = u_p^2 + \\left(\\frac{dp}{dQ} u_Q\\right)^2",
  ],
  letters: {
    "p(Q)": FAN_CURVE,
    "P(Q)": "the printed curve; without one a parabola of which nothing is sure",
    s: "the fan's speed against the printed one, ± 25 % beforehand",
    f: "factor of its pressure, ± 15 % beforehand",
    "d(Q)": "smooth departure in shape, ± 8 % of the largest pressure beforehand",
    u: "how far a reading strays: its pressure's, and its airflow's through the curve's slope",
  },
};
