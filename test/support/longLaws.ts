import Decimal from "decimal.js";
import type { Run } from "../../src/core/network/network";
import { AIR } from "./runs";

/*
 * The equations of a run, an entry and a leak once more, in forty digits and with nothing of the solver's. Plain junctions, devices
 * that go with the square.
 */
export const Long = Decimal.clone({ precision: 40 });
export type Long = Decimal;

export const long = (value: Decimal.Value): Long => new Long(value);
export const NONE = long(0);
export const STANDARD = long(0.075).times(0.45359237).div(long("0.3048").pow(3)); // kg/m3, 0.075 lb/ft3
export const DENSITY = long(AIR.density);
const PER_VISCOSITY = long(1).div("1.819e-5"); // Pa s, ASHRAE, air at 70 °F
const DISCHARGE = long("0.6"); // of a leak
const TWO_OVER_LN_10 = long(2).div(Long.ln(10));
const QUARTER_PI = Long.acos(-1).div(4);
export const FEW_ENOUGH = long("1e-25"); // a step this small leaves its square
export const MOST_STEPS = 12;

/** A loss and how it goes with the airflow. */
export interface Loss {
  readonly pressure: Long; // [Pa]
  readonly slope: Long; // [Pa s/m3]
}

/** A straight line: value = a + b suction. */
export interface Line {
  readonly a: Long;
  readonly b: Long;
}

export const sum = ({ a, b }: Line, other: Line): Line => ({ a: a.plus(other.a), b: b.plus(other.b) });
export const STILL: Line = { a: NONE, b: NONE };

const areaOf = ({ diameter }: Run): Long => QUARTER_PI.times(diameter).times(diameter);
const perSquare = (run: Run): Long => DENSITY.div(areaOf(run).pow(2).times(2)); // velocity pressure = this Q^2

/** 1/sqrt(f) by Colebrook-White, Newton's steps from 7 on; 1/(1 + s) of its derivative d ln f/d ln Re = -2 s/(1 + s). */
function colebrook(reynolds: Long, wall: Long): { readonly root: Long; readonly share: Long } {
  const b = long("2.51").div(reynolds);
  let root = long(7);
  for (let step = 0; step < MOST_STEPS; step++) {
    const inside = wall.div("3.7").plus(b.times(root));
    const share = long(1).div(TWO_OVER_LN_10.times(b).div(inside).plus(1));
    const change = root.plus(TWO_OVER_LN_10.times(Long.ln(inside))).times(share);
    root = root.minus(change);
    if (change.abs().lt(FEW_ENOUGH)) return { root, share };
  }
  throw new Error("Colebrook-White was not met");
}

/** K of a straight length, and d ln K / d ln Q times it. */
function lengthOf(run: Run, airflow: Long, length: Long, roughness: Decimal.Value): readonly [Long, Long] {
  const reynolds = DENSITY.times(airflow).times(run.diameter).times(PER_VISCOSITY).div(areaOf(run));
  const diameters = length.div(run.diameter);
  if (reynolds.lte(2000)) return [diameters.times(64).div(reynolds), diameters.times(-64).div(reynolds)];
  const { root, share } = colebrook(Long.max(reynolds, 4000), long(roughness).div(run.diameter));
  const turbulent = long(1).div(root.pow(2));
  if (reynolds.gte(4000)) {
    const k = diameters.times(turbulent);
    return [k, k.times(share.minus(1)).times(2)];
  }
  const rise = turbulent.minus("0.032").div(2000);
  return [diameters.times(rise.times(reynolds.minus(2000)).plus("0.032")), diameters.times(rise).times(reynolds)];
}

export function lossOf(run: Run, airflow: Long): Loss {
  const [pipe, pipeGoes] = run.length > 0 ? lengthOf(run, airflow, long(run.length), run.roughness) : [NONE, NONE];
  const hoseLength = long(run.hoseLength).times(run.hoseTimes);
  const [hose, hoseGoes] = hoseLength.gt(0)
    ? lengthOf(run, airflow, hoseLength, run.hoseRoughness ?? AIR.hoseRoughness)
    : [NONE, NONE];
  const { device } = run;
  const perDevice =
    device === null ? NONE : long(device.ratedLoss).div(long(device.ratedAirflow).pow(2)).times(DENSITY).div(STANDARD);
  const per = perSquare(run);
  const k = pipe.plus(hose).plus(run.coefficient);
  const all = k.times(per).plus(perDevice);
  return {
    pressure: all.times(airflow).times(airflow),
    slope: all.times(2).plus(pipeGoes.plus(hoseGoes).times(per)).times(airflow),
  };
}

/** An open end, P = K p_v(S), as a line about its present flow. */
export function entry(run: Run, flow: Long): Line {
  const k = perSquare(run).times(run.hood ?? AIR.plainEnd);
  return { a: flow.div(2), b: long(1).div(k.times(flow).times(2)) };
}

/** A leak, k L^2 = P + p_v(S + L), as a line: what arrives is one too. */
export function leakOf(run: Run, arriving: Line, flow: Long, leak: Long): Line {
  if (run.leakArea === 0) return STILL;
  const k = DENSITY.div(DISCHARGE.times(run.leakArea).pow(2).times(2));
  const per = perSquare(run);
  const airflow = flow.plus(leak);
  const byArriving = per.times(airflow).times(-2);
  const byLeak = k.times(leak).times(2).plus(byArriving);
  const drive = k.times(leak.pow(2)).minus(per.times(airflow.pow(2)));
  return {
    a: leak.minus(drive.plus(byArriving.times(arriving.a.minus(flow))).div(byLeak)),
    b: long(1).minus(byArriving.times(arriving.b)).div(byLeak),
  };
}
