import { calibratedRuns, requireUsable } from "../calibrationTable/calibratedRuns";
import { onReadings } from "../calibrationTable/onReadings";
import { toMatrix } from "../cells";
import { exampleCurve, exampleReadings, exampleRuns } from "../exampleTables";
import type { Formula, Guide } from "../guide";

/**
 * The runs table as your readings make it (feet, inches, in.w.g.; m, mm, Pa), for SOLVE, GAINS, SCENARIOS and SIZES to take.
 * @customfunction CALIBRATEDRUNS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param readings Table with headers Open, At and Velocity, Airflow, Suction or Drop; as for CALIBRATE
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function calibratedruns(
  runs: unknown[][],
  curve: unknown[][],
  readings: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return onReadings({ runs, curve, readings, errors, density, units }, (calibration, system) => {
    requireUsable(calibration);
    return calibratedRuns(calibration, toMatrix(runs), system);
  });
}

export const guide: Guide = {
  maths: "each input times its factor of CALIBRATE",
  source: "jcgm100",
  basis: "from memory",
  limits:
    "Take it together with CALIBRATEDCURVE. Lengths are those that would lose what was measured, not those of a tape, so for pipe in place of a hose give GAINS the readings instead; fittings that lose less than their books say become a number, of which GAINS knows no elbow.",
  also: ["calibration", "measured system"],
  example: { asks: "The two hoods as they were read", args: [exampleRuns, exampleCurve, exampleReadings] },
};

export const formula: Formula = {
  tex: ["v' = v\\, e^{x}"],
  letters: { v: "an input as the table has it", x: "logarithm of its factor, as CALIBRATE finds it" },
};
