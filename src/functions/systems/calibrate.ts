import { calibrationTable } from "../calibrationTable/calibrationTable";
import { onReadings } from "../calibrationTable/onReadings";
import { exampleCurve, exampleReadings, exampleRuns } from "../exampleTables";
import type { Formula, Guide } from "../guide";

/**
 * What your readings say of fan, hoses, entries, leaks and meter, which reading is a slip, and what to read next (cfm; m³/h ...).
 * @customfunction CALIBRATE
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param readings Table with headers Open, At and Velocity, Airflow, Suction or Drop; also ±, Times, Area, Meter, Use
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function calibrate(
  runs: unknown[][],
  curve: unknown[][],
  readings: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return onReadings({ runs, curve, readings, errors, density, units }, calibrationTable);
}

export const guide: Guide = {
  maths: "least Σ (ln read - ln model)² / s² + Σ x² / sd²",
  source: "jcgm100",
  basis: "from memory",
  limits:
    "A model, not a measurement: a probe in disturbed flow fools it, and a slip below the factor it names does not show. Diameters and fittings after the fan stay as typed. Gates at rest hide their leaks: read the fan's suction with all shut. A leak counts as another one with its gate open than with it shut, even where the column Leak tells one for both; air and pressures read with a meter of one name count as two meters.",
  cautions: ["no measurement", "power off", "fan inlet guard", "area in the meter"],
  also: ["calibration", "measured", "slip", "what to measure", "least squares"],
  example: {
    asks: "An airflow read at the saw, and the suction at the fan with both gates open",
    args: [exampleRuns, exampleCurve, exampleReadings],
  },
};

export const formula: Formula = {
  tex: [
    "\\min_x \\sum_i \\frac{(\\ln r_i - \\ln m_i(x))^2}{s_i^2} + \\sum_j \\frac{x_j^2}{d_j^2}",
    "s_i^2 = u_i^2/n_i + w^2",
  ],
  letters: {
    x: "logarithms of the factors by which inputs are off",
    d: "how far off they may be (the table input errors)",
    r: "what was read",
    m: "what SOLVE says of it, times the meter's factor",
    u: "deviation of one reading, n how often it was read, w that of the model",
  },
};
