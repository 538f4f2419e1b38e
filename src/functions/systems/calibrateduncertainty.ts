import { readDensity } from "../arguments";
import { calibrated } from "../calibrationTable/calibration";
import { calibratedUncertainty } from "../calibrationTable/calibratedUncertainty";
import { requireUsable } from "../calibrationTable/calibratedRuns";
import { exampleCurve, exampleReadings, exampleRuns } from "../exampleTables";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";

/**
 * How sure what flows is once your readings are counted: rows as UNCERTAINTY has them (cfm, fpm, in.w.g.; m³/h, m/s, Pa).
 * @customfunction CALIBRATEDUNCERTAINTY
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param readings Table with headers Open, At and Velocity, Airflow, Suction or Drop; as for CALIBRATE
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function calibrateduncertainty(
  runs: unknown[][],
  curve: unknown[][],
  readings: unknown[][],
  open?: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return inHost(units, (system) => {
    const air = readDensity(density, system);
    const calibration = calibrated({ runs, curve, readings, open: open ?? null, errors, density: air, system });
    requireUsable(calibration);
    return calibratedUncertainty(calibration, system);
  });
}

export const guide: Guide = {
  maths: "u² = g C gᵀ + (¾ w y)², C what the readings leave of the inputs' covariance, and ± = 2 u",
  source: "jcgm100",
  basis: "from memory",
  limits:
    "The airflows are those of SOLVE with CALIBRATEDRUNS and CALIBRATEDCURVE. Three quarters of the model's error (the table input errors) is added to each answer, since what flows strays from any such model; diameters count as sure. Where leaks make much of an airflow its ± may be a third too small, and the last row says so.",
  cautions: ["no measurement"],
  also: ["calibration", "plus or minus after readings"],
  example: {
    asks: "How sure the two hoods are after the readings",
    args: [exampleRuns, exampleCurve, exampleReadings],
  },
};

export const formula: Formula = {
  tex: ["u(y)^2 = g\\,C\\,g^\\mathsf{T} + \\left(\\tfrac{3}{4} w\\, y\\right)^2, \\qquad \\pm = 2\\,u(y)"],
  letters: {
    y: "an answer of SOLVE for the calibrated system",
    g: "its derivatives by the logarithms of the inputs' factors",
    C: "covariance of those after the readings",
    w: "the model's error",
  },
};
