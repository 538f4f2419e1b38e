import { itemAt } from "../../reference/itemAt";
import { curveAt, type CurveReading, type FanCurve, leastAirflow, mostAirflow } from "./fanCurve";

/** All curves that a fan may have whose curve is told: its speed and pressure may be off, and its shape by smooth bumps. */
export interface Family {
  readonly told: FanCurve;
  readonly bumps: readonly number[]; // [m3/s] their middles
  readonly width: number; // [m3/s]
  readonly priors: readonly number[]; // deviations of: ln speed, ln pressure, ln meter, then each bump's height [Pa]
}

/** How far off a curve and a meter may be, as standard deviations. */
export interface CurveDoubt {
  readonly speed: number; // [-] of the logarithm of the fan's speed against the curve's
  readonly pressure: number; // [-] likewise
  readonly meter: number; // [-] of the logarithm of what all airflows have in common
  readonly shape: number; // of the curve's largest pressure
}

/** Over how much of the largest airflow a departure in shape goes alike: a judgement of ours. */
const ALIKE = 0.35;

const BESIDE = 3; // bumps beyond either end, so that the departure is as large there
const OWN = 3; // unknowns before the bumps

/**
 * The curves around a told one. Bumps of one width at even distances, each with a height of its own, make a departure that has
 * everywhere the same deviation and goes alike over ALIKE of the airflow.
 *
 * @param told the printed curve
 * @param doubt how far it and the meter may be off
 * @returns the family
 * @source house
 */
export function familyOf(told: FanCurve, { speed, pressure, meter, shape }: CurveDoubt): Family {
  const width = ALIKE * mostAirflow(told);
  const apart = width / 2;
  const largest = Math.max(...told.points.map((point) => point.pressure));
  // sum of exp(-2 (Q - c)^2 / w^2) over even c is sqrt(pi / 2) w / apart, which times height^2 is the square of the deviation
  const height = shape * largest * Math.sqrt(apart / (width * Math.sqrt(Math.PI / 2)));
  const count = Math.ceil(mostAirflow(told) / apart) + 2 * BESIDE + 1;
  const bumps = Array.from({ length: count }, (_, place) => (place - BESIDE) * apart);
  return { told, bumps, width, priors: [speed, pressure, meter, ...bumps.map(() => height)] };
}

/** The told curve, which goes on straight beyond its ends. */
function toldAt(told: FanCurve, airflow: number): CurveReading {
  const within = Math.min(Math.max(airflow, leastAirflow(told)), mostAirflow(told));
  const { pressure, slope } = curveAt(told, within);
  return { pressure: pressure + slope * (airflow - within), slope };
}

/** The told curve with its factors: p = f s^2 P(Q / s). */
function scaledAt({ told }: Family, x: ArrayLike<number>, airflow: number): CurveReading {
  const [speed, factor] = [Math.exp(x[0]!), Math.exp(x[1]!)];
  const { pressure, slope } = toldAt(told, airflow / speed);
  return { pressure: factor * speed ** 2 * pressure, slope: factor * speed * slope };
}

const bumpAt = ({ width }: Family, middle: number, airflow: number): number =>
  Math.exp(-(((airflow - middle) / width) ** 2));

/**
 * What a curve of the family says at an airflow.
 *
 * @param family of curves
 * @param x the unknowns, in the order of the priors
 * @param airflow in [m3/s]
 * @returns [Pa] and [Pa s/m3]
 * @source house
 */
export function saidAt(family: Family, x: ArrayLike<number>, airflow: number): CurveReading {
  let { pressure, slope } = scaledAt(family, x, airflow);
  family.bumps.forEach((middle, place) => {
    const part = itemAt(x, OWN + place) * bumpAt(family, middle, airflow);
    pressure += part;
    slope -= (2 * part * (airflow - middle)) / family.width ** 2;
  });
  return { pressure, slope };
}

/**
 * How that changes with each unknown; a meter that shows too much reads the curve at less air.
 *
 * @returns [Pa] by ln speed, ln pressure and ln meter, [-] by each height
 * @source house
 */
export function slopesAt(family: Family, x: ArrayLike<number>, airflow: number): Float64Array {
  const { pressure, slope } = scaledAt(family, x, airflow);
  const bumps = family.bumps.map((middle) => bumpAt(family, middle, airflow));
  const byMeter = -airflow * saidAt(family, x, airflow).slope;
  return Float64Array.from([2 * pressure - airflow * slope, pressure, byMeter, ...bumps]);
}
