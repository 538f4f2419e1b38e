import { unitOf } from "../../reference/quantities";
import type { LossFamily, LossPoint } from "../../reference/schema";
import { elbowAngleMultiplier } from "../../reference/fittings/elbowAngleMultiplier";
import { DomainError } from "../errors";
import { interpolate, type Point } from "./interpolate";
import { itemAt } from "../../reference/itemAt";

/**
 * Loss coefficient of a fitting or hood entry, linear between the printed points and refused outside them.
 *
 *     loss = K p_v
 *
 * Elbows by r/D: the printed value for 90 degrees times the printed multiplier of the turn.
 * Expansions: K = share(angle) (1 - ratio^2), and no more than the (1 - ratio)^2 of an abrupt one, ratio = small area /
 * large area, on the smaller duct's velocity pressure.
 *
 * @param family the fitting or hood
 * @param shape [-] or, where the family goes by diameter, [m]; null takes the usual one
 * @param angle [degrees] null takes the usual one
 * @returns [-] K, at least 0
 * @throws DomainError if a shape or angle is missing, not asked for, or outside the printed points
 * @source points each names its own
 */
export function lossCoefficient(family: LossFamily, shape: number | null, angle: number | null): number {
  const x = onAxis(family, "shape", shape);
  const turn = onAxis(family, "angle", angle);
  switch (family.rule) {
    case "elbow":
      return alongShape(family, family.points, x) * alongAngle(family, elbowAngles, turn);
    case "expansion":
      return expansionLoss(family, x, alongAngle(family, anglesOf(family.points), turn));
    case "table":
      return turn === null ? alongShape(family, family.points, x) : acrossAngles(family, x, turn);
  }
}

type Axis = "shape" | "angle";

function onAxis(family: LossFamily, argument: Axis, given: number | null): number | null {
  const axis = family[argument];
  if (axis === null) {
    if (given !== null) throw new DomainError(argument, given, `left out: "${family.key}" has no ${argument}`);
    return null;
  }
  const value = given ?? axis.usual;
  if (value === null) throw new DomainError(argument, null, `given for "${family.key}" (${axis.name})`);
  return value;
}

/** A taper never loses more than the abrupt step (Borda and Carnot): beyond some angle the air leaves the walls as it does there. */
function expansionLoss(family: LossFamily, ratio: number | null, share: number): number {
  if (ratio === null || !(ratio > 0 && ratio <= 1))
    throw new DomainError(
      "shape",
      ratio,
      `above 0 and at most 1 for "${family.key}" (${family.shape?.name ?? "shape"})`,
    );
  return Math.min(share * (1 - ratio * ratio), (1 - ratio) ** 2);
}

/** Linear along the shape axis; a family without one has a single point. */
function alongShape(family: LossFamily, points: readonly LossPoint[], shape: number | null): number {
  if (shape === null) return itemAt(points, 0).coefficient;
  return within(
    family,
    "shape",
    points.map((point) => ({ at: point.shape!, value: point.coefficient })),
    shape,
  );
}

/** Linear along the angle at the printed shape below and above, then linear between the two. */
function acrossAngles(family: LossFamily, shape: number | null, angle: number): number {
  if (shape === null) return alongAngle(family, anglesOf(family.points), angle);
  const shapes = family.points.map((point) => point.shape!);
  const below = Math.max(...shapes.filter((printed) => printed <= shape));
  const above = Math.min(...shapes.filter((printed) => printed >= shape));
  if (!Number.isFinite(below) || !Number.isFinite(above)) throw outside(family, "shape", limitsOf(shapes), shape);
  const ends = [...new Set([below, above])].map((printed) => {
    const row = family.points.filter((point) => point.shape === printed);
    return { at: printed, value: alongAngle(family, anglesOf(row), angle) };
  });
  return within(family, "shape", ends, shape);
}

const anglesOf = (points: readonly LossPoint[]): Point[] =>
  points.map((point) => ({ at: point.angle!, value: point.coefficient }));

const elbowAngles: readonly Point[] = elbowAngleMultiplier.map(({ angle, value }) => ({ at: angle, value }));

const alongAngle = (family: LossFamily, line: readonly Point[], angle: number | null): number =>
  within(family, "angle", line, angle ?? NaN);

/** The interpolated value, or a sentence that says how far the printed points reach. */
function within(family: LossFamily, argument: Axis, line: readonly Point[], given: number): number {
  const value = interpolate(line, given);
  if (value === undefined) throw outside(family, argument, limitsOf(line.map((point) => point.at)), given);
  return value;
}

const limitsOf = (values: readonly number[]): { atLeast: number; atMost: number } => ({
  atLeast: Math.min(...values),
  atMost: Math.max(...values),
});

function outside(
  family: LossFamily,
  argument: Axis,
  limits: { atLeast: number; atMost: number },
  given: number,
): DomainError {
  const byDiameter = argument === "shape" && family.shape?.quantity === "diameter";
  const scale = byDiameter ? 1000 : 1; // a diameter is said in mm and in inches: the core does not know the call's units
  const unit = byDiameter ? " mm" : argument === "angle" ? " degrees" : "";
  const inches = byDiameter ? ` (${round(limits.atLeast / INCH)} to ${round(limits.atMost / INCH)} in)` : "";
  const reach = `from ${round(limits.atLeast * scale)} to ${round(limits.atMost * scale)}${unit}${inches}`;
  const axis = (family[argument]?.name ?? argument) + turnHint(family, argument, given);
  return new DomainError(argument, given * scale, `${reach} for "${family.key}" (${axis})`);
}

const INCH = unitOf("diameter", "IP").factor;
const round = (value: number): number => Number(value.toPrecision(3));

/** "elbow 45" is read as a shape of 45: whoever wrote that meant the turn. */
function turnHint(family: LossFamily, argument: Axis, given: number): string {
  if (family.rule !== "elbow" || argument !== "shape" || given < 10) return "";
  return `; a turn comes after it, as in "${family.key} ${family.shape?.usual ?? 1.5} ${given}"`;
}
