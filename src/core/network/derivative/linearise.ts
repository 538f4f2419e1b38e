import { STANDARD_DENSITY } from "../../air/constants";
import { curveAt } from "../../fan/fanCurve";
import { elementsOf, JUNCTION, OPEN_END, STILL } from "../solve/elements";
import { VELOCITY } from "../solve/rows";
import type { Solution } from "../solve/solveNetwork";
import { legLines, type StraightLeg } from "../junction/legLines";
import { type Meeting, meetingLosses } from "../junction/meeting";
import type { System } from "./changed";
import { afterFanLoss, type LossChanges, suctionLoss } from "./lossChanges";

/**
 * The equations of a solved network made straight at its state, and eliminated along the tree: for small changes
 *
 *     open end    dS = cS dP + what is put in,   cS = S / (2 P)
 *     leak        dL = cL dP + cQ dQ + put in,   cL = L / (2 (P + p_v)), cQ = 2 r Q cL, p_v = r Q^2
 *     run         dQ = dS + dL,  dP = dP_down - slope dQ - put in
 *     junction    of a run that joins one: dP_down = dP_junction - dJ, with J by its own air, the main's and the push of all
 *     fan         dP_down = fanSlope dQ + put in
 */
export interface Straight {
  readonly system: System;
  readonly solution: Solution;
  readonly kind: Uint8Array; // as the solver's elements have it
  readonly cut: Uint8Array; // likewise: 1 beyond a shut gate
  readonly perVelocity: Float64Array; // [Pa s2/m6] r
  readonly losses: readonly (LossChanges | null)[]; // null where no air moves
  readonly arrivingRate: Float64Array; // [m3/(s Pa)] dS / dP
  readonly leakByAirflow: Float64Array; // [-] cQ
  readonly rate: Float64Array; // [m3/(s Pa)] dQ / dP
  readonly rateDown: Float64Array; // [m3/(s Pa)] dQ / dP_down, at a junction dQ / dP_junction
  readonly atJunction: Float64Array; // [Pa] what each run loses where it joins another
  readonly junctions: readonly (StraightJunction | null)[]; // by the run that others join
  readonly fanSlope: number; // [Pa s/m3] of the fan's pressure less the losses after it
  readonly curve: { readonly pressure: number; readonly slope: number }; // of the fan alone, in this air
}

/** A junction at the state, each of its legs as a line. */
export interface StraightJunction {
  readonly meeting: Meeting;
  readonly push: number; // [Pa] of all legs
  readonly carried: number; // [m3/s] all that arrives
  readonly places: readonly number[]; // of the legs in which air flows
  readonly legs: readonly StraightLeg[]; // those, with the rate of each run and nothing put in
}

/**
 * Makes a solved network straight; cost grows linearly with its runs.
 *
 * @param system the network, its fan and its air
 * @param solution what SOLVE's core found for just these
 * @returns what `direction` needs
 * @source house definition, the network; Todini and Pilati's method makes the same equations straight
 */
export function linearise(system: System, solution: Solution): Straight {
  const { network, curve, surroundings } = system;
  const { runs, joining, order, last, discharge } = network;
  const { airflow, leak, suction, fanAirflow } = solution;
  const elements = elementsOf(network, surroundings);
  const { kind, cut, rows, starts } = elements;
  const perVelocity = Float64Array.from(starts, (at) => rows[at + VELOCITY]!);
  const column = (): Float64Array => new Float64Array(runs.length);
  const [arrivingRate, leakByAirflow, rate, rateDown] = [column(), column(), column(), column()];
  const losses = new Array<LossChanges | null>(runs.length).fill(null);
  const atJunction = column();
  const junctions = new Array<StraightJunction | null>(runs.length).fill(null);
  for (const index of order) {
    if (kind[index] === STILL) continue;
    const [q, l, p] = [airflow[index]!, leak[index]!, suction[index]!];
    losses[index] = suctionLoss(rows, starts[index]!, runs[index]!, q, surroundings);
    if (kind[index] === OPEN_END) arrivingRate[index] = (q - l) / (2 * p);
    const meeting = elements.meetings[index]!;
    if (meeting !== null && kind[index] === JUNCTION) {
      const junction = straightJunction(meeting, kind, airflow, rateDown, atJunction);
      junctions[index] = junction;
      legLines(junction.legs, 0).forEach(({ rate: through }, at) => {
        rateDown[meeting.legs[junction.places[at]!]!] = through;
      });
    }
    if (kind[index] === JUNCTION) for (const other of joining[index]!) arrivingRate[index]! += rateDown[other]!;
    const leakRate = l !== 0 ? l / (2 * (p + perVelocity[index]! * q * q)) : 0;
    leakByAirflow[index] = 2 * perVelocity[index]! * q * leakRate;
    rate[index] = (arrivingRate[index]! + leakRate) / (1 - leakByAirflow[index]);
    rateDown[index] = rate[index] / (1 + rate[index] * losses[index].byAirflow);
  }
  const thickness = surroundings.density / STANDARD_DENSITY;
  const at = curveAt(curve, fanAirflow);
  const fan = { pressure: at.pressure * thickness, slope: at.slope * thickness };
  let fanSlope = fan.slope;
  if (kind[last] !== STILL)
    for (const index of discharge) {
      const after = afterFanLoss(network, index, fanAirflow, surroundings);
      losses[index] = after;
      fanSlope -= after.byAirflow;
    }
  return {
    ...{ system, solution, kind, cut, perVelocity, losses },
    ...{ arrivingRate, leakByAirflow, rate, rateDown, atJunction, junctions, fanSlope, curve: fan },
  };
}

function straightJunction(
  meeting: Meeting,
  kind: Uint8Array,
  airflow: Float64Array,
  rates: Float64Array,
  losses: Float64Array,
): StraightJunction {
  const now = meetingLosses(meeting, airflow);
  now.legs.forEach(({ loss }, place) => (losses[meeting.legs[place]!] = loss));
  const places = meeting.legs.flatMap((run, place) => (kind[run] === STILL ? [] : [place]));
  const legs = places.map((place): StraightLeg => {
    const { byOwn, byMain, byPush } = now.legs[place]!;
    const run = meeting.legs[place]!;
    const pushes = 2 * meeting.junction.legs[place]!.momentum * Math.max(airflow[run]!, 0);
    return { offset: 0, rate: rates[run]!, constant: 0, byOwn, byMain, byPush, pushes };
  });
  return { meeting, push: now.push, carried: now.main, places, legs };
}
