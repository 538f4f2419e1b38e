import { type Elements, LEAK_ONLY, OPEN_END, STILL } from "./elements";
import { setLoss } from "./losses";
import {
  AIRFLOW,
  ARRIVING,
  ARRIVING_OFFSET,
  ARRIVING_RATE,
  DOWN_OFFSET,
  DOWN_RATE,
  END,
  LEAK,
  LEAK_OFFSET,
  LEAK_RATE,
  LEAK_SHARE,
  LOSS,
  MISSED,
  SLOPE,
  SUCTION,
  VELOCITY,
  WIDTH,
} from "./rows";
import { throughJunction } from "./throughJunction";

/**
 * From the ends to the fan: every law made linear at the present airflows and eliminated along the tree, so that each
 * run's airflow is known as a + b P_down.
 *
 * @param elements the network with its state, which the sweep leaves ready for the way back
 * @param least [Pa] the slope of a quadratic law is never taken as less than at this loss, so that a run at rest can start
 * @param suctionAtFan [Pa] at the last run's end, against which its own loss is held
 * @returns [Pa] by how much the state before the sweep missed its equations, friction as it is carried
 * @source house
 */
export function sweepToFan(elements: Elements, least: number, suctionAtFan: number): number {
  const { rows, order, down, fan, kind, meetings, meets } = elements;
  rows[fan + SUCTION] = suctionAtFan;
  let most = 0;
  for (let place = 0, at = 0; place < order.length; place++, at += WIDTH) {
    const index = order[place]!;
    const what = kind[index]!;
    if (what === STILL) continue;
    const meeting = meetings[index]!;
    rows[at + MISSED] = 0;
    if (meeting !== null) throughJunction(elements, meeting, at);
    if (what === OPEN_END) linearEnd(rows, at, least, ARRIVING, ARRIVING_OFFSET);
    if (what === LEAK_ONLY) linearEnd(rows, at, least, LEAK, LEAK_OFFSET);
    else if (rows[at + LEAK_SHARE]! > 0) linearLeak(rows, at, least);
    setLoss(rows, at);
    acrossRun(rows, at);
    most = Math.max(most, rows[at + MISSED]!);
    if (meets[index] === 1) continue; // its junction goes on from here
    const to = down[place]!;
    rows[to + ARRIVING_OFFSET]! += rows[at + DOWN_OFFSET]!;
    rows[to + ARRIVING_RATE]! += rows[at + DOWN_RATE]!;
    most = Math.max(most, Math.abs(rows[to + SUCTION]! - rows[at + SUCTION]! - rows[at + LOSS]!));
  }
  return most;
}

/**
 * An opening with a law P = R q|q|, made linear at its present flow. The velocity pressure of
 * a lone leak's air helps it in, (1 - g^2); where it blows there is the same pressure to overcome, (1 + g^2).
 */
function linearEnd(rows: Float64Array, at: number, least: number, through: number, line: number): void {
  const q = rows[at + through]!;
  const resistance = rows[at + END]! + (through === LEAK && q < 0 ? 2 * rows[at + VELOCITY]! : 0);
  const loss = resistance * q * Math.abs(q);
  const rate = 0.5 / Math.max(resistance * Math.abs(q), Math.abs(loss) < least ? Math.sqrt(resistance * least) : 0);
  rows[at + line] = q - loss * rate;
  rows[at + line + 1] = rate;
  rows[at + MISSED] = Math.abs(rows[at + SUCTION]! - loss);
}

/**
 * A leak beside arriving air: k L|L| = P + p_v(Q) with Q = S + L, made linear.
 * Where the velocity pressure's part would outweigh the leak's own slope (at an answer only where a leak is all but as large
 * as its duct), or the air runs backwards, it is left out of the slope.
 */
function linearLeak(rows: Float64Array, at: number, least: number): void {
  const perVelocity = rows[at + VELOCITY]!; // p_v = this Q^2
  const share = rows[at + LEAK_SHARE]!;
  const k = perVelocity / (share * share);
  const q = rows[at + AIRFLOW]!;
  const l = rows[at + LEAK]!;
  const own = Math.max(2 * k * Math.abs(l), 2 * Math.sqrt(k * least));
  const coupled = 2 * perVelocity * q;
  const coupling = coupled > 0 && coupled < 0.99 * own ? coupled : 0;
  const slope = own - coupling;
  const drive = perVelocity * q * q - k * l * Math.abs(l);
  rows[at + LEAK_OFFSET] = l + (drive + coupling * (rows[at + ARRIVING_OFFSET]! - rows[at + ARRIVING]!)) / slope;
  rows[at + LEAK_RATE] = (1 + coupling * rows[at + ARRIVING_RATE]!) / slope;
  rows[at + MISSED] = Math.max(rows[at + MISSED]!, Math.abs(rows[at + SUCTION]! + drive));
}

/** From S and L by P_up to Q by P_down, across the run's own loss. */
function acrossRun(rows: Float64Array, at: number): void {
  const slope = rows[at + SLOPE]!;
  const a = rows[at + ARRIVING_OFFSET]! + rows[at + LEAK_OFFSET]!;
  const b = rows[at + ARRIVING_RATE]! + rows[at + LEAK_RATE]!;
  const constant = rows[at + LOSS]! + slope * (a - rows[at + AIRFLOW]!);
  const rate = b / (1 + slope * b);
  rows[at + DOWN_RATE] = rate;
  rows[at + DOWN_OFFSET] = a - rate * constant;
}

/** From the fan to the ends: with the suction at the fan inlet known, every run's suction and flows. */
export function sweepToEnds({ rows, order, down, fan, kind, cut }: Elements, suctionAtFan: number): void {
  rows[fan + SUCTION] = suctionAtFan;
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const at = place * WIDTH;
    const suctionDown = rows[down[place]! + SUCTION]!;
    if (kind[index] === STILL) {
      rows[at + SUCTION] = cut[index] === 1 ? 0 : suctionDown;
      continue;
    }
    const airflow = rows[at + DOWN_OFFSET]! + rows[at + DOWN_RATE]! * suctionDown;
    const offset = rows[at + ARRIVING_OFFSET]!;
    const rate = rows[at + ARRIVING_RATE]!;
    const leakOffset = rows[at + LEAK_OFFSET]!;
    const leakRate = rows[at + LEAK_RATE]!;
    // From what flows, not as the suction downstream less the loss: of those a small difference would keep few digits.
    const suction = (airflow - (offset + leakOffset)) / (rate + leakRate);
    rows[at + AIRFLOW] = airflow;
    rows[at + SUCTION] = suction;
    rows[at + ARRIVING] = offset + rate * suction;
    rows[at + LEAK] = leakOffset + leakRate * suction;
    rows[at + ARRIVING_OFFSET] = rows[at + ARRIVING_RATE] = 0; // the next sweep adds to it
  }
}

/**
 * A lone leak by its law at the suction that a sweep has found. It hardly changes that suction, and where a gate was open before
 * its tangent would only close in on it slowly.
 */
export function setLoneLeaks({ rows, order, kind }: Elements): void {
  for (let place = 0, at = 0; place < order.length; place++, at += WIDTH)
    if (kind[order[place]!] === LEAK_ONLY && rows[at + SUCTION]! > 0)
      rows[at + LEAK] = rows[at + AIRFLOW] = Math.sqrt(rows[at + SUCTION]! / rows[at + END]!);
}
