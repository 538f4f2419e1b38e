import { RATIO_LIMITS, scaledPoint } from "../../core/fan/fanLaws";
import { readNumber, singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";
import { toMatrix } from "../cells";
import { curveRows } from "./readCurve";

/** FANLAW's answer: the range as it was given, heading and blank rows included, with its points moved. */
export function scaledCurve(curve: unknown, speed: unknown, density: unknown, size: unknown): (string | number)[][] {
  const speedratio = readRatio("speedratio", speed, null);
  const densityratio = readRatio("densityratio", density, 1);
  const sizeratio = readRatio("sizeratio", size, 1);
  const points = new Map(curveRows(curve, ["ratio", "ratio"], "IP").map(({ row, point }) => [row, point]));
  return toMatrix(curve).map((line, row) => {
    const point = points.get(row);
    if (point === undefined) return line.map((cell) => (typeof cell === "string" ? cell : ""));
    const scaled = scaledPoint(point, speedratio, densityratio, sizeratio);
    return [scaled.airflow, scaled.pressure];
  });
}

function readRatio(name: string, given: unknown, usual: number | null): number {
  const cell = singleCell(name, given);
  if (cell !== null && cell !== 0) return readNumber(name, cell, "ratio", "IP", RATIO_LIMITS);
  return usual ?? refuseCell(name, cell, "above 0");
}
