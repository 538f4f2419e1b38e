import type { Network } from "../network";
import { type Elements, JUNCTION, LEAK_ONLY, OPEN_END, runHead, STILL } from "./elements";

/** The unknowns of a network, and what one sweep leaves behind. Everything is SI. */
export interface Flow {
  readonly airflow: Float64Array; // [m3/s] Q of each run, its own leak included
  readonly arriving: Float64Array; // [m3/s] what comes in at its upstream end, the own leak not counted
  readonly suction: Float64Array; // [Pa] P at its upstream end
  readonly loss: Float64Array; // [Pa] at the last sweep
  readonly slope: Float64Array; // [Pa s/m3]
  readonly offset: Float64Array; // [m3/s] a of Q = a + b P_down
  readonly yield: Float64Array; // [m3/(s Pa)] b
  readonly flowOffset: Float64Array; // [m3/s] a of Q = a + b P_up
  readonly flowYield: Float64Array; // [m3/(s Pa)]
  readonly arriveOffset: Float64Array; // [m3/s] of S = alpha + beta P_up
  readonly arriveYield: Float64Array; // [m3/(s Pa)]
}

export interface Misfit {
  readonly pressure: number; // [Pa] largest
  readonly mass: number; // [m3/s] largest
  readonly friction: number; // [-] largest relative change of a 1/sqrt(f)
  readonly worst: number; // run with the largest, each measured by the system's largest pressure and airflow
}

export function newFlow(count: number): Flow {
  const c = (): Float64Array => new Float64Array(count);
  return {
    airflow: c(), arriving: c(), suction: c(), loss: c(), slope: c(), offset: c(), yield: c(),
    flowOffset: c(), flowYield: c(), arriveOffset: c(), arriveYield: c(),
  }; // prettier-ignore
}

/**
 * From the ends to the fan: every equation made linear at the present state and eliminated along the tree, so that each
 * run's airflow is known as a + b P_down. Also measures by how much the present state misses the equations.
 */
export function sweepToFan(network: Network, elements: Elements, flow: Flow): Misfit {
  let [largestPressure, largestAirflow, pressure, mass, worst, worstShare] = [0, 0, 0, 0, network.last, -1];
  const { order, joins, joining } = network;
  elements.pipes.shift[0] = elements.hoses.shift[0] = 0;
  largestAirflow = flow.airflow[network.last]!;
  for (const index of order) largestPressure = Math.max(largestPressure, flow.suction[index]!);
  for (const index of order) {
    if (elements.kind[index] === STILL) continue;
    const missed = linearEnd(elements, flow, index, joining[index]!);
    const loss = runHead(elements, index, flow.airflow[index]!, flow.slope);
    flow.loss[index] = loss;
    eliminate(flow, index);
    const to = joins[index]!;
    const gap = to < 0 ? 0 : Math.abs(flow.suction[to]! - flow.suction[index]! - loss);
    const pressureGap = Math.max(gap, missed.pressure);
    const share = Math.max(pressureGap / (largestPressure || 1), missed.mass / (largestAirflow || 1));
    if (share > worstShare) [worst, worstShare] = [index, share];
    pressure = Math.max(pressure, pressureGap);
    mass = Math.max(mass, missed.mass);
  }
  const friction = Math.max(elements.pipes.shift[0]!, elements.hoses.shift[0]!);
  return { pressure, mass, friction, worst };
}

/** Q = a + b P at a run's upstream end, and how far the end's own equations are missed. */
function linearEnd(
  elements: Elements,
  flow: Flow,
  index: number,
  joining: readonly number[],
): { pressure: number; mass: number } {
  const kind = elements.kind[index]!;
  const suction = flow.suction[index]!;
  if (kind === LEAK_ONLY) {
    const airflow = flow.airflow[index]!;
    const resistance = elements.endResistance[index]!;
    flow.flowOffset[index] = airflow / 2;
    flow.flowYield[index] = 1 / (2 * resistance * airflow);
    return { pressure: Math.abs(suction - resistance * airflow * airflow), mass: 0 };
  }
  const arriving = flow.arriving[index]!;
  let [alpha, beta, pressure, mass] = [0, 0, 0, 0];
  if (kind === OPEN_END) {
    const resistance = elements.endResistance[index]!;
    alpha = arriving / 2;
    beta = 1 / (2 * resistance * arriving);
    pressure = Math.abs(suction - resistance * arriving * arriving);
  } else {
    let sum = 0;
    for (const other of joining) {
      if (elements.kind[other] === STILL) continue;
      alpha += flow.offset[other]!;
      beta += flow.yield[other]!;
      sum += flow.airflow[other]!;
    }
    mass = Math.abs(sum - arriving);
  }
  flow.arriveOffset[index] = alpha;
  flow.arriveYield[index] = beta;
  const share = elements.leakShare[index]!;
  if (share === 0) {
    flow.flowOffset[index] = alpha;
    flow.flowYield[index] = beta;
    return { pressure, mass: Math.max(mass, Math.abs(flow.airflow[index]! - arriving)) };
  }
  // The run's own leak in closed form (ownLeak): L = (g^2 S + g w) / (1 - g^2), w = sqrt(S^2 + drive P)
  const still = 1 - share * share;
  const root = Math.sqrt(arriving * arriving + elements.leakDrive[index]! * Math.max(suction, 0));
  const leak = (share * share * arriving + share * root) / still;
  const byArriving = 1 + (share * share + (share * arriving) / root) / still;
  const bySuction = (share * elements.leakDrive[index]!) / (2 * root * still);
  flow.flowOffset[index] = arriving + leak - byArriving * arriving - bySuction * suction + byArriving * alpha;
  flow.flowYield[index] = byArriving * beta + bySuction;
  return { pressure, mass: Math.max(mass, Math.abs(flow.airflow[index]! - arriving - leak)) };
}

/** From Q = a + b P_up to Q = a' + b' P_down, across the run's own loss. */
function eliminate(flow: Flow, index: number): void {
  const slope = flow.slope[index]!;
  const a = flow.flowOffset[index]!;
  const b = flow.flowYield[index]!;
  const constant = flow.loss[index]! - slope * flow.airflow[index]! + slope * a;
  const through = b / (1 + slope * b);
  flow.yield[index] = through;
  flow.offset[index] = a - through * constant;
}

const SMALLEST_STEP = 0.05; // an airflow never falls to less than this share of itself in one sweep

/** From the fan to the ends: with the suction at the fan inlet known, every run's suction and airflow. */
export function sweepToEnds(network: Network, elements: Elements, flow: Flow, suctionAtFan: number): void {
  const { order, joins } = network;
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    const down = to < 0 ? suctionAtFan : flow.suction[to]!;
    if (elements.kind[index] === STILL) {
      flow.suction[index] = elements.cut[index] === 1 ? 0 : down;
      continue;
    }
    const airflow = positive(flow.offset[index]! + flow.yield[index]! * down, flow.airflow[index]!);
    const slope = flow.slope[index]!;
    const linearLoss = flow.loss[index]! + slope * (airflow - flow.airflow[index]!);
    const suction = down - linearLoss;
    flow.airflow[index] = airflow;
    flow.suction[index] = suction;
    if (elements.kind[index] === JUNCTION || elements.kind[index] === OPEN_END) {
      const arriving = flow.arriveOffset[index]! + flow.arriveYield[index]! * suction;
      flow.arriving[index] = positive(arriving, flow.arriving[index]!);
    }
  }
}

const positive = (next: number, present: number): number => Math.max(next, SMALLEST_STEP * present);
