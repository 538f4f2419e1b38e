import { elbowAngleMultiplier } from "../../reference/fittings/elbowAngleMultiplier";
import type { LossFamily, Provenance } from "../../reference/schema";
import { lossCoefficient } from "./lossCoefficient";

/**
 * The rows that a coefficient rests on: at a printed point that one, between printed points those on both sides.
 *
 * @param family the fitting or hood
 * @param shape as lossCoefficient takes it
 * @param angle as lossCoefficient takes it
 * @returns printed points, and the multipliers of an elbow's turn where it is not the 90 degrees of the points
 * @throws DomainError where lossCoefficient does
 * @source points each names its own
 */
export function valuesBehind(family: LossFamily, shape: number | null, angle: number | null): readonly Provenance[] {
  lossCoefficient(family, shape, angle); // refuses what is outside the printed points
  const x = shape ?? family.shape?.usual ?? null;
  const turn = angle ?? family.angle?.usual ?? null;
  const [byShape, byAngle] = [(row: Place) => row.shape ?? null, (row: Place) => row.angle];
  if (family.rule === "expansion") return around(family.points, byAngle, turn);
  const nearShapes = around(family.points, byShape, x);
  if (family.rule === "elbow")
    return turn === 90 ? nearShapes : [...nearShapes, ...around(elbowAngleMultiplier, byAngle, turn)];
  const shapes = [...new Set(nearShapes.map(byShape))];
  return shapes.flatMap((one) =>
    around(
      nearShapes.filter((point) => point.shape === one),
      byAngle,
      turn,
    ),
  );
}

interface Place {
  readonly shape?: number | null;
  readonly angle: number | null;
}

/** The rows next to a place on one axis, below and above it; all of them where there is no such axis. */
function around<Row>(rows: readonly Row[], axis: (row: Row) => number | null, at: number | null): readonly Row[] {
  if (at === null) return rows;
  const places = rows.map((row) => axis(row)!);
  const below = Math.max(...places.filter((place) => place <= at));
  const above = Math.min(...places.filter((place) => place >= at));
  return rows.filter((row) => axis(row) === below || axis(row) === above);
}
