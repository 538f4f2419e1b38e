import type { UnitSystem } from "../../reference/quantities";
import type { Value } from "../answerRows";
import { toMatrix } from "../cells";
import { curveRows } from "../fanTable/readCurve";
import type { Calibration } from "./calibration";
import { factorsOf } from "./factorsOf";

/** The curve as it was given, heading and blank rows included, with its points where the readings put them. */
export function calibratedCurve(calibration: Calibration, curve: unknown, system: UnitSystem): Value[][] {
  const factor = factorsOf(calibration);
  const [speed, pressure] = [factor("fan speed"), factor("fan pressure")];
  // Factors have no unit: the points stay in the range's own.
  const points = new Map(curveRows(curve, ["ratio", "ratio"], system).map(({ row, point }) => [row, point]));
  return toMatrix(curve).map((line, row) => {
    const point = points.get(row);
    if (point === undefined) return line.map((cell) => (typeof cell === "string" ? cell : ""));
    return [point.airflow * speed, point.pressure * pressure * speed ** 2];
  });
}
