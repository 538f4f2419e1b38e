import { NoAnswerError, requireWithin } from "../errors";
import { fallingRoot } from "../numeric/fallingRoot";
import {
  type CurvePoint,
  type FanCurve,
  hasRisingPart,
  leastAirflow,
  mostAirflow,
  OutsideCurveError,
  curveAt,
} from "./fanCurve";

/** Where a fan meets a system: the stable point, and how many crossings there are. */
export interface OperatingPoint extends CurvePoint {
  readonly crossings: number;
  readonly fromRest: number; // [m3/s] where a fan that starts from rest stays; the airflow itself where one point is stable
}

/**
 * Where the fan curve meets the system through a design point.
 *
 *     p = fixed + (pressure - fixed) (Q / airflow)^2
 *
 * Of several crossings (a curve with a hump) the stable one of largest airflow is given: there the fan's pressure falls
 * below the system's as the airflow grows.
 *
 * @param curve the fan
 * @param airflow [m3/s] of the design point, above 0
 * @param pressure [Pa] of the design point, at least `fixed`
 * @param fixed [Pa] the part that does not change with airflow, at least 0
 * @returns airflow, pressure and the number of crossings
 * @throws DomainError if an argument is outside its range
 * @throws OutsideCurveError, NoAnswerError if they do not meet within the curve
 * @source cengel2006 example 14-1
 */
export function operatingPoint(curve: FanCurve, airflow: number, pressure: number, fixed: number): OperatingPoint {
  requireWithin("airflow", airflow, { above: 0 }, "m³/s");
  requireWithin("fixed", fixed, { atLeast: 0 }, "Pa");
  requireWithin("pressure", pressure, { atLeast: fixed }, "Pa");
  const system = (flow: number): number => fixed + (pressure - fixed) * (flow / airflow) ** 2;
  const { at, crossings, fromRest } = stableCrossing(curve, (flow) => curveAt(curve, flow).pressure - system(flow));
  return { airflow: at, pressure: system(at), crossings, fromRest };
}

export const ROUNDING = 1e-12; // of the curve's largest pressure: a surplus as small is none, so that a point of the curve itself is met

const SCAN = 24; // steps between two points of a curve with a rising part

/**
 * The largest airflow at which the surplus of pressure (fan less system) falls through zero, and the number of crossings.
 * A falling curve meets a rising system once; a humped one is scanned.
 * Of two stable points a fan that starts from rest comes to the smaller one first and stays there (`fromRest`).
 *
 * @returns [m3/s] where they meet, and how often they do
 * @throws OutsideCurveError if the fan still has pressure to spare at the curve's end, NoAnswerError if it never has
 * @source house
 */
export function stableCrossing(
  curve: FanCurve,
  surplus: (airflow: number) => number,
): { at: number; crossings: number; fromRest: number } {
  const stops = scanStops(curve);
  const nothing = ROUNDING * Math.max(...curve.points.map(({ pressure }) => pressure));
  const values = stops.map((stop) => {
    const value = surplus(stop);
    return Math.abs(value) <= nothing ? 0 : value;
  });
  if (values.at(-1)! > 0) throw new OutsideCurveError(curve, Infinity);
  let crossings = 0;
  let [first, last] = [-1, -1];
  for (let index = 1; index < stops.length; index++) {
    const [before, after] = [values[index - 1]!, values[index]!];
    if (before > 0 !== after > 0) crossings++;
    if (!(before > 0 && after <= 0)) continue;
    if (first < 0) first = index;
    last = index;
  }
  if (last < 0) {
    if (values[0] === 0) return { at: stops[0]!, crossings: 1, fromRest: stops[0]! };
    if (leastAirflow(curve) > 0) throw new OutsideCurveError(curve, 0);
    throw new NoAnswerError("the system asks for more pressure than this fan has at any airflow");
  }
  const root = (index: number): number => fallingRoot(surplus, stops[index - 1]!, stops[index]!);
  const at = root(last);
  return { at, crossings, fromRest: first === last ? at : root(first) };
}

function scanStops(curve: FanCurve): number[] {
  const ends = [leastAirflow(curve), mostAirflow(curve)];
  if (!hasRisingPart(curve)) return ends;
  return curve.points.flatMap(({ airflow }, index) => {
    const next = curve.points[index + 1];
    if (next === undefined) return [airflow];
    return Array.from({ length: SCAN }, (_, step) => airflow + ((next.airflow - airflow) * step) / SCAN);
  });
}
