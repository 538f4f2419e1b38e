import type { Lengths } from "./carriedFriction";
import { type Elements, JUNCTION, LEAK_ONLY, OPEN_END, STILL } from "./elements";
import { type Flow, newFlow } from "./sweep";

/** A network in which every loss is taken as quadratic, whatever flows: at its fan end Q = conductance sqrt(P). */
export interface Quadratic {
  readonly flow: Flow;
  readonly conductance: number; // [m3/s / sqrt(Pa)]
}

/**
 * The network with all its losses quadratic: friction with the factor from which it is carried, a device as at a usual airflow, what junctions lose left
 * out, a leak by the suction alone. Such ducts in a row and side by side add up exactly, so it is solved without a step.
 *
 * @param elements the runs as columns
 * @param usual [m3/s] the airflow at which a device that is not quadratic is taken, above 0
 * @returns the conductance of the whole, and in `flow` of each run for `startAt`
 * @source house
 */
export function quadraticOf(elements: Elements, usual: number): Quadratic {
  const { order, joins, kind } = elements;
  const flow = newFlow(kind.length);
  const { arrivingBy, leakBy, byDown } = flow;
  let conductance = 0;
  for (let place = 0; place < order.length; place++) {
    const index = order[place]!;
    if (kind[index] === STILL) continue;
    if (kind[index] === OPEN_END) arrivingBy.rate[index] = 1 / Math.sqrt(elements.endResistance[index]!);
    leakBy.rate[index] =
      kind[index] === LEAK_ONLY
        ? 1 / Math.sqrt(elements.endResistance[index]!)
        : elements.leakShare[index]! / Math.sqrt(elements.velocityResistance[index]!);
    const upstream = arrivingBy.rate[index]! + leakBy.rate[index];
    const resistance =
      elements.fixedResistance[index]! +
      firstFriction(elements.pipes, index) +
      firstFriction(elements.hoses, index) +
      (elements.deviceFactor[index]! > 0
        ? elements.deviceFactor[index]! * usual ** (elements.deviceExponent[index]! - 2)
        : 0);
    conductance = upstream / Math.sqrt(1 + resistance * upstream * upstream);
    byDown.rate[index] = conductance;
    const to = joins[index]!;
    if (to >= 0 && kind[to] === JUNCTION) arrivingBy.rate[to]! += conductance;
  }
  return { flow, conductance };
}

/** [Pa s2/m6] of a straight length. */
const firstFriction = ({ resistance, root }: Lengths, index: number): number =>
  resistance[index]! > 0 ? resistance[index]! / root[index]! ** 2 : 0;

/**
 * A first state: what flows in the quadratic network at a suction.
 *
 * @param elements the runs as columns
 * @param quadratic as `quadraticOf` found it
 * @param suction [Pa] at the fan's inlet, above 0
 * @returns the flow of every run
 * @source house
 */
export function startAt({ order, joins, kind }: Elements, { flow }: Quadratic, suction: number): Flow {
  const { arrivingBy, leakBy, byDown } = flow;
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    if (kind[index] === STILL) continue;
    const to = joins[index]!;
    const airflow = byDown.rate[index]! * Math.sqrt(to < 0 ? suction : flow.suction[to]!);
    const root = airflow / (arrivingBy.rate[index]! + leakBy.rate[index]!);
    flow.suction[index] = root * root;
    flow.arriving[index] = arrivingBy.rate[index]! * root;
    flow.leak[index] = leakBy.rate[index]! * root;
    flow.airflow[index] = flow.arriving[index] + flow.leak[index];
    leakBy.rate[index] = 0; // the sweeps set it only where there is a leak
  }
  return flow;
}
