import { legLoss } from "../../fittings/junction";
import { columnsOf } from "../../numeric/columns";
import { type LegLine, legLines } from "../junction/legLines";
import type { Meeting } from "../junction/meeting";
import { type Elements, LEAK_ONLY, OPEN_END, runHead, STILL } from "./elements";

/** The unknowns of a network, and what one sweep leaves behind for the way back. Everything is SI; a reversed flow is negative. */
export interface Flow {
  readonly airflow: Float64Array; // [m3/s] Q of each run, its own leak included
  readonly arriving: Float64Array; // [m3/s] S, what comes in at its upstream end, the own leak not counted
  readonly leak: Float64Array; // [m3/s] L
  readonly suction: Float64Array; // [Pa] P at its upstream end
  readonly loss: Float64Array; // [Pa] at the last sweep
  readonly slope: Float64Array; // [Pa s/m3]
  readonly byDown: Line; // Q = a + b P_down
  readonly arrivingBy: Line; // S = a + b P
  readonly leakBy: Line; // L = a + b P
}

/** A straight line per run: value = offset + rate * suction. */
interface Line {
  readonly offset: Float64Array; // [m3/s]
  readonly rate: Float64Array; // [m3/(s Pa)]
}

/**
 * Columns for so many runs, not set yet.
 *
 * @returns columns of zeros
 * @source house
 */
export function newFlow(count: number): Flow {
  const column = columnsOf(count, 12);
  const line = (): Line => ({ offset: column(), rate: column() });
  return {
    airflow: column(),
    arriving: column(),
    leak: column(),
    suction: column(),
    loss: column(),
    slope: column(),
    byDown: line(),
    arrivingBy: line(),
    leakBy: line(),
  };
}

/**
 * From the ends to the fan: every law made linear at the present airflows and eliminated along the tree, so that each
 * run's airflow is known as a + b P_down.
 *
 * @param elements the runs as columns
 * @param flow the state, which the sweep leaves ready for the way back
 * @param least [Pa] the slope of a quadratic law is never taken as less than at this loss, so that a run at rest can start
 * @param suctionAtFan [Pa] at the last run's end, against which its own loss is held
 * @returns [Pa] by how much the state before the sweep missed its equations, friction as it is carried
 * @source house
 */
export function sweepToFan(elements: Elements, flow: Flow, least: number, suctionAtFan: number): number {
  const { order, joins } = elements;
  const { arrivingBy, byDown } = flow;
  arrivingBy.offset.fill(0);
  arrivingBy.rate.fill(0);
  let pressure = 0;
  for (let place = 0; place < order.length; place++) {
    const index = order[place]!;
    const kind = elements.kind[index]!;
    if (kind === STILL) continue;
    const meeting = elements.meetings[index]!;
    let missed = meeting === null ? 0 : throughJunction(elements, flow, meeting);
    if (kind === OPEN_END) missed = linearEnd(elements, flow, index, flow.arriving, arrivingBy, least);
    if (kind === LEAK_ONLY) missed = linearEnd(elements, flow, index, flow.leak, flow.leakBy, least);
    else if (elements.leakShare[index]! > 0) missed = Math.max(missed, linearLeak(elements, flow, index, least));
    flow.loss[index] = runHead(elements, index, flow.airflow[index]!, flow.slope);
    acrossRun(flow, index);
    pressure = Math.max(pressure, missed);
    if (elements.meets[index] === 1) continue; // its junction goes on from here
    const to = joins[index]!;
    let down = suctionAtFan;
    if (to >= 0) {
      down = flow.suction[to]!;
      arrivingBy.offset[to]! += byDown.offset[index]!;
      arrivingBy.rate[to]! += byDown.rate[index]!;
    }
    pressure = Math.max(pressure, Math.abs(down - flow.suction[index]! - flow.loss[index]));
  }
  return pressure;
}

/** An opening with a law P = R q|q|, made linear at its present flow; gives how far the law is missed [Pa]. */
function linearEnd(
  elements: Elements,
  flow: Flow,
  index: number,
  through: Float64Array,
  line: Line,
  least: number,
): number {
  const q = through[index]!;
  // The velocity pressure of a lone leak's air helps it in, (1 - g^2); where it blows there is the same pressure to overcome, (1 + g^2).
  const blown = through === flow.leak && q < 0 ? 2 * elements.velocityResistance[index]! : 0;
  const resistance = elements.endResistance[index]! + blown;
  const loss = resistance * q * Math.abs(q);
  const slope = Math.max(2 * resistance * Math.abs(q), 2 * Math.sqrt(resistance * least));
  line.offset[index] = q - loss / slope;
  line.rate[index] = 1 / slope;
  return Math.abs(flow.suction[index]! - loss);
}

/**
 * A leak beside arriving air: k L|L| = P + p_v(Q) with Q = S + L, made linear; gives how far the law is missed [Pa].
 * Where the velocity pressure's part would outweigh the leak's own slope (at an answer only where a leak is all but as large
 * as its duct), or the air runs backwards, it is left out of the slope.
 */
function linearLeak(elements: Elements, flow: Flow, index: number, least: number): number {
  const perVelocity = elements.velocityResistance[index]!; // p_v = this Q^2
  const share = elements.leakShare[index]!;
  const k = perVelocity / (share * share);
  const [q, s, l] = [flow.airflow[index]!, flow.arriving[index]!, flow.leak[index]!];
  const own = Math.max(2 * k * Math.abs(l), 2 * Math.sqrt(k * least));
  const coupled = 2 * perVelocity * q;
  const coupling = coupled > 0 && coupled < 0.99 * own ? coupled : 0;
  const slope = own - coupling;
  const drive = perVelocity * q * q - k * l * Math.abs(l);
  const { offset: alpha, rate: beta } = flow.arrivingBy;
  flow.leakBy.offset[index] = l + (drive + coupling * (alpha[index]! - s)) / slope;
  flow.leakBy.rate[index] = (1 + coupling * beta[index]!) / slope;
  return Math.abs(flow.suction[index]! + drive);
}

/**
 * From Q by the pressure before the junction, of each run that joins, to Q by the junction's own suction; gives how far the
 * junction's losses are missed [Pa].
 */
function throughJunction({ kind, crossing }: Elements, flow: Flow, meeting: Meeting): number {
  const { main, junction, factors } = meeting;
  const { legs, lines } = crossing;
  const { byDown, arrivingBy, airflow } = flow;
  let [carried, push] = [0, 0];
  for (let place = 0; place < meeting.legs.length; place++) {
    const own = airflow[meeting.legs[place]!]!;
    carried += own;
    push += junction.legs[place]!.momentum * Math.max(own, 0) ** 2;
  }
  let missed = 0;
  let pushConstant = push;
  let count = 0;
  for (let place = 0; place < meeting.legs.length; place++) {
    const index = meeting.legs[place]!;
    if (kind[index] === STILL) continue;
    const own = airflow[index]!;
    const law = legLoss(junction, place, own, carried, push);
    const factor = factors[place]!;
    const loss = factor * law.loss;
    const leg = legs[count++]!;
    leg.offset = byDown.offset[index]!;
    leg.rate = byDown.rate[index]!;
    leg.byOwn = factor * law.byOwn;
    leg.byMain = factor * law.byMain;
    leg.byPush = factor * law.byPush;
    leg.constant = loss - leg.byOwn * own - leg.byMain * carried - leg.byPush * push;
    leg.pushes = 2 * junction.legs[place]!.momentum * Math.max(own, 0);
    pushConstant -= leg.pushes * own;
    missed = Math.max(missed, Math.abs(flow.suction[main]! - loss - flow.suction[index]! - flow.loss[index]!));
  }
  legLines(legs, pushConstant, lines, count);
  if (!(rateOf(lines, count) > 0)) {
    // Far from the answer, ducts that help each other along may seem to draw less the more the fan does, and a step by that
    // leads nowhere: then each goes by its own air alone.
    let at = 0;
    for (const index of meeting.legs) {
      if (kind[index] === STILL) continue;
      const leg = legs[at++]!;
      const own = airflow[index]!;
      const loss = leg.constant + leg.byOwn * own + leg.byMain * carried + leg.byPush * push;
      leg.byOwn = Math.max(leg.byOwn, 0);
      leg.constant = loss - leg.byOwn * own;
      leg.byMain = leg.byPush = 0;
    }
    legLines(legs, 0, lines, count);
  }
  let at = 0;
  for (const index of meeting.legs) {
    if (kind[index] === STILL) continue;
    const { offset, rate } = lines[at++]!;
    byDown.offset[index] = offset;
    byDown.rate[index] = rate;
    arrivingBy.offset[main]! += offset;
    arrivingBy.rate[main]! += rate;
  }
  return missed;
}

function rateOf(lines: readonly LegLine[], count: number): number {
  let sum = 0;
  for (let at = 0; at < count; at++) sum += lines[at]!.rate;
  return sum;
}

/** From S and L by P_up to Q by P_down, across the run's own loss. */
function acrossRun(flow: Flow, index: number): void {
  const slope = flow.slope[index]!;
  const a = flow.arrivingBy.offset[index]! + flow.leakBy.offset[index]!;
  const b = flow.arrivingBy.rate[index]! + flow.leakBy.rate[index]!;
  const constant = flow.loss[index]! + slope * (a - flow.airflow[index]!);
  const rate = b / (1 + slope * b);
  flow.byDown.rate[index] = rate;
  flow.byDown.offset[index] = a - rate * constant;
}

/** From the fan to the ends: with the suction at the fan inlet known, every run's suction and flows. */
export function sweepToEnds(elements: Elements, flow: Flow, suctionAtFan: number): void {
  const { order, joins } = elements;
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    const down = to < 0 ? suctionAtFan : flow.suction[to]!;
    if (elements.kind[index] === STILL) {
      flow.suction[index] = elements.cut[index] === 1 ? 0 : down;
      continue;
    }
    const airflow = flow.byDown.offset[index]! + flow.byDown.rate[index]! * down;
    // From what flows, not as the suction downstream less the loss: of those a small difference would keep few digits.
    const offset = flow.arrivingBy.offset[index]! + flow.leakBy.offset[index]!;
    const suction = (airflow - offset) / (flow.arrivingBy.rate[index]! + flow.leakBy.rate[index]!);
    flow.airflow[index] = airflow;
    flow.suction[index] = suction;
    flow.arriving[index] = flow.arrivingBy.offset[index]! + flow.arrivingBy.rate[index]! * suction;
    flow.leak[index] = flow.leakBy.offset[index]! + flow.leakBy.rate[index]! * suction;
  }
}
