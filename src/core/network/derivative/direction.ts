import { JUNCTION, OPEN_END, STILL } from "../solve/elements";
import { legLines } from "../junction/legLines";
import type { Input } from "./inputs";
import type { Straight } from "./linearise";
import { endPut, leakPut, putBy } from "./put";

/** By how much a state changes with the logarithm of one factor. */
export interface Direction {
  readonly airflow: Float64Array; // [m3/s] per run, its own leak included; runs after the fan stay at 0
  readonly leak: Float64Array; // [m3/s]
  readonly staticSuction: Float64Array; // [Pa] at the upstream end: total-pressure deficit and velocity pressure
  readonly velocity: Float64Array; // [m/s] after the fan that of its airflow
  readonly fanAirflow: number; // [m3/s]
  readonly fanPressure: number; // [Pa] fan static pressure
}

/**
 * What one input's small change does to everything that flows: one walk to the fan and one back.
 *
 * @param straight the solved network made straight
 * @param input the factor
 * @returns the change of every answer by the factor's logarithm, exact
 * @source house implicit function theorem on the network's equations
 */
export function direction(straight: Straight, input: Input): Direction {
  const { system, solution, kind, perVelocity, losses, arrivingRate, leakByAirflow, rate, rateDown } = straight;
  const { runs, joining, joins, order, last } = system.network;
  const put = putBy(straight, input);
  const column = (): Float64Array => new Float64Array(runs.length);
  const [arriving, alone, aloneDown] = [column(), column(), column()];
  const [airflow, suction, leak, staticSuction, velocity] = [column(), column(), column(), column(), column()];
  const answer = { airflow, leak, staticSuction, velocity };
  const fanPut = put.fan - put.afterFan;
  if (kind[last] === STILL) {
    for (const index of order) if (straight.cut[index] === 0) suction[index] = staticSuction[index] = put.fan;
    return { ...answer, fanAirflow: 0, fanPressure: put.fan };
  }
  for (const index of order) {
    if (kind[index] === STILL) continue;
    if (kind[index] === OPEN_END) arriving[index] = endPut(straight, index, put);
    const junction = straight.junctions[index]!;
    if (junction !== null) {
      const runOf = (at: number): number => junction.meeting.legs[junction.places[at]!]!;
      const legs = junction.legs.map((leg, at) => ({ ...leg, offset: aloneDown[runOf(at)]!, constant: put.atJunction.get(runOf(at)) ?? 0 })); // prettier-ignore
      legLines(legs, put.pushes.get(index) ?? 0).forEach(({ offset }, at) => (aloneDown[runOf(at)] = offset));
    }
    if (kind[index] === JUNCTION) for (const other of joining[index]!) arriving[index]! += aloneDown[other]!;
    alone[index] = (arriving[index]! + leakPut(straight, index, put)) / (1 - leakByAirflow[index]!);
    const alongIt = 1 + rate[index]! * losses[index]!.byAirflow;
    aloneDown[index] = (alone[index] - rate[index]! * put.loss(index)) / alongIt;
  }
  const fanAirflow = (aloneDown[last]! + rateDown[last]! * fanPut) / (1 - rateDown[last]! * straight.fanSlope);
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    const down = to < 0 ? straight.fanSlope * fanAirflow + fanPut : suction[to]!;
    if (kind[index] === STILL) {
      suction[index] = straight.cut[index] === 1 ? 0 : down;
      staticSuction[index] = suction[index];
      continue;
    }
    const q = solution.airflow[index]!;
    airflow[index] = aloneDown[index]! + rateDown[index]! * down;
    const atJunction = to >= 0 && straight.junctions[to]! !== null;
    suction[index] = atJunction
      ? (airflow[index] - alone[index]!) / rate[index]!
      : down - losses[index]!.byAirflow * airflow[index] - put.loss(index);
    leak[index] = airflow[index] - arriving[index]! - arrivingRate[index]! * suction[index];
    const wider = put.perVelocity(index);
    staticSuction[index] = suction[index] + perVelocity[index]! * q * (2 * airflow[index] + q * wider);
    velocity[index] = velocityOf(straight, index, q, airflow[index], input);
  }
  for (const index of system.network.discharge)
    velocity[index] = velocityOf(straight, index, solution.fanAirflow, fanAirflow, input);
  const fanPressure = straight.curve.slope * fanAirflow + put.fan;
  return { ...answer, fanAirflow, fanPressure };
}

function velocityOf({ system }: Straight, index: number, flow: number, change: number, { kind, run }: Input): number {
  const area = (Math.PI / 4) * system.network.runs[index]!.diameter ** 2;
  const wider = kind === "diameter" && run === index ? 2 : 0;
  return (change - wider * flow) / area;
}
