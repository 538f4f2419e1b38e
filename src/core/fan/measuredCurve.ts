import { itemAt } from "../../reference/itemAt";
import { solveTriangle } from "../numeric/cholesky";
import { dot } from "../numeric/dot";
import { covariance, narrowedBy, seen, spreadTriangle, straightFit } from "../numeric/withPriors";
import { type FanCurve, fanCurve, hasRisingPart, leastAirflow, mostAirflow } from "./fanCurve";
import { type CurveDoubt, type Family, familyOf, saidAt, slopesAt } from "./curveFamily";

/** What somebody read at a fan while its duct was throttled to some degree, in standard air. */
export interface ThrottleReading {
  readonly airflow: number; // [m3/s]
  readonly pressure: number; // [Pa] fan static pressure
  readonly airflowDeviation: number; // [-] how far one reading strays from the next
  readonly pressureDeviation: number; // [-]
}

/** A point of the fan's curve as it was read. */
export interface MeasuredPoint {
  readonly airflow: number; // [m3/s]
  readonly pressure: number; // [Pa]
  readonly deviation: number; // [Pa] standard deviation
  readonly beyond: boolean; // outside what was read: the told curve's shape alone
}

/** A fan's curve as it was read. */
export interface MeasuredCurve {
  readonly points: readonly MeasuredPoint[];
  readonly left: readonly { readonly place: number; readonly factor: number }[]; // readings left out, and pressure read over said
  readonly bends: boolean; // readings that contradict each other, or bend otherwise than the curve that was told
}

/** Without a curve little is sure of the parabola that stands for it. */
const UNKNOWN = { speed: 0.5, pressure: 0.5, shape: 0.12 };

/** Beyond so many of its own deviations a reading fits no plausible fan: one in a thousand does by chance. */
const LIMIT = 3.3;

/** So few cannot accuse one of them. */
const FEWEST = 3;

const POINTS = 13;
const MOST_STEPS = 30;
const LARGEST_STEP = 0.4; // [-] of a logarithm
const SETTLED = 1e-10;

/**
 * A fan's curve from readings at several throttles: the told curve with the most plausible factors of its speed and pressure and a
 * smooth departure in shape, by what was read and by what one knew before.
 *
 *     p(Q) = f s^2 P(Q / s) + d(Q),   minimise sum ((p - p(Q)) / u)^2 + (ln s / sd)^2 + (ln f / sd)^2 + (d's own)
 *     u^2 = u_p^2 + (p' u_Q)^2
 *
 * An airflow's error works through the curve's slope; the meter's lasting error is an unknown of its own. A reading that lies beyond
 * 3.3 of its own deviations from what all others say is left out, the worst first.
 *
 * @param readings at least 2 with a told curve, 3 without
 * @param told the printed curve; null where there is none: then a parabola stands for it of which nothing is sure
 * @param doubt how far off the told curve and the meter may be; without a told curve only that of the meter counts
 * @param reach "read": from the least to the largest airflow that was read; "printed": as far as the told curve
 * @returns points by rising airflow; falling unless the told curve rises somewhere or the readings rise by more than they stray
 * @source jcgm100 H.3 for least squares; house for the priors
 */
export function measuredCurve(
  readings: readonly ThrottleReading[],
  told: FanCurve | null,
  doubt: CurveDoubt,
  reach: "read" | "printed",
): MeasuredCurve {
  const family = told === null ? familyOf(parabola(readings), { ...doubt, ...UNKNOWN }) : familyOf(told, doubt);
  let kept = readings.map((_, place) => place);
  const fitKept = (): Fit => fit(family, kept.map((place) => itemAt(readings, place))); // prettier-ignore
  let found = fitKept();
  while (kept.length > FEWEST && found.worst !== null) {
    kept = kept.filter((_, index) => index !== found.worst);
    found = fitKept();
  }
  const { x, narrowed, squares } = found;
  const flows = kept.map((place) => itemAt(readings, place).airflow);
  const [from, to] = [Math.min(...flows), Math.max(...flows)];
  const speed = Math.exp(x[0]!);
  const ends = told === null || reach === "read" ? [from, to] : [leastAirflow(told) * speed, mostAirflow(told) * speed];
  const stops = Array.from({ length: POINTS }, (_, step) => ends[0]! + ((ends[1]! - ends[0]!) * step) / (POINTS - 1));
  const points = [...new Set([...stops, ...[from, to].filter((flow) => flow > ends[0]! && flow < ends[1]!)])]
    .sort((a, b) => a - b)
    .map((airflow): MeasuredPoint => {
      const slopes = slopesAt(family, x, airflow);
      slopes[METER] = 0; // the duct's air, whatever the meter shows
      const one = seen(narrowed, slopes);
      const deviation = Math.sqrt(Math.max(covariance(family.priors, one, one), 0));
      return {
        airflow,
        pressure: saidAt(family, x, airflow).pressure,
        deviation,
        beyond: airflow < from || airflow > to,
      };
    })
    .filter(({ pressure }) => pressure >= 0);
  return {
    points: told !== null && hasRisingPart(told) ? points : falling(points),
    left: readings.flatMap(({ airflow, pressure }, place) =>
      kept.includes(place) ? [] : [{ place, factor: pressure / saidAt(family, x, airflow).pressure }],
    ),
    bends: squares > rarelyAbove(kept.length),
  };
}

const METER = 2; // its place among the unknowns

/** One in two hundred sums of so many squares lies above: Wilson and Hilferty's cube. */
const rarelyAbove = (count: number): number => {
  const part = 2 / (9 * count);
  return count * (1 - part + 2.576 * Math.sqrt(part)) ** 3;
};

/** A falling curve somewhat beyond what was read. */
function parabola(readings: readonly ThrottleReading[]): FanCurve {
  const most = 1.3 * Math.max(...readings.map(({ airflow }) => airflow));
  const shut = 1.15 * Math.max(...readings.map(({ pressure }) => pressure));
  return fanCurve(
    Array.from({ length: 9 }, (_, place) => ({ airflow: (most * place) / 8, pressure: shut * (1 - (place / 8) ** 2) })),
  );
}

/** Neighbours that rise share their mean where that moves none by more than its deviation: nothing tells that they rise. */
function falling(points: readonly MeasuredPoint[]): readonly MeasuredPoint[] {
  const groups: MeasuredPoint[][] = [];
  const mean = (group: readonly MeasuredPoint[]): number =>
    group.reduce((sum, { pressure }) => sum + pressure, 0) / group.length;
  for (const point of points) {
    groups.push([point]);
    for (
      let before = groups.at(-2);
      before !== undefined && mean(groups.at(-1)!) > mean(before);
      before = groups.at(-2)
    )
      before.push(...groups.pop()!);
  }
  const level = groups.flatMap((group) => group.map((point) => ({ ...point, pressure: mean(group) })));
  return level.every(({ pressure }, index) => Math.abs(pressure - points[index]!.pressure) <= points[index]!.deviation)
    ? level
    : points;
}

interface Fit {
  readonly x: Float64Array;
  readonly narrowed: readonly Float64Array[];
  readonly squares: number; // each in its own deviation, priors included
  readonly worst: number | null; // the reading that fits no plausible fan
}

function fit(family: Family, readings: readonly ThrottleReading[]): Fit {
  const { priors } = family;
  for (let x = new Float64Array(priors.length), step = 0; ; step++) {
    const here = readings.map(({ airflow }) => airflow * Math.exp(-x[METER]!));
    const all = here.map((airflow) => saidAt(family, x, airflow));
    const slopes = here.map((airflow) => slopesAt(family, x, airflow));
    const spreads = readings.map(({ pressure, pressureDeviation, airflowDeviation }, index) =>
      Math.hypot(pressure * pressureDeviation, here[index]! * airflowDeviation * all[index]!.slope),
    );
    const linear = { priors, slopes, spreads };
    const right = readings.map(({ pressure }, index) => pressure - all[index]!.pressure + dot(slopes[index]!, x));
    const target = straightFit(linear, right);
    const most = Math.max(...[0, 1, METER].map((place) => Math.abs(target[place]! - x[place]!)));
    if (most > SETTLED && step < MOST_STEPS) {
      const share = Math.min(1, LARGEST_STEP / most);
      x = x.map((from, place) => from + share * (target[place]! - from));
      continue;
    }
    const triangle = spreadTriangle(linear);
    const weights = solveTriangle(triangle, right);
    const misfits = right.map((_, place) => {
      const marks = right.map((__, other) => (other === place ? 1 : 0));
      return Math.abs(weights[place]!) / Math.sqrt(solveTriangle(triangle, marks)[place]!);
    });
    const largest = Math.max(...misfits);
    return { x, narrowed: narrowedBy(linear), squares: dot(right, weights), worst: largest > LIMIT ? misfits.indexOf(largest) : null }; // prettier-ignore
  }
}
