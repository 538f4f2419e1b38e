import { DomainError, NoAnswerError, requireWithin } from "../errors";
import { itemAt } from "../../reference/itemAt";

/** One point of a fan curve: fan static pressure at an airflow, at standard density and rated speed. */
export interface CurvePoint {
  readonly airflow: number; // [m3/s]
  readonly pressure: number; // [Pa]
}

/** A fan curve ready to be read: points by rising airflow, with the slope at each. */
export interface FanCurve {
  readonly points: readonly CurvePoint[];
  readonly slopes: readonly number[]; // [Pa s/m3]
}

/**
 * A fan curve from its points: a monotone piecewise cubic (Fritsch-Carlson limits, three-point slopes at the ends), so that
 * between two points it never rises where they fall, and never leaves their range.
 *
 * @param points [m3/s, Pa] at least two, in any order; airflows and pressures at least 0, no airflow twice
 * @returns the curve
 * @throws DomainError if a point is wrong, stands twice, or fewer than two are given
 * @source fritschCarlson1980; end slopes as in SciPy's PchipInterpolator
 */
export function fanCurve(points: readonly CurvePoint[]): FanCurve {
  if (points.length < 2) throw new DomainError("curve", points.length, "at least two points of airflow and pressure");
  for (const { airflow, pressure } of points) {
    requireWithin("airflow of the curve", airflow, { atLeast: 0 }, "m³/s");
    requireWithin("pressure of the curve", pressure, { atLeast: 0 }, "Pa");
  }
  const sorted = [...points].sort((a, b) => a.airflow - b.airflow);
  const twice = sorted.find((point, index) => index > 0 && point.airflow === itemAt(sorted, index - 1).airflow);
  if (twice !== undefined) throw new DomainError("curve", twice.airflow, "one pressure for each airflow");
  return { points: sorted, slopes: slopesOf(sorted) };
}

function slopesOf(points: readonly CurvePoint[]): number[] {
  const widths = points.slice(1).map((point, index) => point.airflow - itemAt(points, index).airflow);
  const secants = points
    .slice(1)
    .map((point, index) => (point.pressure - itemAt(points, index).pressure) / itemAt(widths, index));
  if (points.length === 2) return [itemAt(secants, 0), itemAt(secants, 0)];
  const inner = points
    .slice(1, -1)
    .map((_, index) =>
      innerSlope(itemAt(widths, index), itemAt(widths, index + 1), itemAt(secants, index), itemAt(secants, index + 1)),
    );
  return [
    endSlope(itemAt(widths, 0), itemAt(widths, 1), itemAt(secants, 0), itemAt(secants, 1)),
    ...inner,
    endSlope(widths.at(-1)!, widths.at(-2)!, secants.at(-1)!, secants.at(-2)!),
  ];
}

/** Weighted harmonic mean of the neighbouring secants; flat where they turn. */
function innerSlope(before: number, after: number, left: number, right: number): number {
  if (left * right <= 0) return 0;
  const one = 2 * after + before;
  const two = after + 2 * before;
  return (one + two) / (one / left + two / right);
}

/** Three-point slope at an end, held so that the first piece stays monotone. */
function endSlope(near: number, next: number, secant: number, nextSecant: number): number {
  const slope = ((2 * near + next) * secant - near * nextSecant) / (near + next);
  if (slope * secant <= 0) return 0;
  return secant * nextSecant < 0 && Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
}

export interface CurveReading {
  readonly pressure: number; // [Pa]
  readonly slope: number; // [Pa s/m3]
}

/**
 * Pressure and slope inside the curve's reach; the caller keeps within it.
 *
 * @returns [Pa] the pressure, and [Pa s/m3] its slope
 * @source fritschCarlson1980
 */
export function curveAt(curve: FanCurve, airflow: number): CurveReading {
  const { points, slopes } = curve;
  let piece = 0;
  while (piece < points.length - 2 && airflow > itemAt(points, piece + 1).airflow) piece++;
  const from = itemAt(points, piece);
  const to = itemAt(points, piece + 1);
  const width = to.airflow - from.airflow;
  const t = (airflow - from.airflow) / width;
  const m0 = itemAt(slopes, piece) * width;
  const m1 = itemAt(slopes, piece + 1) * width;
  const rise = to.pressure - from.pressure;
  // Cubic Hermite piece: from + m0 t + (3 rise - 2 m0 - m1) t^2 + (m0 + m1 - 2 rise) t^3
  const second = 3 * rise - 2 * m0 - m1;
  const third = m0 + m1 - 2 * rise;
  return {
    pressure: from.pressure + t * (m0 + t * (second + t * third)),
    slope: (m0 + t * (2 * second + 3 * t * third)) / width,
  };
}

/**
 * Where a curve begins.
 *
 * @returns [m3/s] of its first point
 * @source house
 */
export const leastAirflow = (curve: FanCurve): number => itemAt(curve.points, 0).airflow;

/**
 * Where it ends.
 *
 * @returns [m3/s] of its last point
 * @source house
 */
export const mostAirflow = (curve: FanCurve): number => curve.points.at(-1)!.airflow;

/**
 * Whether the curve rises somewhere: then more than one operating point may exist.
 *
 * @returns true where some point lies above the one before it
 * @source house
 */
export const hasRisingPart = ({ points }: FanCurve): boolean =>
  points.some((point, index) => index > 0 && point.pressure > itemAt(points, index - 1).pressure);

/**
 * Fan static pressure at an airflow.
 *
 * @param curve the fan
 * @param airflow [m3/s] within the curve's reach
 * @returns [Pa]
 * @throws NoAnswerError outside the curve
 * @source fritschCarlson1980
 */
export function fanPressure(curve: FanCurve, airflow: number): number {
  requireWithin("airflow", airflow, { atLeast: 0 }, "m³/s");
  if (airflow < leastAirflow(curve) || airflow > mostAirflow(curve)) throw new OutsideCurveError(curve, airflow);
  return curveAt(curve, airflow).pressure;
}

/** The answer lies where the curve has no points; the cells say how far it reaches, in their own unit. */
export class OutsideCurveError extends NoAnswerError {
  readonly from: number; // [m3/s]
  readonly to: number; // [m3/s]
  constructor(
    curve: FanCurve,
    readonly airflow: number,
  ) {
    super("outside the fan curve");
    this.from = leastAirflow(curve);
    this.to = mostAirflow(curve);
  }
}
