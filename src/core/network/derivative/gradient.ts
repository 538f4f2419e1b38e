import { legWeights } from "../junction/legLines";
import { JUNCTION, OPEN_END, STILL } from "../solve/elements";
import type { Straight } from "./linearise";
import { endPut, leakPut, type Put } from "./put";

/** An answer: so many times an airflow and so many times a suction of one run. */
export interface Answer {
  readonly run: number; // -1: at the fan's inlet
  readonly airflow: number; // [answer s/m3]
  readonly suction: number; // [answer/Pa] on the total-pressure deficit: at the run's upstream end, or at the fan's inlet
}

/** What one unit put into each equation does to an answer. */
export interface Gradient {
  readonly byLoss: Float64Array; // by run, as the equations of `linearise` have it
  readonly byArriving: Float64Array;
  readonly byLeak: Float64Array;
  readonly atJunction: Float64Array;
  readonly byPush: Float64Array; // by the run that is joined
  readonly byFan: number;
}

/**
 * What everything does to one answer: the walks of `direction` in their opposite order, each step transposed. Where many inputs are
 * asked about and few answers, it takes far less than a direction for each input.
 *
 * @param straight the solved network made straight
 * @param answer what is asked about; of a run in which nothing flows its suction alone
 * @returns how the answer changes with what is put in anywhere
 * @source house the adjoint of the network's equations
 */
export function gradientOf(straight: Straight, answer: Answer): Gradient {
  const { system, kind, cut, losses, rate, rateDown, leakByAirflow, junctions, fanSlope } = straight;
  const { runs, joining, joins, order, last } = system.network;
  const column = (): Float64Array => new Float64Array(runs.length);
  const [byLoss, byArriving, byLeak, atJunction, byPush] = [column(), column(), column(), column(), column()];
  const [onAlone, onAloneDown] = [column(), column()];
  let [onAirflow, onSuction] = [answer.airflow, answer.suction];
  for (let at = answer.run; at >= 0; at = joins[at]!) {
    if (kind[at] === STILL) {
      if (cut[at] === 1) onSuction = 0;
    } else {
      onAirflow += onSuction / rate[at]!; // P = (Q - alone) / rate
      onAlone[at]! -= onSuction / rate[at]!;
      onAloneDown[at]! += onAirflow; // Q = aloneDown + rateDown P_down
      onSuction = onAirflow * rateDown[at]!;
    }
    onAirflow = 0;
  }
  let byFan = onSuction; // P_down = fanSlope Q + put in
  if (kind[last] === STILL) return { byLoss, byArriving, byLeak, atJunction, byPush, byFan };
  const onFan = (onAirflow + onSuction * fanSlope) / (1 - rateDown[last]! * fanSlope);
  byFan += onFan * rateDown[last]!;
  onAloneDown[last]! += onFan;
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    if (kind[index] === STILL) continue;
    const across = onAloneDown[index]! / (1 + rate[index]! * losses[index]!.byAirflow);
    byLoss[index] = -rate[index]! * across;
    byLeak[index] = byArriving[index] = (onAlone[index]! + across) / (1 - leakByAirflow[index]!);
    if (kind[index] !== JUNCTION) continue;
    for (const other of joining[index]!) onAloneDown[other]! += byArriving[index];
    const junction = junctions[index]!;
    if (junction === null) continue;
    const legs = junction.places.map((leg) => junction.meeting.legs[leg]!);
    legWeights(
      junction.legs,
      legs.map((run) => onAloneDown[run]!),
    ).forEach((weight, at) => {
      const run = legs[at]!;
      onAloneDown[run] = weight;
      atJunction[run] = -weight * junction.legs[at]!.rate;
      byPush[index]! += atJunction[run] * junction.legs[at]!.byPush;
    });
  }
  return { byLoss, byArriving, byLeak, atJunction, byPush, byFan };
}

/** What an input's small change puts into the equations, in numbers. */
export interface Effect {
  readonly fan: number; // [Pa]
  readonly runs: readonly number[]; // the others stand beside these
  readonly loss: readonly number[]; // [Pa]
  readonly atJunction: readonly number[]; // [Pa]
  readonly pushes: Put["pushes"];
  readonly leak: readonly number[]; // [m3/s]
  readonly end: readonly number[]; // [m3/s]
}

/**
 * What is put into the equations, ready for any number of answers.
 *
 * @param straight the solved network made straight
 * @param put what the input puts into the equations
 * @returns by the logarithm of the input's factor, of the runs in which air moves
 * @source house
 */
export function effectOf(straight: Straight, put: Put): Effect {
  const column = (): number[] => [];
  const { kind, system } = straight;
  const [runs, loss, atJunction, leak, end] = [column(), column(), column(), column(), column()];
  for (const index of put.where ?? system.network.order) {
    if (kind[index] === STILL) continue;
    runs.push(index);
    loss.push(put.loss(index));
    atJunction.push(put.atJunction.get(index) ?? 0);
    leak.push(leakPut(straight, index, put));
    end.push(kind[index] === OPEN_END ? endPut(straight, index, put) : 0);
  }
  return { fan: put.fan - put.afterFan, runs, loss, atJunction, pushes: put.pushes, leak, end };
}

/**
 * How an answer changes with an input.
 *
 * @param gradient of the answer
 * @param effect of the input
 * @returns by the logarithm of the input's factor
 * @source house
 */
export function changeBy(gradient: Gradient, { fan, runs, loss, atJunction, pushes, leak, end }: Effect): number {
  let change = gradient.byFan * fan;
  for (const [main, push] of pushes) change += gradient.byPush[main]! * push;
  for (let place = 0; place < runs.length; place++) {
    const run = runs[place]!;
    change += gradient.byLoss[run]! * loss[place]! + gradient.atJunction[run]! * atJunction[place]!;
    change += gradient.byLeak[run]! * leak[place]! + gradient.byArriving[run]! * end[place]!;
  }
  return change;
}
