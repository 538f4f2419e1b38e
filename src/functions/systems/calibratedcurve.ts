import { calibratedCurve } from "../calibrationTable/calibratedCurve";
import { requireUsable } from "../calibrationTable/calibratedRuns";
import { onReadings } from "../calibrationTable/onReadings";
import { exampleCurve, exampleReadings, exampleRuns } from "../exampleTables";
import type { Formula, Guide } from "../guide";

/**
 * The fan curve as your readings make it, in its own units (cfm, in.w.g.; m³/h, Pa): take it together with CALIBRATEDRUNS.
 * @customfunction CALIBRATEDCURVE
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param readings Table with headers Open, At and Velocity, Airflow, Suction or Drop; as for CALIBRATE
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function calibratedcurve(
  runs: unknown[][],
  curve: unknown[][],
  readings: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return onReadings({ runs, curve, readings, errors, density, units }, (calibration, system) => {
    requireUsable(calibration);
    return calibratedCurve(calibration, curve, system);
  });
}

export const guide: Guide = {
  maths: "Q times the speed's factor s, p times s² and the pressure's factor",
  source: "jcgm100",
  basis: "from memory",
  limits:
    "The curve's shape stays as printed; only its two factors are found. It says nothing beyond the points typed.",
  also: ["calibration", "real fan curve"],
  example: { asks: "The invented fan as it was read", args: [exampleRuns, exampleCurve, exampleReadings] },
};

export const formula: Formula = {
  tex: ["Q' = s\\, Q, \\qquad p' = f s^2 p"],
  letters: { s: "the fan's speed against its curve's", f: "factor of its pressure, both as CALIBRATE finds them" },
};
