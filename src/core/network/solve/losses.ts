import { mitreInSlowAir } from "../../fittings/slowAir";
import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "../../friction/flowRegime";
import { TO_DECIMAL } from "../../friction/frictionFactor";
import { logOfRatio, NEAR } from "../../numeric/logOfRatio";
import {
  AIRFLOW,
  DEVICE,
  EXPONENT,
  FIXED,
  HOSE,
  LOG,
  LOG_OF,
  LOSS,
  MITRES,
  PIPE,
  RESISTANCE,
  REYNOLDS,
  ROOT,
  SLOPE,
  WALL,
} from "./rows";

/*
 * What a run costs at its airflow. Each law adds its loss and its slope to those in the run's row: a number that a function hands
 * back takes memory wherever the engine does not build the function in.
 */

/**
 * Loss of a run at its airflow [Pa], with the flow's sign, and the derivative [Pa s/m3]. A device with an exponent below 1
 * leaves its chord there instead.
 *
 * @param rows of the network
 * @param at where the run's row begins
 * @source house
 */
export function setLoss(rows: Float64Array, at: number): void {
  setFittings(rows, at);
  const flow = Math.abs(rows[at + AIRFLOW]!);
  const factor = rows[at + DEVICE]!;
  if (factor > 0 && flow > 0) {
    const exponent = rows[at + EXPONENT]!;
    const device = factor * flow ** exponent;
    rows[at + LOSS]! += device;
    // Below an exponent of 1 Newton's step overshoots from one side of still air to the other; the chord does not.
    rows[at + SLOPE]! += (Math.max(exponent, 1) * device) / flow;
  }
  addFriction(rows, at, PIPE);
  addFriction(rows, at, HOSE);
  if (rows[at + AIRFLOW]! < 0) rows[at + LOSS] = -rows[at + LOSS]!;
}

/**
 * Loss of a run's fittings alone, whichever way the air goes.
 *
 * @param rows of the network
 * @param at where the run's row begins
 * @source house
 */
export function setFittings(rows: Float64Array, at: number): void {
  const flow = Math.abs(rows[at + AIRFLOW]!);
  const fixed = rows[at + FIXED]! * flow;
  rows[at + LOSS] = fixed * flow;
  rows[at + SLOPE] = 2 * fixed;
  const mitres = rows[at + MITRES]!;
  if (mitres === 0) return;
  const reynolds = rows[at + REYNOLDS]! * flow;
  const slowAir = mitreInSlowAir(reynolds);
  rows[at + LOSS]! += mitres * flow * flow * (slowAir.times - 1);
  rows[at + SLOPE]! += mitres * flow * (2 * (slowAir.times - 1) + reynolds * slowAir.slope);
}

/**
 * Friction of one straight length. Its 1/sqrt(f) is carried from one airflow to the next: while a solver closes in on the
 * airflows, one step of Chebyshev's per visit brings Colebrook-White along instead of solving it anew. Between
 * layers and turbulence it is that of Re 4000, where the line from one to the other ends.
 *
 *     turbulent: x = -2 log10(b y),  y = x + a / b,  d ln f / d ln Re = -2 s / (1 + s),  s = 2 / (ln 10 y)
 *     x = 1/sqrt(f), a = (e/D)/3.7, b = 2.51/Re
 *
 * @param rows of the network
 * @param at where the run's row begins
 * @param length PIPE or HOSE
 * @source colebrook1939 the same factor as frictionFactor, and its derivative by the implicit function theorem
 */
export function addFriction(rows: Float64Array, at: number, length: number): void {
  const from = at + length;
  const resistance = rows[from + RESISTANCE]!;
  if (resistance === 0) return;
  const airflow = Math.abs(rows[at + AIRFLOW]!);
  const perFlow = rows[at + REYNOLDS]!;
  const reynolds = perFlow * airflow;
  if (reynolds <= LAMINAR_END) {
    const perAirflow = (resistance * 64) / perFlow;
    rows[at + LOSS]! += perAirflow * airflow;
    rows[at + SLOPE]! += perAirflow;
    return;
  }
  const turbulent = Math.max(reynolds, TURBULENT_START);
  const x = rows[from + ROOT]!;
  const y = rows[from + WALL]! * turbulent + x;
  const known = rows[from + LOG_OF]! * turbulent;
  const u = (y - known) / (y + known);
  const square = u * u;
  if (!(square < NEAR)) knowLogarithm(rows, from, y / turbulent);
  const beyond = square < NEAR ? logOfRatio(u, square) : 0;
  // The last division waits for all that is worked out from u, so as little as can be is; the rest is told beside it.
  const bend = TO_DECIMAL / (y * (y + TO_DECIMAL));
  const perSlope = 1 - y * bend; // 1 / (1 + s)
  const missed = x + TO_DECIMAL * rows[from + LOG]! + TO_DECIMAL * beyond;
  const next = x - missed * perSlope * (1 - missed * (0.5 * perSlope * bend));
  rows[from + ROOT] = next;
  const perAirflow = (resistance * airflow) / (next * next);
  if (reynolds >= TURBULENT_START) {
    rows[at + LOSS]! += perAirflow * airflow;
    rows[at + SLOPE]! += perAirflow * (2 * perSlope); // 2 - 2 s / (1 + s)
    return;
  }
  const first = LAMINAR_END_FACTOR * resistance * airflow;
  const rise = (perAirflow - first) / (TURBULENT_START - LAMINAR_END);
  const between = first + rise * (reynolds - LAMINAR_END);
  rows[at + LOSS]! += between * airflow;
  rows[at + SLOPE]! += 2 * between + rise * reynolds;
}

function knowLogarithm(rows: Float64Array, from: number, perReynolds: number): void {
  rows[from + LOG_OF] = perReynolds;
  rows[from + LOG] = Math.log(2.51 * perReynolds);
}

const MOST_VISITS = 12;
const SAME_ROOT = 1e-9; // relative: a step after so small a change leaves the factor and its slope exact

/**
 * The same, whatever was carried from elsewhere: visited until nothing changes any more.
 *
 * @param rows of the network
 * @param at where the run's row begins
 * @param length PIPE or HOSE
 * @returns [Pa] the friction alone
 * @source colebrook1939 as addFriction
 */
export function addSettledFriction(rows: Float64Array, at: number, length: number): number {
  const [loss, slope] = [rows[at + LOSS]!, rows[at + SLOPE]!];
  for (let visit = 0; ; visit++) {
    const before = rows[at + length + ROOT]!;
    addFriction(rows, at, length);
    const isSettled = Math.abs(rows[at + length + ROOT]! - before) <= SAME_ROOT * before;
    if (visit === MOST_VISITS || isSettled) return rows[at + LOSS]! - loss;
    rows[at + LOSS] = loss;
    rows[at + SLOPE] = slope;
  }
}
